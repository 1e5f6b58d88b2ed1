using Gatewright.Core;
using Gatewright.Words;

namespace Gatewright.Journal.Facts;

/// <summary>
/// A change of a boat's rig was planned. It stands among the jobs: its steps are done by <see cref="StepDone"/>, and it ends when all
/// of them are and what was read again lies where it is to be, or by <see cref="JobDone"/> or <see cref="JobDropped"/>.
/// </summary>
/// <param name="Job">Its key.</param>
/// <param name="Boat">The boat.</param>
/// <param name="Rig">What the rig to come to is called.</param>
/// <param name="Steps">What to do, in working order.</param>
/// <param name="Again">What to read again.</param>
public sealed record ChangePlanned(
    string Job, string Boat, string Rig, IReadOnlyList<PlannedStep> Steps, IReadOnlyList<ReadAgainAt> Again) : Fact;

/// <summary>A step of a change.</summary>
/// <param name="Text">What to do, in the language in which it was planned.</param>
/// <param name="Seat">The seat; of a rigger or an oar the one it goes to, or the one it leaves.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Side">The side; null where both gates of the seat are meant.</param>
/// <param name="Measure">The measure that it sets; null where it sets none.</param>
/// <param name="Value">What that is set to, in its own unit.</param>
/// <param name="U">How well a setting hits, as a standard uncertainty.</param>
/// <param name="Insert">The stamp of the insert that it puts in; null for none.</param>
/// <param name="Rigger">The rigger that changes its place; null for none.</param>
/// <param name="Oar">The oar that changes its place; null for none.</param>
/// <param name="LaidBy">Whether rigger or oar goes to no gate.</param>
/// <param name="TurnsSide">Whether a sweep seat is rigged on that side from then on, and was on the other.</param>
/// <param name="Refits">Whether what was read of its gates before no longer speaks of them.</param>
/// <param name="Texts">What to do in every other language there was when it was planned, by the language's tag; null in older entries.</param>
public sealed record PlannedStep(
    string Text,
    int Seat,
    IReadOnlyList<PartUsed> Parts,
    Side? Side = null,
    string? Measure = null,
    decimal? Value = null,
    decimal? U = null,
    decimal? Insert = null,
    string? Rigger = null,
    string? Oar = null,
    bool LaidBy = false,
    bool TurnsSide = false,
    bool Refits = false,
    IReadOnlyDictionary<string, string>? Texts = null)
{
    /// <summary>What to do, in a language; in that of the plan where it was not put down in this one.</summary>
    public string In(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return Texts?.GetValueOrDefault(language.Tag) ?? Text;
    }
}

/// <summary>What is to be read again after steps of a change.</summary>
/// <param name="Item">What, as a word of <see cref="Core.Changing.RigItem"/>.</param>
/// <param name="Seat">The seat.</param>
/// <param name="After">The steps, from 0, that have to be done before.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="From">The lowest figure that is as it is to be; null where nothing was aimed at.</param>
/// <param name="To">The highest.</param>
public sealed record ReadAgainAt(
    string Item, int Seat, IReadOnlyList<int> After, Side? Side = null, decimal? From = null, decimal? To = null);

/// <summary>A measure of the rig was set to a figure. Nobody took it: it is what was aimed at.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Measure">Which measure.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Value">What it was set to.</param>
/// <param name="Unit">The unit of that.</param>
/// <param name="U">How well a setting hits, as a standard uncertainty in the same unit.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Date">The day, where it is not the day on which this was recorded.</param>
public sealed record MeasureSet(
    string Boat, string Measure, int Seat, decimal Value, string Unit, decimal U, Side? Side = null, DateOnly? Date = null) : Fact;
