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
/// Plans for clubs. One is worked out at a time, whoever asks, and kept as long as its club stays as it is: the solver is
/// the one thing here that takes seconds of a processor. It is not even loaded before somebody asks.
/// </summary>
internal sealed class ClubPlans(TimeProvider clock) : IDisposable
{
    private readonly ConditionalWeakTable<OpenClub, Worked> _worked = [];
    private readonly SemaphoreSlim _one = new(1);

    /// <summary>The plan for a club as it is.</summary>
    public async Task<ClubPlan> OfAsync(OpenClub open, Wording say, CancellationToken cancellation)
    {
        if (!_worked.TryGetValue(open, out Worked? worked))
        {
            await _one.WaitAsync(cancellation).ConfigureAwait(false);
            try
            {
                if (!_worked.TryGetValue(open, out worked))
                {
                    worked = await Worked.OfAsync(open, clock.GetUtcNow()).ConfigureAwait(false);
                    _worked.AddOrUpdate(open, worked);
                }
            }
            finally
            {
                _one.Release();
            }
        }

        return worked.Told(open, say);
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

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
