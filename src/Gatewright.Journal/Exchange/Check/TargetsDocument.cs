using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>The targets of a class and crew.</summary>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="BoatClass">The class; the key is <c>class</c>.</param>
/// <param name="Crew">The crew, as a word; null for women and men alike.</param>
/// <param name="Targets">The targets.</param>
public sealed record TargetsDocument(
    string Format, [property: JsonPropertyName("class")] string BoatClass, string? Crew, IReadOnlyList<CheckedTarget> Targets)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.rig-targets/1";
}
