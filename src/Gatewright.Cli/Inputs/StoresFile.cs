using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Cli.Inputs;

/// <summary>The file of stores that a person named.</summary>
internal static class StoresFile
{
    /// <summary>What it says, or null where it cannot be opened; its errors are added to the others.</summary>
    public static StoresInput? Read(string file, List<InputProblem> errors)
    {
        using FileStream? content = InputFile.TryOpen(file, errors);
        if (content is null)
        {
            return null;
        }

        StoresInput stores = StoresCsv.Read(file, content);
        errors.AddRange(stores.Errors);
        return stores;
    }
}
