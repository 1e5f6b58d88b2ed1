using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.ChancesFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Inputs;

/// <summary>The table of chances that a person named.</summary>
internal static class ChancesChoice
{
    /// <summary>The table of a file, the defaults where none is named; the defaults, too, when there are errors.</summary>
    public static ClubChances Read(string? file, List<InputProblem> errors)
    {
        if (file is null)
        {
            return ClubChances.Default;
        }

        using FileStream? content = InputFile.TryOpen(file, errors);
        if (content is null)
        {
            return ClubChances.Default;
        }

        ChancesInput input = ChancesFile.Read(file, content);
        errors.AddRange(input.Errors);
        return input.Table ?? ClubChances.Default;
    }
}
