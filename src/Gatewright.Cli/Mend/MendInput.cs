using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Cli.Mend;

/// <summary>Everything a plan needs, or everything that is wrong with it.</summary>
/// <param name="Shed">The readings, the standard and the chances.</param>
/// <param name="Stores">What lies on the shelf; null when nobody said.</param>
/// <param name="Backstays">The boats whose riggers have backstays that can be set, by name.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="ErrorsBeyond">How many more errors there are.</param>
internal sealed record MendInput(
    ShedInput Shed, Stores? Stores, IReadOnlyList<string> Backstays, IReadOnlyList<InputProblem> Errors, int ErrorsBeyond)
{
    /// <summary>Reads all there is before it gives up, so that a person mends everything in one go.</summary>
    public static MendInput Read(MendRequest request, Terminal terminal)
    {
        ShedInput shed = ShedInput.Read(
            new("gatewright mend", request.Files, request.Standard, request.Chances, request.Boats, request.Place), terminal);
        var errors = new List<InputProblem>(shed.Errors);
        StoresInput? stores = request.Stores is { } file ? StoresFile.Read(file, errors) : null;
        IReadOnlyList<string> backstays = shed.Errors.Count > 0
            ? []
            : [.. BoatChoice.Named(shed.Boats, "--backstay", request.Backstays, errors).Select(b => b.Current.Boat)];
        return new(
            shed with { Warnings = [.. shed.Warnings, .. stores?.Warnings ?? []] },
            stores is null ? shed.Shelf : stores.Stores,
            backstays,
            errors,
            shed.ErrorsBeyond + (stores?.ErrorsBeyond ?? 0));
    }
}
