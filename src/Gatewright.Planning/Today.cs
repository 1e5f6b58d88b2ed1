using Gatewright.Core.Mending;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning;

/// <summary>The best that can be done with what is on the shelf.</summary>
internal sealed class Today
{
    private readonly ShedModel _model;
    private readonly Solution _solution;

    private Today(IReadOnlyList<BoatWork> boats, ShedModel model, Solution solution) =>
        (Boats, _model, _solution) = (boats, model, solution);

    /// <summary>How well each aim was met; empty when there is nothing to mend.</summary>
    public IReadOnlyList<AimResult> Aims => _solution.Aims;

    /// <summary>The boats, with all their options.</summary>
    public IReadOnlyList<BoatWork> Boats { get; }

    public static Today Of(IReadOnlyList<BoatWork> boats, Stores stores, ChoiceSolver solver)
    {
        var model = new ShedModel([.. boats.Select(b => b.Within(stores))], stores, canBuy: false);
        IReadOnlyList<Aim> aims =
            [model.MostAboveFloors, model.MostInside, model.LeastDeviation, model.LeastWork];
        return new(boats, model, boats.Count == 0 ? new([], []) : solver.Solve(model.Choices, aims, model.Nothing));
    }

    /// <summary>What a boat is when it is done.</summary>
    public BoatState State(int boat) => _model.State(_solution.Chosen, boat);

    /// <summary>What was chosen for a boat, by its places among all options of each gate.</summary>
    public IEnumerable<int> Chosen(int boat) =>
        State(boat).Options.Zip(Boats[boat].Gates, (chosen, options) => options.ToList().IndexOf(chosen));
}
