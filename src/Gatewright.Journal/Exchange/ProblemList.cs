namespace Gatewright.Journal.Exchange;

/// <summary>Problems as they are found, a thousand of them kept and the rest counted.</summary>
internal sealed class ProblemList
{
    /// <summary>More than anyone reads; few enough that a file of nothing but errors takes no memory to speak of.</summary>
    public const int MostKept = 1_000;

    private readonly List<(int Source, InputProblem Problem)> _kept = [];

    /// <summary>How many were not kept.</summary>
    public int Beyond { get; private set; }

    public bool Any => _kept.Count > 0;

    public bool IsFull => _kept.Count == MostKept;

    /// <summary>Whether another is worth putting into words; counts it when it is not.</summary>
    public bool TakesAnother()
    {
        bool takes = !IsFull;
        Beyond += takes ? 0 : 1;
        return takes;
    }

    public void Add(int source, InputProblem problem) => _kept.Add((source, problem));

    /// <summary>In the order of sources and lines, those of one line as they were found; what concerns a whole source last.</summary>
    public IReadOnlyList<InputProblem> InOrder() =>
        [.. _kept.OrderBy(k => k.Source).ThenBy(k => k.Problem.Line ?? int.MaxValue).Select(k => k.Problem)];
}
