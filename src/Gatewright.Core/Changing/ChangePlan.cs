using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>Where something is to be read again.</summary>
/// <param name="Item">What.</param>
/// <param name="Place">Where.</param>
public readonly record struct ToRead(RigItem Item, RigPlace Place);

/// <summary>
/// The way from one rig to another: the fewest steps, in working order. What is within its limits is left alone; what cannot be told
/// from right is to be measured again, not changed.
/// </summary>
/// <param name="Rig">The rig as it is.</param>
/// <param name="Target">The rig to come to.</param>
/// <param name="Steps">What to do, in working order.</param>
/// <param name="Unclear">What to measure before anything is done about it.</param>
/// <param name="ReadAgain">What to read when all is done, as a boat is set up and from the bow.</param>
/// <param name="Parts">What the steps take from stores.</param>
/// <param name="Freed">Inserts that come out, of known stamp.</param>
/// <param name="Missing">What the shelf has too little of; nothing where it was never counted.</param>
public sealed record ChangePlan(
    RigOfBoat Rig,
    TargetRig Target,
    IReadOnlyList<ChangeStep> Steps,
    IReadOnlyList<UnclearItem> Unclear,
    IReadOnlyList<ToRead> ReadAgain,
    IReadOnlyList<PartCount> Parts,
    IReadOnlyList<PartCount> Freed,
    IReadOnlyList<PartCount> Missing)
{
    /// <summary>How many riggers come off.</summary>
    public int RiggersMoved
    {
        get
        {
            int moved = 0;
            foreach (ChangeStep step in Steps)
            {
                moved += step.Phase == ChangePhase.Riggers ? 1 : 0;
            }

            return moved;
        }
    }

    /// <summary>Plans the way.</summary>
    /// <exception cref="ArgumentException">The target has a seat that the boat has not.</exception>
    public static ChangePlan Of(RigOfBoat rig, TargetRig target, ChangeSettings settings)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(settings);
        foreach (GatePlace gate in target.Gates)
        {
            if (gate.Seat > rig.Class.Seats)
            {
                throw new ArgumentException($"{rig.Name} has no {gate}.", nameof(target));
            }
        }

        return new Planning(rig, target, settings).Plan();
    }

    private sealed class Planning(RigOfBoat rig, TargetRig target, ChangeSettings settings)
    {
        private readonly ShelfInUse _shelf = new(settings.Stores);
        private readonly PartSizes _sizes = settings.Stores is { } stores
            ? PartSizes.Of(settings.Mending, stores)
            : PartSizes.Of(settings.Mending);

        public ChangePlan Plan()
        {
            IReadOnlyDictionary<GatePlace, GatePlace?> riggers = RiggerMoves.Of(rig, target, settings, _sizes);
            var setting = new PlaceSetting(target, rig.Class.Rowing, settings, _sizes, _shelf);
            var carried = new CarriedRig(rig, settings);
            var steps = new List<ChangeStep>(MoveSteps.Riggers(rig, target, riggers));
            SetWidths(setting, carried, riggers);
            foreach (GatePlace gate in target.Gates)
            {
                carried.SetGate(setting, riggers.GetValueOrDefault(gate), gate);
            }

            IReadOnlyDictionary<GatePlace, GatePlace?> oars = MoveSteps.OarsFrom(rig, target);
            steps.AddRange(MoveSteps.Oars(rig, target, oars));
            SetOars(setting, oars);
            SetStretchers(setting);
            steps.AddRange(setting.Steps);

            // A stable order: of one phase as they were found, from the bow.
            ChangeStep[] inOrder = [.. steps.OrderBy(s => s.Phase)];
            WidthEffects.Add(rig, inOrder, oars, riggers);
            return new(rig, target, inOrder, setting.Unclear, Again(inOrder), _shelf.Taken, _shelf.Freed, _shelf.Missing);
        }

        private void SetWidths(PlaceSetting setting, CarriedRig carried, IReadOnlyDictionary<GatePlace, GatePlace?> riggers)
        {
            int last = 0;
            foreach (GatePlace gate in target.Gates)
            {
                if (gate.Seat == last)
                {
                    continue;
                }

                last = gate.Seat;
                int? from = riggers.GetValueOrDefault(gate)?.Seat;
                foreach (GatePlace other in target.Gates)
                {
                    from = other.Seat == gate.Seat && riggers.GetValueOrDefault(other)?.Seat != from ? null : from;
                }

                carried.SetWidth(setting, from, gate.Seat);
            }
        }

        private void SetOars(PlaceSetting setting, IReadOnlyDictionary<GatePlace, GatePlace?> oars)
        {
            foreach (GatePlace gate in target.Gates)
            {
                var place = new RigPlace(gate.Seat, gate.Side);
                GatePlace? from = oars.GetValueOrDefault(gate);
                RigEstimate? Now(RigItem item) => from is { } at ? rig.Find(item, new(at.Seat, at.Side))?.Value : null;
                RigEstimate? length = Now(RigItem.OarLength);
                RigEstimate? set = setting.Measure(RigItem.OarLength, place, length);

                // Length is set at the handle: the collar stays where it is on the shaft, so that the inboard goes along.
                RigEstimate? inboard = Now(RigItem.Inboard);
                if (inboard is { } before && set != length && set is { } longer && length is { } was)
                {
                    inboard = before with { Value = before.Value + longer.Value - was.Value };
                }

                setting.Measure(RigItem.Inboard, place, inboard);
            }
        }

        private void SetStretchers(PlaceSetting setting)
        {
            int last = 0;
            foreach (GatePlace gate in target.Gates)
            {
                if (gate.Seat == last)
                {
                    continue;
                }

                last = gate.Seat;
                var place = new RigPlace(gate.Seat, null);
                foreach (RigItem item in (ReadOnlySpan<RigItem>)[RigItem.TrackPosition, RigItem.HeelDepth, RigItem.StretcherAngle, RigItem.WorkThrough])
                {
                    setting.Measure(item, place, rig.Find(item, place)?.Value);
                }
            }
        }

        private List<ToRead> Again(ChangeStep[] steps)
        {
            var again = new SortedSet<(RigItem Item, RigPlace Place)>();
            foreach (ChangeStep step in steps)
            {
                foreach (RigItem item in step.ReadAgain)
                {
                    foreach (GatePlace gate in target.Gates)
                    {
                        bool isOfIt = gate.Seat == step.Place.Seat && (step.Place.Side is null || step.Place.Side == gate.Side || !item.HasSide());
                        if (isOfIt && !(step.IsMove && step.To is null))
                        {
                            again.Add((item, new(gate.Seat, item.HasSide() ? gate.Side : null)));
                        }
                    }
                }
            }

            return [.. again.Select(a => new ToRead(a.Item, a.Place))];
        }
    }
}
