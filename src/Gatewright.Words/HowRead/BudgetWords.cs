using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.HowRead;

/// <summary>Where the uncertainty of the readings that decided comes from.</summary>
public sealed class BudgetWords
{
    private readonly Wording _say;

    internal BudgetWords(Wording say) => _say = say;

    /// <summary>The parts of a budget, how each is called and what it gives in degrees; last what they give together.</summary>
    public IReadOnlyList<(string Name, Func<UncertaintyBudget, double> Degrees)> Parts =>
    [
        (_say.Text("Budget.Resolution"), budget => budget.Resolution),
        (_say.Text("Budget.Repeatability"), budget => budget.Repeatability),
        (_say.Text("Budget.HeldAngle"), budget => budget.HeldAngle),
        (_say.Text("Budget.Level"), budget => budget.Level),
        (_say.Text("Budget.GaugeZero"), budget => budget.GaugeZero),
        (_say.Text("Budget.Combined"), budget => budget.CombinedDegrees),
    ];

    /// <summary>What is said under the figures.</summary>
    public string InAll => _say.Text("Budget.InAll");

    /// <summary>A sentence for each reading that decided something, or for the one nearest to a limit.</summary>
    public IEnumerable<string> Sentences(BoatCheck check)
    {
        string key = Budgets.IsNearest(check) ? "Budget.Nearest" : "Budget.From";
        return Budgets.Of(check).Select(pitch => _say.Text(key, Of(pitch)));
    }

    /// <summary>"seat 3 port at the catch, 2.4° ± 0.3: gauge step 0.14, … in all 0.34."</summary>
    private string Of(CorrectedPitch pitch)
    {
        string gate = _say.Names.Gate(pitch.Gate);
        string at = _say.Names.AtPoint(pitch.At);
        string figure = _say.Figures.Loose(pitch.Estimate);
        string parts = string.Join(", ", Parts.Select(part =>
            _say.Text("Budget.Part", part.Name, _say.Figures.Degrees(part.Degrees(pitch.Budget), 2))));
        return pitch.Repeats > 1
            ? _say.Text("Budget.Sentence.Repeats", gate, at, figure, pitch.Repeats, parts)
            : _say.Text("Budget.Sentence", gate, at, figure, parts);
    }
}
