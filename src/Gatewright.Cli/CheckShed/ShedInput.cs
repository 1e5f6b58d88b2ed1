using System.Collections.Immutable;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Standing;

namespace Gatewright.Cli.CheckShed;

/// <summary>Everything a check needs, or everything that is wrong with it.</summary>
/// <param name="Settings">What to judge and weigh by.</param>
/// <param name="Boats">The boats asked for.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="ErrorsBeyond">How many more errors there are.</param>
/// <param name="Warnings">What is odd.</param>
internal sealed record ShedInput(
    CheckSettings Settings,
    IReadOnlyList<BoatRecord> Boats,
    IReadOnlyList<InputProblem> Errors,
    int ErrorsBeyond,
    IReadOnlyList<InputProblem> Warnings)
{
    /// <summary>The boats that have a standard of their own, by name.</summary>
    public IReadOnlyDictionary<string, Standard> OwnStandards { get; init; } = ImmutableDictionary<string, Standard>.Empty;

    /// <summary>The rigs of the boats asked for, as far as something of them was measured.</summary>
    public IReadOnlyList<ShedRig> Rigs { get; init; } = [];

    /// <summary>
    /// The sleeves of the oars of a boat of that name, as the club's oars were read; null where no club is asked: files tell of sleeves
    /// among a boat's readings.
    /// </summary>
    public Func<string, SleevesInBoat?> SleevesOf { get; init; } = _ => null;

    /// <summary>The gates that a boat has now; of files those of which they speak.</summary>
    public Func<BoatRecord, IReadOnlyCollection<GatePlace>> GatesOf { get; init; } = ChangedUnread.GatesOf;

    /// <summary>What lies on the club's shelf; null when nobody said.</summary>
    public Stores? Shelf { get; init; }

    /// <summary>What to judge and weigh a boat by.</summary>
    public CheckSettings SettingsOf(BoatRecord boat) =>
        OwnStandards.TryGetValue(boat.Current.Boat, out Standard? own) ? Settings with { Standard = own } : Settings;

    /// <summary>Reads all there is before it gives up, so that a person mends everything in one go.</summary>
    /// <param name="asked">What was asked for.</param>
    /// <param name="terminal">Where standard input is.</param>
    public static ShedInput Read(ShedRequest asked, Terminal terminal) =>
        asked.Place is { } place ? ClubShed.Read(place, asked) : OfFiles(asked, terminal);

    private static ShedInput OfFiles(ShedRequest asked, Terminal terminal)
    {
        (Standard? chosen, IReadOnlyList<InputProblem> wrongStandard, IReadOnlyList<InputProblem> oddStandard) =
            StandardChoice.Read(asked.Standard ?? Standard.Club.Name, Standard.BuiltIn);
        var wrongChances = new List<InputProblem>();
        ClubChances table = ChancesChoice.Read(asked.Chances, wrongChances);
        using OpenSources sources = OpenSources.Of(asked.Files, asked.Command, terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, CheckSettings.Default.Diagnosing.Measuring);
        List<InputProblem> errors = [.. wrongStandard, .. wrongChances, .. sources.Errors, .. readings.Errors];
        IReadOnlyList<ShedRig> rigs = [.. ShedRig.Of(readings, crew: null).Where(rig => BoatChoice.IsChosen(rig.Boat, asked.Boats))];
        IReadOnlyList<BoatRecord> read = errors.Count == 0 ? BoatChoice.Of(readings.Records, "--boat", asked.Boats, errors, rigs) : [];
        IEnumerable<InputProblem> unread = readings.OnlyToldOf
            .Select(boat => NotJudged.Of(boat, "was told of and not read"));
        return new(
            SettingsOf(chosen ?? Standard.Club, table), read, errors, readings.ErrorsBeyond, [.. oddStandard, .. readings.Warnings, .. unread])
        {
            Rigs = rigs,
        };
    }

    private static CheckSettings SettingsOf(Standard standard, ClubChances table) => CheckSettings.Default with
    {
        Standard = standard,
        Diagnosing = table.In(CheckSettings.Default.Diagnosing),
    };
}
