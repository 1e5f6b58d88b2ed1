using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Inputs;

/// <summary>The standard that a person named.</summary>
internal static class StandardChoice
{
    /// <summary>A built-in standard by its name, in any case, else the file of that name.</summary>
    public static (Standard? Standard, IReadOnlyList<InputProblem> Errors, IReadOnlyList<InputProblem> Warnings) Read(string name)
    {
        Standard? builtIn = Standard.BuiltIn.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (builtIn is not null)
        {
            return (builtIn, [], []);
        }

        if (!File.Exists(name) && !name.Contains('.', StringComparison.Ordinal))
        {
            string known = string.Join(", ", Standard.BuiltIn.Select(s => s.Name));
            return (null, [new("--standard", null, null, name, $"is neither a standard ({known}) nor a file.")], []);
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
