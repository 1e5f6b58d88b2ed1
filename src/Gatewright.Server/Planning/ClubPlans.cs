using System.Runtime.CompilerServices;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Planning;
using Gatewright.Planning.Told;
using Gatewright.Server.Boats;
using Gatewright.Words;

namespace Gatewright.Server.Planning;

/// <summary>
/// Plans for clubs. One is worked out at a time, in turn, and kept as long as its club stays as it is: the solver is
/// the one thing here that takes seconds of a processor. It is not even loaded before somebody asks.
/// </summary>
internal sealed class ClubPlans(TimeProvider clock, PlanTurns turns)
{
    private readonly ConditionalWeakTable<OpenClub, Worked> _worked = [];

    /// <summary>The plan for a club as it is.</summary>
    /// <exception cref="PlanLaterException">It has to be worked out, and not now.</exception>
    public async Task<ClubPlan> OfAsync(string club, OpenClub open, Wording say, CancellationToken cancellation)
    {
        if (!_worked.TryGetValue(open, out Worked? worked))
        {
            using IDisposable turn = await turns.EnterAsync(club, cancellation).ConfigureAwait(false);
            if (!_worked.TryGetValue(open, out worked))
            {
                worked = await Worked.OfAsync(open, clock.GetUtcNow()).ConfigureAwait(false);
                _worked.AddOrUpdate(open, worked);
            }
        }

        return worked.Told(open, say);
    }

    /// <summary>A plan with the boats it is for.</summary>
    private sealed class Worked(DateTimeOffset made, ShedPlan plan, Stores? stores, IReadOnlyList<string> keys)
    {
        public static async Task<Worked> OfAsync(OpenClub open, DateTimeOffset now)
        {
            IReadOnlyList<BoatStanding> boats = [.. (await open.Shed.AllAsync().ConfigureAwait(false)).Where(b => b.Check is not null)];
            Stores? stores = ClubShelf.Of(open.Club);
            ShedPlan plan = await Task.Run(() =>
                new Planner(PlanSettings.Default).Plan(boats.Select(b => new ShedBoat(b.Check!)), stores ?? Stores.Empty)).ConfigureAwait(false);
            return new(now, plan, stores, [.. plan.Boats.Select(p => boats.First(b => b.Check == p.Check).View.Key)]);
        }

        public ClubPlan Told(OpenClub open, Wording say) => new(
            made, open.Number, keys, PlanDocument.Of(plan, ClubSettings.OfClub(open.Club), stores, [], say));
    }
}
