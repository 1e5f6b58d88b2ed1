using System.CommandLine;

namespace Gatewright.Cli.Terminals;

/// <summary>
/// A command that takes files would take a mistyped option for one; what begins with a dash is refused instead, with
/// the option that was probably meant.
/// </summary>
internal static class MistypedOption
{
    /// <summary>As many letters may be wrong before a suggestion is a guess.</summary>
    private const int MostWrong = 3;

    public static void Refuse(Command command, Argument<string[]> files) => files.Validators.Add(result =>
    {
        foreach (string token in result.Tokens.Select(token => token.Value).Where(IsOption))
        {
            string? meant = command.Options.Select(option => option.Name)
                .Where(name => Distance(name, token) <= MostWrong)
                .MinBy(name => Distance(name, token));
            result.AddError(meant is null
                ? $"Unrecognized option '{token}'. A file of that name is ./{token}"
                : $"Unrecognized option '{token}'. Did you mean {meant}?");
        }
    });

    private static bool IsOption(string token) => token.Length > 1 && token[0] == '-';

    /// <summary>Letters put in, left out, or wrong (Levenshtein).</summary>
    private static int Distance(string one, string other)
    {
        int[] row = [.. Enumerable.Range(0, other.Length + 1)];
        for (int i = 1; i <= one.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.Length; j++)
            {
                int replaced = diagonal + (one[i - 1] == other[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
