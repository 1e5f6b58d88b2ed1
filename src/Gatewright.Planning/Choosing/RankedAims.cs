namespace Gatewright.Planning.Choosing;

/// <summary>
/// Several small sums of options, each to be as small as can be once those before it are, in one look of the solver: each
/// weighs more than all that come after it together, so the order holds exactly.
/// </summary>
internal sealed record RankedAims : Aim
{
    private readonly long[] _weights;

    /// <param name="aims">The sums, the most important first; none is to be large, and nothing is worth less than 0.</param>
    public RankedAims(params IReadOnlyList<OfOptions> aims)
        : base(string.Join(", ", aims.Select(a => a.Name)), false)
    {
        Aims = aims;
        _weights = new long[aims.Count];
        long weight = 1;
        for (int i = aims.Count - 1; i >= 0; i--)
        {
            _weights[i] = weight;
            weight = checked(weight * (1 + aims[i].Worth.Sum(worth => (long)worth.Max())));
        }
    }

    /// <summary>The sums, the most important first.</summary>
    public IReadOnlyList<OfOptions> Aims { get; }

    /// <inheritdoc/>
    public override long Ideal => Aims.Select((aim, i) => _weights[i] * aim.Ideal).Sum();

    /// <summary>Of each group and option, its part in the one sum.</summary>
    public IEnumerable<long> Worth => Enumerable.Range(0, Aims[0].Worth.Count).SelectMany(group =>
        Enumerable.Range(0, Aims[0].Worth[group].Count).Select(option =>
            Aims.Select((aim, i) => _weights[i] * aim.Worth[group][option]).Sum()));

    /// <inheritdoc/>
    public override long Of(ChoiceModel model, IReadOnlyList<int> chosen) =>
        Aims.Select((aim, i) => _weights[i] * aim.Of(model, chosen)).Sum();

    /// <summary>
    /// A bound of the one sum bounds the first aim by its whole multiple of that aim's weight; and the next one too, as
    /// long as those before it reach their bounds.
    /// </summary>
    public override IEnumerable<AimResult> Account(ChoiceModel model, IReadOnlyList<int> chosen, long bound)
    {
        bool isReached = true;
        for (int i = 0; i < Aims.Count; i++)
        {
            long value = Aims[i].Of(model, chosen);
            long own = isReached ? Math.Max(bound / _weights[i], Aims[i].Ideal) : Aims[i].Ideal;
            yield return new(Aims[i].Name, value, own);
            isReached &= value == own;
            bound -= own * _weights[i];
        }
    }
}
