namespace Gatewright.Planning;

/// <summary>What a plan makes of a boat.</summary>
public enum BoatOutcome
{
    /// <summary>Good as it was read: nothing is done.</summary>
    Good,

    /// <summary>Inside its standard wholly, once the work is done and read again.</summary>
    Mended,

    /// <summary>No longer below a floor nor in doubt about one, once the work is done and read again; not yet inside its standard.</summary>
    AboveFloors,

    /// <summary>Not brought inside its standard by what is on the shelf.</summary>
    Left,

    /// <summary>Not mended: it has to be read again first.</summary>
    ReadAgain,
}

/// <summary>Outcomes and their codes.</summary>
public static class BoatOutcomes
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<BoatOutcome> All { get; } = Enum.GetValues<BoatOutcome>();

    /// <summary>The code used in files: "above-floors".</summary>
    public static string Code(this BoatOutcome outcome) => outcome switch
    {
        BoatOutcome.Good => "good",
        BoatOutcome.Mended => "mended",
        BoatOutcome.AboveFloors => "above-floors",
        BoatOutcome.Left => "left",
        _ => "read-again",
    };
}
