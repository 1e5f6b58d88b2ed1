namespace Gatewright.Core.Diagnosing;

/// <summary>All that a story does to the prior of the state: its openings together, as spans.</summary>
internal readonly ref struct Opened(
    ReadOnlySpan<int> unknowns, ReadOnlySpan<double> variances, ReadOnlySpan<double> shifts, bool isMoved)
{
    /// <summary>Which unknowns, none twice.</summary>
    public ReadOnlySpan<int> Unknowns { get; } = unknowns;

    /// <summary>D: the variance added to each.</summary>
    public ReadOnlySpan<double> Variances { get; } = variances;

    /// <summary>s: how far the mean of each is moved.</summary>
    public ReadOnlySpan<double> Shifts { get; } = shifts;

    /// <summary>Whether any is moved: most stories move none, and skip the work.</summary>
    public bool IsMoved { get; } = isMoved;

    public int Count => Unknowns.Length;
}

/// <summary>
/// Room to gather a story's openings in, used again for story after story; by one caller, never kept: a diagnosis may
/// be asked from several threads at once.
/// </summary>
internal sealed class OpenedBuffer(int most)
{
    private readonly int[] _unknowns = new int[most];
    private readonly double[] _variances = new double[most];
    private readonly double[] _shifts = new double[most];

    /// <summary>Room for any two of these openings.</summary>
    public static OpenedBuffer For(List<Opening> openings) =>
        new(2 * openings.Select(opening => opening.Unknowns.Length).DefaultIfEmpty().Max());

    /// <summary>Valid until the next call.</summary>
    public Opened Gather(Opening? first, Opening? second)
    {
        int count = Append(first, 0);
        count = Append(second, count);
        bool moved = first?.Shifts.Length > 0 || second?.Shifts.Length > 0;
        return new(_unknowns.AsSpan(0, count), _variances.AsSpan(0, count), _shifts.AsSpan(0, count), moved);
    }

    private int Append(Opening? opening, int at)
    {
        if (opening is null)
        {
            return at;
        }

        opening.Unknowns.CopyTo(_unknowns, at);
        opening.Variances.CopyTo(_variances, at);
        _shifts.AsSpan(at, opening.Unknowns.Length).Clear();
        opening.Shifts.CopyTo(_shifts, at);
        return at + opening.Unknowns.Length;
    }
}
