using System.Globalization;
using Google.OrTools.Sat;

namespace Gatewright.Planning.Choosing;

/// <summary>Makes the best choice: the first aim before all, then the second among what is best by the first, and so on.</summary>
/// <param name="limits">How long it may look.</param>
internal sealed class ChoiceSolver(SolverLimits limits)
{
    /// <summary>The best choice, or the best that was found within the limits; its account says which.</summary>
    /// <param name="model">What there is to choose.</param>
    /// <param name="aims">What is wanted, the most important first.</param>
    /// <param name="start">A choice within the capacities to start from, if one is known: the answer is never worse.</param>
    /// <exception cref="InvalidOperationException">There is no choice within the capacities, or none was found.</exception>
    public Solution Solve(ChoiceModel model, IReadOnlyList<Aim> aims, IReadOnlyList<int>? start = null)
    {
        var solving = new SolverModel(model);
        IReadOnlyList<int>? chosen = start;
        var results = new List<AimResult>();
        foreach (Aim aim in aims)
        {
            LinearExpr sum = solving.Sum(aim);
            long? bound = null;
            if (chosen is null || aim.Of(model, chosen) != aim.Ideal)
            {
                (chosen, bound) = Best(solving, sum, aim, chosen);
            }

            long value = aim.Of(model, chosen);
            results.AddRange(aim.Account(model, chosen, bound ?? value));
            solving.Model.Add(aim.IsMost ? sum >= value : sum <= value);
        }

        return new(chosen ?? throw new InvalidOperationException("Nothing is wanted, so nothing is chosen."), results);
    }

    private (IReadOnlyList<int> Chosen, long? Bound) Best(
        SolverModel solving, LinearExpr sum, Aim aim, IReadOnlyList<int>? known)
    {
        if (known is not null)
        {
            solving.StartFrom(known);
        }

        if (aim.IsMost)
        {
            solving.Model.Maximize(sum);
        }
        else
        {
            solving.Model.Minimize(sum);
        }

        using var solver = new CpSolver { StringParameters = Parameters() };
        switch (solver.Solve(solving.Model))
        {
            case CpSolverStatus.Optimal:
                return (solving.Chosen(solver), null);
            case CpSolverStatus.Feasible:
                return (solving.Chosen(solver), Bound(solver, aim));
            case CpSolverStatus.Unknown when known is not null:
                return (known, aim.Ideal);
            case CpSolverStatus.Infeasible:
                throw new InvalidOperationException("No choice keeps within the capacities.");
            case CpSolverStatus status:
                throw new InvalidOperationException($"The solver found no choice: {status}.");
        }
    }

    /// <summary>
    /// The solver's bound is of a sum of whole numbers, so what lies between two of them is not reached. Where it found
    /// nothing at all it has none, and only the ideal is known.
    /// </summary>
    private static long Bound(CpSolver solver, Aim aim) => aim.IsMost
        ? Math.Min(aim.Ideal, (long)Math.Floor(solver.BestObjectiveBound + 1e-6))
        : Math.Max(aim.Ideal, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));

    /// <summary>
    /// One worker, since several would answer in the order in which they finish. The full linear relaxation, because with
    /// the default one worker misses the optimum of a 30 × 30 assignment; and one search alone, because taking turns among
    /// many (interleave_search) took ten times the work on an assignment of 100 × 100. Little presolving: the search is
    /// short, and on a shed of 60 boats three rounds with probing took three times as long as all the rest.
    /// </summary>
    private string Parameters() => string.Create(
        CultureInfo.InvariantCulture,
        $"num_search_workers:1,linearization_level:2,cp_model_probing_level:0,max_presolve_iterations:1,symmetry_level:0,random_seed:{limits.Seed},max_deterministic_time:{limits.WorkPerAim}");
}
