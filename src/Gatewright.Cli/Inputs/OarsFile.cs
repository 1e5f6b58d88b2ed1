using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.OarsFiles;

namespace Gatewright.Cli.Inputs;

/// <summary>The file of oars that a person named.</summary>
internal static class OarsFile
{
    /// <summary>What it says, or null where it cannot be opened; its errors are added to the others.</summary>
    public static OarsInput? Read(string file, List<InputProblem> errors)
    {
        using FileStream? content = InputFile.TryOpen(file, errors);
        if (content is null)
        {
            return null;
        }

        OarsInput oars = OarsCsv.Read(file, content);
        errors.AddRange(oars.Errors);
        return oars;
    }
}
