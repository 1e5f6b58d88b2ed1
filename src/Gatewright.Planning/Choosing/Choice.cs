namespace Gatewright.Planning.Choosing;

/// <summary>One option of a group, by what it takes.</summary>
/// <param name="Uses">How much it takes of which resources, each named once, each amount above 0.</param>
internal sealed record Choice(IReadOnlyList<Use> Uses)
{
    /// <summary>An option that takes nothing.</summary>
    public static Choice Free { get; } = new([]);
}

/// <summary>So much of one resource.</summary>
/// <param name="Resource">Its place among the model's resources.</param>
/// <param name="Amount">How much, above 0.</param>
internal readonly record struct Use(int Resource, int Amount);
