using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Mending;

namespace Gatewright.Planning;

/// <summary>What is planned for one boat.</summary>
/// <param name="Check">The boat as it is.</param>
/// <param name="Outcome">What the jobs of today make of it.</param>
public sealed record PlannedBoat(BoatCheck Check, BoatOutcome Outcome)
{
    /// <summary>What is done today with parts from the shelf, from the bow.</summary>
    public IReadOnlyList<MendingJob> Jobs { get; init; } = [];

    /// <summary>Why the boat is to be read again instead of being mended; null when it is not.</summary>
    public ReadAgainReason? ReadAgain { get; init; }

    /// <summary>Gates of a boat that is mended which are to be read again instead: what they are is not known well enough.</summary>
    public IReadOnlyList<GatePlace> GatesToReadAgain { get; init; } = [];

    /// <summary>What is left to do once the parts on the shopping list are there, from the bow; with today's jobs done.</summary>
    public IReadOnlyList<MendingJob> AfterBuying { get; init; } = [];

    /// <summary>What the boat is then; what it is today when nothing is bought for it.</summary>
    public BoatOutcome OutcomeAfterBuying { get; init; } = Outcome;

    /// <summary>The parts that today's jobs take.</summary>
    public IReadOnlyList<PartCount> Parts => PartCount.Of(Jobs.SelectMany(j => j.Option.Parts));

    /// <summary>How long today's jobs take, roughly.</summary>
    public int Minutes => Jobs.Sum(j => j.Option.Minutes);
}
