using System.CommandLine.Parsing;
using System.Globalization;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>Days on the command line, written alike in every country.</summary>
internal static class DayArgument
{
    /// <summary>Reads a day, or says what was expected.</summary>
    public static DateOnly? Read(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            return day;
        }

        result.AddError($"'{text}' is not a day as 2026-11-25: year, month, day.");
        return null;
    }
}
