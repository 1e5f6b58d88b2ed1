using System.CommandLine.Parsing;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;

namespace Gatewright.Cli.Gearings;

/// <summary>What stands on the command line as a name, = and a number: <c>spread=-1</c>, <c>catch=+2</c>, <c>load=+1%</c>.</summary>
internal static class NamedNumber
{
    /// <summary>Reads changes, or says what was expected.</summary>
    public static RigStep[] Steps(ArgumentResult result) =>
        Each(result, WrittenStep.Parse, text => $"--change: '{text}' is no change: expected {WrittenStep.Expected}");

    /// <summary>Reads wishes, or says what was expected.</summary>
    public static WrittenWish[] Wishes(ArgumentResult result) =>
        Each(result, WrittenWish.Parse, text => $"--want: '{text}' is no wish: expected {WrittenWish.Expected}");

    /// <summary>Reads what may be set, or says what was expected.</summary>
    public static WrittenBounds[] Allowed(ArgumentResult result) =>
        Each(result, WrittenBounds.Parse, text => $"--allow: '{text}' is nothing to set: expected {WrittenBounds.Expected}");

    private static T[] Each<T>(ArgumentResult result, Func<string, T?> parse, Func<string, string> wrong)
        where T : struct
    {
        var read = new List<T>();
        foreach (string text in result.Tokens.Select(t => t.Value))
        {
            if (parse(text) is not { } one)
            {
                result.AddError(wrong(text));
                return [];
            }

            read.Add(one);
        }

        return [.. read];
    }
}
