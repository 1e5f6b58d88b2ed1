using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>What a command on a club comes to.</summary>
internal abstract record Answer
{
    /// <summary>It was done.</summary>
    /// <param name="Status">The exit status.</param>
    /// <param name="Sentences">What is told to people, a statement each.</param>
    /// <param name="Document">What is told to programs.</param>
    public sealed record Done(int Status, IReadOnlyList<string> Sentences, ClubDocument Document) : Answer;

    /// <summary>It was not done, and all is as it was.</summary>
    /// <param name="Errors">What is wrong.</param>
    /// <param name="Beyond">How many more errors there are.</param>
    /// <param name="So">What follows from it.</param>
    public sealed record Refused(IReadOnlyList<InputProblem> Errors, int Beyond, string So) : Answer;
}
