using Gatewright.Core.Measuring;

namespace Gatewright.Core.Load;

/// <summary>What is to be gained by mending one gate to its target, all else left as it is.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Fall">By how much it is expected to lower what is asked about; negative where it makes it worse.</param>
/// <param name="Probability">How likely it is that nothing else lowers it more, and that it lowers it at all.</param>
public sealed record MendGain(GatePlace Gate, double Fall, double Probability);

/// <summary>What is to be gained by turning the sleeve of one oar by what it is off, all else left as it is.</summary>
/// <param name="Gate">The gate it is rowed in.</param>
/// <param name="Oar">What the oar is called; null where nobody said which oar is in that gate, or where its sleeve was read with the boat.</param>
/// <param name="ToBow">
/// How far the top of the blade has to come to the bow, the sleeve's flat held; negative to the stern. Its u is that of the sleeve.
/// </param>
/// <param name="Fall">By how much it is expected to lower what is asked about; negative where it makes it worse.</param>
/// <param name="Probability">How likely it is that nothing else lowers it more, and that it lowers it at all.</param>
public sealed record SleeveGain(GatePlace Gate, string? Oar, Estimate ToBow, double Fall, double Probability);

/// <summary>What to mend first: a gate, or the sleeve of the oar in it.</summary>
/// <param name="Now">What is asked about, as it is expected to be now.</param>
/// <param name="Gates">Every gate, the likeliest to be right first.</param>
/// <param name="Sleeves">Every oar whose sleeve was read to be off, by more than twice its u, the likeliest to be right first.</param>
/// <param name="None">How likely it is that whichever one of them is mended, it is no better.</param>
public sealed record MendFirst(double Now, IReadOnlyList<MendGain> Gates, IReadOnlyList<SleeveGain> Sleeves, double None)
{
    /// <summary>
    /// The gate to mend first; null where a sleeve is to be turned first, and where nothing is worth it: where none is likelier, and
    /// where nothing is expected to lower what is asked about. What is likeliest right may yet be expected to make it worse.
    /// </summary>
    public MendGain? Gate => Worth(LikeliestGate?.Probability) is { } least && !(LikeliestSleeve?.Probability > least) ? LikeliestGate : null;

    /// <summary>The sleeve to turn first, where that is likelier to be right than mending any gate; else null.</summary>
    public SleeveGain? Sleeve => Worth(LikeliestSleeve?.Probability) is { } least && !(LikeliestGate?.Probability >= least) ? LikeliestSleeve : null;

    private MendGain? LikeliestGate => Gates.FirstOrDefault(g => g.Fall > 0);

    private SleeveGain? LikeliestSleeve => Sleeves.FirstOrDefault(s => s.Fall > 0);

    private double? Worth(double? probability) => probability >= None ? probability : null;

    /// <summary>The same with so many times the pull: probabilities and turns stay, and the order with them.</summary>
    internal MendFirst Times(double factor) => this with
    {
        Now = factor * Now,
        Gates = [.. Gates.Select(g => g with { Fall = factor * g.Fall })],
        Sleeves = [.. Sleeves.Select(s => s with { Fall = factor * s.Fall })],
    };
}
