using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.ChancesFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances;

/// <summary>The file that a table of chances is kept in.</summary>
internal static class TableFile
{
    /// <summary>Writes the table, whole or not at all: beside its place first, then into it.</summary>
    public static void TryWrite(string file, ClubChances table, List<InputProblem> errors)
    {
        string beside = $"{file}.new";
        try
        {
            File.WriteAllText(beside, ChancesFile.Text(table));
            File.Move(beside, file, overwrite: true);
        }
        catch (Exception exception) when (IsOfTheFile(exception))
        {
            errors.Add(new(file, null, null, null, $"cannot be written: {exception.Message}"));
        }
    }

    /// <summary>Keeps a copy beside the file, under the first name that is free: chances.json.kept-1, chances.json.kept-2.</summary>
    /// <returns>The copy, or null and an error.</returns>
    public static string? TryKeep(string file, List<InputProblem> errors)
    {
        for (int number = 1; ; number++)
        {
            string copy = FormattableString.Invariant($"{file}.kept-{number}");
            try
            {
                if (!Path.Exists(copy))
                {
                    File.Copy(file, copy);
                    return copy;
                }
            }
            catch (Exception exception) when (IsOfTheFile(exception))
            {
                errors.Add(new(copy, null, null, null, $"cannot be written, so nothing was reset: {exception.Message}"));
                return null;
            }
        }
    }

    private static bool IsOfTheFile(Exception exception) =>
        exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;
}
