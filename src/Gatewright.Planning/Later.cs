using Gatewright.Core.Mending;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>What is left to do for the boats that today does not bring inside, and what has to be bought for it.</summary>
internal sealed class Later
{
    private readonly ShedModel _model;
    private readonly Solution _solution;
    private readonly List<int> _boats;

    private Later(ShedModel model, Solution solution, List<int> boats) =>
        (_model, _solution, _boats) = (model, solution, boats);

    /// <summary>What to buy.</summary>
    public IReadOnlyList<PartCount> Bought => _model.Bought(_solution.Chosen);

    /// <summary>How well each aim was met; empty when nothing is left to do.</summary>
    public IReadOnlyList<AimResult> Aims => _solution.Aims;

    /// <remarks>
    /// What today's jobs took for a boat that is not inside yet counts as still at hand: it is kept or given back.
    /// </remarks>
    public static Later Of(Today today, Stores stores, ChoiceSolver solver)
    {
        ILookup<bool, int> boats = Enumerable.Range(0, today.Boats.Count).ToLookup(i => today.State(i).IsInside);
        Stores shelf = stores.Without(PartCount.Of(
            boats[true].SelectMany(i => today.State(i).Options).SelectMany(o => o.Parts)));
        var model = new ShedModel([.. boats[false].Select(i => today.Boats[i])], shelf, canBuy: true);
        List<int> earlier = [.. boats[false].SelectMany(today.Chosen)];
        IReadOnlyList<Aim> aims =
        [
            model.MostAboveFloors, model.MostInside, model.MostKept(earlier), ShedModel.FewestBought,
            model.LeastDeviation, model.LeastWork,
        ];
        return new(model, earlier.Count == 0 ? new([], []) : solver.Solve(model.Choices, aims, earlier), [.. boats[false]]);
    }

    /// <summary>What a boat is when the parts are there; null when it was brought inside today.</summary>
    public BoatState? State(int boat) =>
        _boats.IndexOf(boat) is >= 0 and int place ? _model.State(_solution.Chosen, place) : null;
}
