using Gatewright.Core.Checking;
using Gatewright.Core.Simulating;

namespace Gatewright.Core.Load;

/// <summary>
/// A boat on the water as its gates make it: how it is rolled through the drive, what each seat's hands hold, and which gate
/// or sleeve to mend first. A model; what it rests on stands in docs/method-load.md.
/// </summary>
public sealed class BoatBalance
{
    internal BoatBalance(
        DriveProfile profile,
        IReadOnlyList<RollPoint> roll,
        LoadEstimate meanRoll,
        IReadOnlyList<GateBalance> gates,
        MendFirst forRoll,
        MendFirst forLoad) =>
        (Profile, Roll, MeanRoll, Gates, ForRoll, ForLoad) = (profile, roll, meanRoll, gates, forRoll, forLoad);

    /// <summary>How hard is pulled.</summary>
    public DriveProfile Profile { get; }

    /// <summary>The boat's roll moment from catch to finish.</summary>
    public IReadOnlyList<RollPoint> Roll { get; }

    /// <summary>Its mean over the drive.</summary>
    public LoadEstimate MeanRoll { get; }

    /// <summary>Every gate, from the bow.</summary>
    public IReadOnlyList<GateBalance> Gates { get; }

    /// <summary>
    /// Which gate to mend first, or whose sleeve, so that the boat rolls less: of the roll moment the root of its mean square over the drive, in
    /// newton metres.
    /// </summary>
    public MendFirst ForRoll { get; }

    /// <summary>
    /// Which gate to mend first, or whose sleeve, so that the seats feel alike: of the handles' loads the standard deviation from seat to
    /// seat, in newtons.
    /// </summary>
    public MendFirst ForLoad { get; }

    /// <summary>A boat's balance.</summary>
    /// <param name="check">The boat, read and checked.</param>
    /// <param name="seats">The rig of each seat and the sleeve of each oar.</param>
    /// <param name="profile">How hard is pulled.</param>
    /// <param name="draws">For the question which gate first: the same numbers give the same answer.</param>
    /// <returns>Null while not every gate of the boat was read: of a sum with a gap nothing can be said.</returns>
    public static BoatBalance? Of(BoatCheck check, SeatsOnWater seats, DriveProfile profile, Draws draws)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(seats);
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(draws);
        return check.Diagnosis.Gates.Count == check.Readings.Class.Gates ? new GatesTogether(check, seats, profile, draws).Balance() : null;
    }

    /// <summary>
    /// The same boat pulled harder or less hard. All forces and moments go with the peak of the pull; angles, sleeves, chances and
    /// the order of what to mend do not: so nothing is worked out anew.
    /// </summary>
    public BoatBalance With(DriveProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        double factor = profile.PeakNewtons / Profile.PeakNewtons;
        return new(
            profile,
            [.. Roll.Select(p => p with { Roll = p.Roll.Times(factor) })],
            MeanRoll.Times(factor),
            [.. Gates.Select(g => g.Times(factor))],
            ForRoll.Times(factor),
            ForLoad.Times(factor));
    }
}
