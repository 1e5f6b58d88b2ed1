using Gatewright.Core;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Learning;

/// <summary>What somebody checked and settled, whether anything was wrong with it or not.</summary>
public abstract record CheckedThing
{
    /// <summary>The causes that can be found in it.</summary>
    public abstract IReadOnlyList<Cause> Causes { get; }

    /// <summary>The code used in files: "gate", "oar", "level", "gauge".</summary>
    public abstract string Code { get; }

    /// <summary>The boat, or the gauge.</summary>
    public abstract string Name { get; }

    /// <summary>The gate or the oar's gate; null where it is of the whole boat or a gauge.</summary>
    public virtual (BoatClass Class, GatePlace Gate)? Place => null;

    /// <summary>A gate that was read and settled: found good, or mended with the re-check good.</summary>
    /// <param name="Boat">The boat's name.</param>
    /// <param name="Class">Its class.</param>
    /// <param name="At">Which gate.</param>
    public sealed record OfGate(string Boat, BoatClass Class, GatePlace At) : CheckedThing
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Cause> Causes =>
            [Cause.GatePitch, Cause.PinAft, Cause.PinOut, Cause.Rigger, Cause.WrongSeat];

        /// <inheritdoc/>
        public override string Code => "gate";

        /// <inheritdoc/>
        public override string Name => Boat;

        /// <inheritdoc/>
        public override (BoatClass Class, GatePlace Gate)? Place => (Class, At);
    }

    /// <summary>An oar whose sleeve was read.</summary>
    /// <param name="Boat">The boat it is rowed in.</param>
    /// <param name="Class">The boat's class.</param>
    /// <param name="At">The gate it is rowed in.</param>
    public sealed record OfOar(string Boat, BoatClass Class, GatePlace At) : CheckedThing
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Cause> Causes => [Cause.Sleeve];

        /// <inheritdoc/>
        public override string Code => "oar";

        /// <inheritdoc/>
        public override string Name => Boat;

        /// <inheritdoc/>
        public override (BoatClass Class, GatePlace Gate)? Place => (Class, At);
    }

    /// <summary>How a boat lay, read to see whether it lay as was thought.</summary>
    /// <param name="Boat">The boat's name.</param>
    public sealed record OfLevel(string Boat) : CheckedThing
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Cause> Causes => [Cause.HullLevel];

        /// <inheritdoc/>
        public override string Code => "level";

        /// <inheritdoc/>
        public override string Name => Boat;
    }

    /// <summary>A gauge that was reversed on one face.</summary>
    /// <param name="Gauge">What the club calls it.</param>
    public sealed record OfGauge(string Gauge) : CheckedThing
    {
        /// <inheritdoc/>
        public override IReadOnlyList<Cause> Causes => [Cause.GaugeZero];

        /// <inheritdoc/>
        public override string Code => "gauge";

        /// <inheritdoc/>
        public override string Name => Gauge;
    }

    private protected CheckedThing()
    {
    }
}
