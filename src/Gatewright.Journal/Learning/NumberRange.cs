using System.Globalization;

namespace Gatewright.Journal.Learning;

/// <summary>What a number of the table of chances may be.</summary>
/// <param name="What">What it is: "a chance", "degrees".</param>
/// <param name="Least">The least.</param>
/// <param name="TakesLeast">Whether it may be the least itself.</param>
/// <param name="Most">The most.</param>
/// <param name="TakesMost">Whether it may be the most itself.</param>
public sealed record NumberRange(string What, double Least, bool TakesLeast, double Most, bool TakesMost)
{
    /// <summary>How often a cause is met; 0 for one that is never asked about.</summary>
    public static NumberRange Chance { get; } = new("a chance", 0, true, 1, false);

    /// <summary>How likely a report is; neither 0 nor 1, which no reading could ever speak against.</summary>
    public static NumberRange Likelihood { get; } = new("a chance", 0, false, 1, false);

    /// <summary>As how many checks the start counts.</summary>
    public static NumberRange Weight { get; } = new("a number of checks", 0, false, 1_000_000, true);

    /// <summary>A pitch, or a difference of pitches.</summary>
    public static NumberRange Threshold { get; } = new("degrees", -30, true, 30, true);

    /// <summary>How wide a curve rises.</summary>
    public static NumberRange Width { get; } = new("degrees", 0, false, 30, true);

    /// <summary>Whether a number lies in it.</summary>
    public bool Takes(double number) =>
        (TakesLeast ? number >= Least : number > Least) && (TakesMost ? number <= Most : number < Most);

    /// <summary>"a chance, from 0 to below 1".</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{What}, {(TakesLeast ? "from" : "above")} {Least:N0} {(TakesMost ? "to" : "to below")} {Most:N0}");
}
