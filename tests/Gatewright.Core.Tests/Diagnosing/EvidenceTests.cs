using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using MathNet.Numerics.LinearAlgebra;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>Every story's evidence and state against the same model written out in full (<see cref="DenseModel"/>).</summary>
public sealed class EvidenceTests
{
    public static TheoryData<string> Names => [.. SampleBoats.All.Keys];

    /// <summary>Those of which nothing was told: what a report says is added to the evidence, and has tests of its own.</summary>
    public static TheoryData<string> NamesWithoutReports =>
        [.. SampleBoats.All.Where(sample => sample.Value.Context.Reports.Count == 0).Select(sample => sample.Key)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_storys_evidence_is_the_density_of_the_readings_under_it(string name)
    {
        (StoryWeights weights, DenseModel dense) = Both(name);
        Dictionary<string, double> found = Enumerable.Range(0, weights.Count)
            .ToDictionary(i => Key(weights, i), i => weights.Kernel.LogDensity + weights.Table.LogGain(i));
        List<DenseStory> stories = [.. dense.Stories()];
        Assert.Equal(stories.Select(s => s.Key).Order(), found.Keys.Order());

        // Logarithms of densities: 1e-6 is a millionth of the evidence itself.
        Assert.All(stories, s => Assert.Equal(dense.LogEvidence(s), found[s.Key], 1e-6));
    }

    [Theory]
    [MemberData(nameof(NamesWithoutReports))]
    public void Each_storys_probability_is_its_odds_times_its_evidence_over_the_sum(string name)
    {
        (StoryWeights weights, DenseModel dense) = Both(name);
        Dictionary<string, double> logs = dense.Stories().ToDictionary(s => s.Key, s => s.LogOdds + dense.LogEvidence(s));
        double most = logs.Values.Max();
        double total = logs.Values.Sum(log => Math.Exp(log - most));
        Assert.All(Enumerable.Range(0, weights.Count), i =>
            Assert.Equal(Math.Exp(logs[Key(weights, i)] - most) / total, weights.Probability(i), 1e-9));
        Assert.Equal(most + Math.Log(total), weights.LogTotal, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_storys_state_is_the_Kalman_update_of_its_prior(string name)
    {
        (StoryWeights weights, DenseModel dense) = Both(name);
        Dictionary<string, int> places = Places(weights.Kernel.Model.Layout);
        int[] at = [.. dense.Unknowns.Select(u => places[u])];
        Dictionary<string, DenseStory> stories = dense.Stories().ToDictionary(s => s.Key);
        for (int i = 0; i < weights.Count; i++)
        {
            (Vector<double> mean, Matrix<double> covariance) = dense.State(stories[Key(weights, i)]);
            StoryState state = weights.State(i);
            for (int k = 0; k < at.Length; k++)
            {
                // Degrees and square degrees: a millionth of a degree is nothing, and far above rounding.
                Assert.Equal(mean[k], state.Mean([at[k]], [1]), 1e-6);
                for (int l = 0; l <= k; l++)
                {
                    Assert.Equal(covariance[k, l], state.Covariance([at[k]], [1], [at[l]], [1]), 1e-6);
                }
            }
        }
    }

    /// <summary>Σ p m, and what varies within stories and between them: Σ p (v + m²) less the square of the mean.</summary>
    [Theory]
    [MemberData(nameof(NamesWithoutReports))]
    public void What_a_gate_probably_is_is_averaged_over_all_stories(string name)
    {
        (BoatReadings boat, BoatContext context) = SampleBoats.All[name];
        Diagnosis diagnosis = Boats.Diagnose(boat, context);
        var dense = new DenseModel(boat, context);
        List<DenseStory> stories = [.. dense.Stories()];
        double[] odds = [.. stories.Select(s => Math.Exp(s.LogOdds + dense.LogEvidence(s) - diagnosis.LogEvidence))];
        List<(Vector<double> Mean, Matrix<double> Covariance)> states = [.. stories.Select(dense.State)];
        Assert.All(diagnosis.Gates, gate =>
        {
            AssertAverage($"{gate.Gate} pitch", gate.GatePitch);
            AssertAverage($"{gate.Gate} aft", gate.LeanAft);
            AssertAverage($"{gate.Gate} out", gate.LeanOut);
        });

        // Stories under 1e-8 are left out: together under 1e-5 of a few degrees.
        void AssertAverage(string unknown, Estimate estimate)
        {
            int k = dense.Unknowns.ToList().IndexOf(unknown);
            double mean = odds.Zip(states, (p, state) => p * state.Mean[k]).Sum();
            double square = odds.Zip(states, (p, state) => p * (state.Covariance[k, k] + (state.Mean[k] * state.Mean[k]))).Sum();
            Assert.Equal(mean, estimate.Value.Degrees, 1e-4);
            Assert.Equal(Math.Sqrt(square - (mean * mean)), estimate.U.Degrees, 1e-4);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sum_of_unknowns_has_the_same_moments_asked_of_one_story_or_of_all(string name)
    {
        (StoryWeights weights, DenseModel dense) = Both(name);
        int size = weights.Kernel.Model.Layout.Size;
        int[] at = [.. Enumerable.Range(0, Math.Min(4, size)), size - 1];
        double[] share = [1, 0.5, -0.8, 0.3, -1];
        share = share[..at.Length];
        var sum = new StateSum(weights.Kernel, at, share);
        Assert.Equal(size, dense.Unknowns.Count);
        for (int i = 0; i < weights.Count; i++)
        {
            (double mean, double variance) = weights.Table.Moments(i, sum);
            StoryState state = weights.State(i);
            Assert.Equal(state.Mean(at, share), mean, 1e-9);
            Assert.Equal(state.Covariance(at, share, at, share), variance, 1e-9);
        }
    }

    private static (StoryWeights Weights, DenseModel Dense) Both(string name)
    {
        (BoatReadings boat, BoatContext context) = SampleBoats.All[name];
        return (Boats.Diagnose(boat, context).Weights, new DenseModel(boat, context));
    }

    private static string Key(StoryWeights weights, int story) => DenseStory.KeyOf(weights.Parts(story).Select(o => o.Part));

    /// <summary>Where the program keeps what the dense model calls by name.</summary>
    private static Dictionary<string, int> Places(StateLayout layout)
    {
        var places = new Dictionary<string, int>();
        foreach (GatePlace gate in layout.Gates)
        {
            int at = layout.Gate(gate);
            (places[$"{gate} pitch"], places[$"{gate} aft"], places[$"{gate} out"]) = (at, at + 1, at + 2);
        }

        for (int i = 0; i < layout.Shared.Lies.Count; i++)
        {
            places[$"bow {layout.Shared.Lies[i]}"] = layout.Lie(i);
            places[$"roll {layout.Shared.Lies[i]}"] = layout.Lie(i) + 1;
        }

        for (int i = 0; i < layout.Shared.Gauges.Count; i++)
        {
            places[$"zero {layout.Shared.Gauges[i].Name}"] = layout.Gauge(i);
        }

        layout.Oars.ForEach(oar => places[$"{oar} sleeve"] = layout.Sleeve(oar)!.Value);
        return places;
    }
}
