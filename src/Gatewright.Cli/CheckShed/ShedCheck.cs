using System.Collections.Immutable;
using Gatewright.Cli.Rigs;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Standing;
using Gatewright.Words.Told;

namespace Gatewright.Cli.CheckShed;

/// <summary>A shed that was checked.</summary>
/// <param name="Boats">The boats, in the order in which they were given.</param>
/// <param name="Standard">What they were judged by.</param>
/// <param name="Warnings">What was odd about the input.</param>
/// <param name="Rigs">The rigs of those of which something was measured.</param>
internal sealed record ShedCheck(
    IReadOnlyList<BoatCheck> Boats, Standard Standard, IReadOnlyList<InputProblem> Warnings, IReadOnlyList<ShedRig> Rigs)
{
    /// <summary>What is said where something is left out.</summary>
    public const string HowToTellAll = "--all tells all";

    /// <summary>The gates that were changed and not read since, by the boat's name; nothing of a boat that has none.</summary>
    public IReadOnlyDictionary<string, ChangedUnread> Changed { get; init; } = ImmutableDictionary<string, ChangedUnread>.Empty;

    /// <summary>Checks the boats; one of which something, or all, was not read since it was changed is a warning.</summary>
    public static ShedCheck Of(ShedInput input)
    {
        ILookup<bool, BoatRecord> boats = input.Boats.ToLookup(boat => boat.Current.Readings.Count > 0);
        var changed = input.Boats
            .Select(boat => (Name: boat.Current.Boat, Changed: ChangedUnread.Of(boat, input.GatesOf(boat), input.SettingsOf(boat))))
            .Where(boat => boat.Changed.Gates.Count > 0)
            .ToDictionary(boat => boat.Name, boat => boat.Changed);
        IEnumerable<InputProblem> old = boats[false].Select(boat =>
            NotJudged.Of(boat.Current.Boat, "was not read since its gates were last changed"));
        return new([.. boats[true].Select(boat => boat.Check(input.SettingsOf(boat)))], input.Settings.Standard,
            [.. input.Warnings, .. old, .. changed.Select(boat => ChangedSince.Of(boat.Key, boat.Value))], input.Rigs)
        {
            Changed = changed,
        };
    }

    /// <summary>Whether any boat is not good.</summary>
    public bool NeedsAttention => Boats.Any(boat => boat.Verdict.Verdict != Verdict.Good) || Warnings.Any(NotJudged.Is) || Warnings.Any(HeldAshore.Is)
        || Warnings.Any(ChangedSince.Is)
        || Rigs.Any(rig => rig.NeedsAttention);

    /// <summary>The shed as it is told of.</summary>
    public ToldShed Told => new(Boats, Standard)
    {
        Warnings = [.. Warnings.Select(warning => warning.ToString().TrimEnd('.'))],
        Held = [.. Warnings.Where(HeldAshore.Is).Select(hold => hold.Value!)],
        ChangedUnread = [.. Changed.Where(boat => boat.Value.KeepAshore).Select(boat => boat.Key)],
        NeedsAttention = NeedsAttention,
    };

    /// <summary>Whether anything told of was not read.</summary>
    public bool HasExpected => Boats.Any(boat => boat.Verdict.Gates.Any(gate => gate.Pitches.Any(pitch => !pitch.Read)));
}
