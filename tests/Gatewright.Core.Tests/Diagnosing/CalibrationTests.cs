using Gatewright.Core.Diagnosing;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Simulating;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>
/// That a cause told with 70 % is there seven times in ten: boats drawn from the prior, every story as likely as its odds, read
/// with exact geometry, noise and rounding.
/// </summary>
/// <remarks>
/// A share p of n cases has the standard error √(p(1 − p)/n): at most 0.05 in a tenth with 100 cases, 0.02 with 600. So many
/// boats are drawn that every tenth here has several hundred, or next to none.
/// </remarks>
[Trait(Runs.Name, Runs.Once)]
public sealed class CalibrationTests
{
    private const int FewestCases = 100;

    [Theory]
    [InlineData("8+", "catch abeam finish", 12000)]
    [InlineData("4-", "catch finish", 24000)]
    [InlineData("2x", "abeam", 12000)]
    public void A_stated_probability_is_how_often_the_cause_is_there(string boatClass, string stations, int boats)
    {
        var plan = new BoatPlan(BoatClass.Parse(boatClass))
        {
            Stations = [.. Stations.All.Where(s => stations.Split(' ').Contains(s.Word()))],
        };
        Draws draws = SeededDraws.Of(1);
        var tenths = new (int Cases, double Stated, int True)[10];
        (double Stated, double Prior) brier = default;
        for (int i = 0; i < SeededDraws.Boats(boats); i++)
        {
            TrueBoat boat = BoatDraw.FromPrior(plan, draws);
            Diagnosis diagnosis = Boats.Diagnose(new Reader(boat, plan, draws).Round("boat"));
            foreach ((CausePart part, double stated) in GateCauses(diagnosis))
            {
                int isTrue = boat.Wrong.Contains(part) ? 1 : 0;
                ref (int Cases, double Stated, int True) tenth = ref tenths[Math.Min(9, (int)(10 * stated))];
                tenth = (tenth.Cases + 1, tenth.Stated + stated, tenth.True + isTrue);
                brier.Stated += Math.Pow(stated - isTrue, 2);
                brier.Prior += Math.Pow(plan.Settings.Chances.Of(part.Cause) - isTrue, 2);
            }
        }

        AssertCalibrated(tenths);

        // Better than telling every gate its prior chance, or nothing was learnt from the readings.
        Assert.True(brier.Stated < brier.Prior, FormattableString.Invariant($"{brier.Stated} against {brier.Prior}"));
    }

    /// <summary>The causes' probabilities alone: what each gate probably is would take as long again, and is not asked.</summary>
    private static IEnumerable<(CausePart Part, double Probability)> GateCauses(Diagnosis diagnosis) =>
        diagnosis.Weights.Openings.Select(o => o.Part).Zip(diagnosis.Weights.Marginals()).Where(c => c.First.Gate is not null);

    private static void AssertCalibrated((int Cases, double Stated, int True)[] tenths)
    {
        int judged = 0;
        foreach ((int cases, double stated, int isTrue) in tenths.Where(t => t.Cases >= FewestCases))
        {
            (double said, double seen) = (stated / cases, (double)isTrue / cases);
            double error = Math.Sqrt(said * (1 - said) / cases);
            string found = FormattableString.Invariant($"stated {said:0.000}, seen {seen:0.000} ± {error:0.000} of {cases}");
            TestContext.Current.TestOutputHelper?.WriteLine(found);
            Assert.True(Math.Abs(said - seen) <= 0.05, found);
            judged++;
        }

        Assert.True(judged >= 4, "Too few tenths were met to say anything.");
    }
}
