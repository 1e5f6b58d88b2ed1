namespace Gatewright.Journal.Exchange;

/// <summary>Everything that was found wrong or odd in all sources.</summary>
internal sealed class Problems
{
    private readonly HashSet<(int Source, string Column, string? Value)> _warned = [];

    public ProblemList Errors { get; } = new();

    public ProblemList Warnings { get; } = new();

    /// <summary>Whether a warning is worth giving: what a spreadsheet did to a value, it did in every row.</summary>
    public bool IsNew(int source, string column, string? value) =>
        !Warnings.IsFull && _warned.Add((source, column, value));
}
