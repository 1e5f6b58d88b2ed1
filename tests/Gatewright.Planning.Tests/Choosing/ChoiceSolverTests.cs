using FsCheck.Xunit;
using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing;

public class ChoiceSolverTests
{
    private static readonly ChoiceSolver Solver = new(SolverLimits.Default);

    [Property(MaxTest = 150)]
    public void The_choice_is_the_best_that_trying_every_one_finds(int seed)
    {
        var drawn = new RandomModel(seed);

        Solution solution = Solver.Solve(drawn.Model, drawn.Aims, drawn.Nothing);

        Assert.Equal(EveryChoice.Best(drawn.Model, drawn.Aims), solution.Aims.Select(a => a.Value));
        Assert.All(solution.Aims, a => Assert.True(a.IsProven, a.Name));
        Assert.All(
            drawn.Model.Resources.Zip(drawn.Model.Used(solution.Chosen)),
            r => Assert.True(r.First.CanBeBought || r.Second <= r.First.Capacity));
        Assert.Equal(drawn.Aims.SelectMany(a => a.Account(drawn.Model, solution.Chosen, 0)).Select(a => a.Value), solution.Aims.Select(a => a.Value));
    }

    [Property(MaxTest = 40)]
    public void It_needs_no_choice_to_start_from(int seed)
    {
        var drawn = new RandomModel(seed);

        Assert.Equal(
            Solver.Solve(drawn.Model, drawn.Aims, drawn.Nothing).Aims,
            Solver.Solve(drawn.Model, drawn.Aims).Aims);
    }

    [Property(MaxTest = 20)]
    public void The_same_question_has_the_same_answer(int seed)
    {
        var drawn = new RandomModel(seed);

        Assert.Equal(
            Solver.Solve(drawn.Model, drawn.Aims, drawn.Nothing).Chosen,
            Solver.Solve(drawn.Model, drawn.Aims, drawn.Nothing).Chosen);
    }

    [Fact]
    public void Where_nothing_fits_it_says_so()
    {
        var model = new ChoiceModel([[new([new Use(0, 2)])]], [new Resource(1)], []);

        InvalidOperationException refused = Assert.Throws<InvalidOperationException>(
            () => Solver.Solve(model, [new Aim.OfOptions("worth", true, [[1]])]));

        Assert.Equal("No choice keeps within the capacities.", refused.Message);
    }

    [Fact]
    public void Without_time_to_look_it_keeps_what_it_knows_and_proves_nothing()
    {
        // With so little work allowed not even the linear relaxation of a hundred by a hundred is solved.
        int[][] cost = Published.Assignment.Read("assign100.txt");
        ChoiceModel model = Published.Assignment.Model(cost);
        IReadOnlyList<int> diagonal = [.. Enumerable.Range(0, cost.Length)];

        AimResult result = new ChoiceSolver(new(WorkPerAim: 1e-6))
            .Solve(model, [new Aim.OfOptions("cost", false, cost)], diagonal).Aims[0];

        Assert.False(result.IsProven);
        Assert.InRange(result.Value, 306, diagonal.Sum(i => (long)cost[i][i]));
        Assert.InRange(result.Bound, cost.Sum(row => (long)row.Min()), 305);
    }
}
