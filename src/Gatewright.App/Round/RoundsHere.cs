using Gatewright.App.Device;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;

namespace Gatewright.App.Round;

/// <summary>The rounds of this device in the club in hand: the one under way, and how the last was read.</summary>
internal sealed class RoundsHere(ThisDevice device, ClubInHand inHand, TimeProvider clock)
{
    private const string Setting = "round";

    /// <summary>Today, where this device is.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>What is remembered; without a round that was ended elsewhere.</summary>
    public RoundPlan Plan
    {
        get
        {
            var plan = RoundPlan.Read(device.Device.Of(inHand.Held.Club, Setting));
            return plan.Round is { } round && IsEnded(round) ? plan.Ended() : plan;
        }
    }

    /// <summary>Whether a round was ended.</summary>
    public bool IsEnded(string round) => inHand.Club.About(Subject.Rounds).Any(r => r.Fact is RoundEnded ended && ended.Round == round);

    /// <summary>Remembers how rounds are read, and which boats.</summary>
    public Task KeepAsync(RoundPlan plan) => KeepAsync(inHand.Held.Club, plan);

    /// <summary>Begins a round; one that was under way ends.</summary>
    /// <returns>The plan with its key.</returns>
    public async Task<RoundPlan> BeginAsync(RoundPlan plan, IReadOnlyList<string> boats)
    {
        (string club, string round) = (inHand.Held.Club, Guid.CreateVersion7().ToString("N"));
        Fact begun = new RoundStarted(round);
        await inHand.RecordAsync(plan.Round is { } before ? [new RoundEnded(before), begun] : [begun]);
        RoundPlan now = plan.Begun(round, Today, boats);
        await KeepAsync(club, now);
        return now;
    }

    /// <summary>Begins with one boat, or reads it within the round that was begun today.</summary>
    public async Task<RoundPlan> ReadAsync(string boat)
    {
        RoundPlan plan = Plan;
        if (plan.Round is null || plan.Day != Today)
        {
            return await BeginAsync(plan, [boat]);
        }

        RoundPlan with = plan.With(boat);
        await KeepAsync(with);
        return with;
    }

    /// <summary>Ends a round.</summary>
    public async Task EndAsync(string round)
    {
        (string club, RoundPlan plan) = (inHand.Held.Club, Plan);
        await inHand.RecordAsync(new RoundEnded(round));
        if (plan.Round == round)
        {
            await KeepAsync(club, plan.Ended());
        }
    }

    private Task KeepAsync(string club, RoundPlan plan) => device.Device.SetAsync(club, Setting, plan.Write());
}
