using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Exchange.OarsFiles;

/// <summary>A row of a file of oars.</summary>
/// <param name="Oar">What the oar is called: within its set, the same name is the same oar.</param>
/// <param name="Set">What its set is called; null for none.</param>
/// <param name="Side">Its side.</param>
/// <param name="Blade">The shape of its blade.</param>
/// <param name="Boat">What the boat is called in which it is rowed.</param>
/// <param name="Seat">At which seat.</param>
/// <param name="Length">Centimetres.</param>
/// <param name="Inboard">Centimetres.</param>
/// <param name="Weight">Kilograms.</param>
/// <param name="Sleeve">What the gauge showed on the sleeve's flat, degrees.</param>
/// <param name="Laid">Which way round the oar lay.</param>
/// <param name="Lie">How the boat lay.</param>
/// <param name="Level">How its level was known.</param>
/// <param name="BowHigh">Its level along, where it was read.</param>
/// <param name="Gauge">What the gauge is called.</param>
/// <param name="Date">The day.</param>
public sealed record OarRow(
    string Oar,
    string? Set,
    Side? Side,
    string? Blade,
    string? Boat,
    int? Seat,
    decimal? Length,
    decimal? Inboard,
    decimal? Weight,
    decimal? Sleeve,
    OarLaid? Laid,
    Lie? Lie,
    LevelBasis Level,
    decimal? BowHigh,
    string? Gauge,
    DateOnly? Date);

/// <summary>What a file of oars says, or everything that is wrong with it: never a part of both.</summary>
/// <param name="Rows">Its rows; none when there are errors.</param>
/// <param name="Errors">What has to be mended first, in the order of lines; at most 1,000.</param>
/// <param name="Warnings">What was understood but looks unmeant; at most 1,000.</param>
/// <param name="ErrorsBeyond">How many more errors there are than <paramref name="Errors"/> holds.</param>
public sealed record OarsInput(
    IReadOnlyList<OarRow> Rows, IReadOnlyList<InputProblem> Errors, IReadOnlyList<InputProblem> Warnings, int ErrorsBeyond);
