namespace Gatewright.Journal.Exchange.Check;

/// <summary>What is wrong with the input, so that nothing was judged.</summary>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="Beyond">How many more errors there are, which are not listed.</param>
public sealed record ProblemsDocument(string Format, IReadOnlyList<CheckedProblem> Errors, int Beyond)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.problems/1";
}

/// <summary>One thing about the input, and where it stands.</summary>
/// <param name="Source">The file, or <c>standard input</c>.</param>
/// <param name="Line">Its line, from 1; null where none is meant.</param>
/// <param name="Column">Its column's name; null where none is meant.</param>
/// <param name="Value">What stands there; null where nothing does.</param>
/// <param name="Message">What is wrong with it, or was expected.</param>
public sealed record CheckedProblem(string Source, int? Line, string? Column, string? Value, string Message)
{
    /// <summary>A problem as written.</summary>
    public static CheckedProblem Of(InputProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new(problem.Source, problem.Line, problem.Column, problem.Value, problem.Message);
    }
}
