using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What was found of oars, on which no verdict is given.</summary>
internal static class OarWords
{
    /// <summary>Oars whose sleeve has probably slipped, which no verdict on a gate shows.</summary>
    public static IEnumerable<string> SlippedSleeves(BoatCheck check)
    {
        foreach (GatePlace oar in check.Readings.Readings.Where(r => r.Item == ReadItem.Sleeve).Select(r => r.Gate).Distinct().Order())
        {
            var slipped = new CausePart(Cause.Sleeve, oar);
            double probability = check.Diagnosis.Probability(part => part == slipped);
            if (probability >= CauseWords.ProbablyWrong)
            {
                double degrees = SleeveBeliefs.MeanDegrees(check.Diagnosis, oar, slipped);
                yield return $"the oar of {oar}: its sleeve has probably slipped ({Figures.Percent(probability)}), so that its blade "
                    + $"has {Figures.Degrees(Math.Abs(degrees))}° {(degrees > 0 ? "more" : "less")} pitch than the gate. "
                    + "Not a verdict on the gate: see to the oar before it is rowed with";
            }
        }
    }
}
