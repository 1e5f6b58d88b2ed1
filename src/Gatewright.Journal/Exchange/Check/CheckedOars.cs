namespace Gatewright.Journal.Exchange.Check;

/// <summary>A figure of an oar: degrees of a sleeve, centimetres, kilograms; rounded to 4 decimals.</summary>
/// <param name="Value">The best value.</param>
/// <param name="U">The standard uncertainty.</param>
/// <param name="Day">The day it was read; null for what was only stated.</param>
public sealed record OarFigureTold(double Value, double U, DateOnly? Day);

/// <summary>An oar with its latest figures.</summary>
/// <param name="Oar">Its name.</param>
/// <param name="Set">Its set's name; null for none.</param>
/// <param name="Side">port, starboard, or null.</param>
/// <param name="Boat">The boat it is rowed in; null for none.</param>
/// <param name="Seat">At which seat.</param>
/// <param name="Blade">The shape of its blade.</param>
/// <param name="Sleeve">Sleeve error, degrees.</param>
/// <param name="Length">Centimetres.</param>
/// <param name="Inboard">Centimetres.</param>
/// <param name="Weight">Kilograms.</param>
public sealed record OarTold(
    string Oar,
    string? Set,
    string? Side,
    string? Boat,
    int? Seat,
    string? Blade,
    OarFigureTold? Sleeve,
    OarFigureTold? Length,
    OarFigureTold? Inboard,
    OarFigureTold? Weight);

/// <summary>An oar against the middle of its set.</summary>
/// <param name="Oar">Its name.</param>
/// <param name="Verdict">good, unsure or adjust.</param>
/// <param name="Off">How far above the middle of the set.</param>
/// <param name="OffU">The standard uncertainty of that.</param>
/// <param name="Outside">The probability that it lies outside the tolerance.</param>
/// <param name="Outlier">What the test of outliers says; null where the set is too small to ask.</param>
/// <param name="Why">The sentence, where it is not good.</param>
/// <param name="Turn">Of a sleeve that is not good, how to bring it in line.</param>
public sealed record OarOffTold(
    string Oar, string Verdict, double Off, double OffU, double Outside, bool? Outlier, string? Why, SleeveTurnTold? Turn);

/// <summary>How a sleeve is brought in line.</summary>
/// <param name="ToBowDegrees">How far the top of the blade comes to the bow; negative to the stern.</param>
/// <param name="RoundMm">How far that is round the shaft.</param>
/// <param name="DiameterMm">The shaft's diameter it was reckoned with.</param>
/// <param name="Says">The same as a sentence.</param>
public sealed record SleeveTurnTold(double ToBowDegrees, double RoundMm, double DiameterMm, string Says);

/// <summary>A set by one item.</summary>
/// <param name="Item">sleeve, length, inboard or weight.</param>
/// <param name="Worth">alone, pair, few, fair or full: what so many oars let one say.</param>
/// <param name="Verdict">The worst; null where there is nothing to compare.</param>
/// <param name="Median">The median of all.</param>
/// <param name="Range">The largest less the smallest.</param>
/// <param name="Tolerance">What it was judged by.</param>
/// <param name="Oars">Each oar of which it is known.</param>
public sealed record OarItemTold(
    string Item, string Worth, string? Verdict, double Median, double Range, double Tolerance, IReadOnlyList<OarOffTold> Oars);

/// <summary>A set.</summary>
/// <param name="Set">Its name.</param>
/// <param name="Blade">The shape of its blades.</param>
/// <param name="Verdict">The worst verdict; null where nothing can be compared.</param>
/// <param name="Items">Item by item, those of which something is known.</param>
public sealed record OarSetTold(string Set, string? Blade, string? Verdict, IReadOnlyList<OarItemTold> Items);

/// <summary>The oars of a club or a file.</summary>
/// <param name="Format">"gatewright.oars/1".</param>
/// <param name="Sets">The sets in use, by name.</param>
/// <param name="Oars">Every oar in use, by name.</param>
/// <param name="Problems">What was odd in a file.</param>
public sealed record OarsDocument(
    string Format, IReadOnlyList<OarSetTold> Sets, IReadOnlyList<OarTold> Oars, IReadOnlyList<CheckedProblem> Problems)
{
    /// <summary>The format's name.</summary>
    public const string Name = "gatewright.oars/1";

    /// <summary>The oars that go best together; null where they were not asked for.</summary>
    public OarsMatchTold? Match { get; init; }
}

/// <summary>So many oars that are most alike.</summary>
/// <param name="Count">How many were asked for.</param>
/// <param name="Oars">Their names; null where there are not so many of which all is known.</param>
/// <param name="Spread">The widest of their ranges, in tolerances; null likewise.</param>
/// <param name="Says">The same as a sentence.</param>
public sealed record OarsMatchTold(int Count, IReadOnlyList<string>? Oars, double? Spread, string Says);
