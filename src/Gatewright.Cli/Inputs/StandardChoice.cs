using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Inputs;

/// <summary>The standard that a person named.</summary>
internal static class StandardChoice
{
    /// <summary>A standard by its name, in any case, else the file of that name.</summary>
    /// <param name="name">The name, or the file.</param>
    /// <param name="known">The standards that go by name.</param>
    public static (Standard? Standard, IReadOnlyList<InputProblem> Errors, IReadOnlyList<InputProblem> Warnings) Read(
        string name, IReadOnlyCollection<Standard> known)
    {
        Standard? builtIn = known.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (builtIn is not null)
        {
            return (builtIn, [], []);
        }

        if (!File.Exists(name) && !name.Contains('.', StringComparison.Ordinal))
        {
            string names = string.Join(", ", known.Select(s => s.Name));
            return (null, [new("--standard", null, null, name, $"is neither a standard ({names}) nor a file.")], []);
        }

        var errors = new List<InputProblem>();
        using FileStream? content = InputFile.TryOpen(name, errors);
        if (content is null)
        {
            return (null, errors, []);
        }

        StandardInput input = StandardFile.Read(name, content);
        return (input.Standard, input.Errors, input.Warnings);
    }
}
