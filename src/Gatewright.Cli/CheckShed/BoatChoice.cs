using Gatewright.Cli.Rigs;
using Gatewright.Core.Checking;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.CheckShed;

/// <summary>The boats that a person named.</summary>
internal static class BoatChoice
{
    /// <summary>
    /// The boats of these names, in any case; all of them where none is named. A name of no boat is an error, but for one of
    /// which the rig alone is there.
    /// </summary>
    public static IReadOnlyList<BoatRecord> Of(
        IReadOnlyList<BoatRecord> boats, string option, IReadOnlyList<string> names, List<InputProblem> errors, IReadOnlyList<ShedRig> rigs)
    {
        if (names.Count == 0)
        {
            return boats;
        }

        IReadOnlyList<string> ofGates = [.. names.Where(name =>
            boats.Any(boat => IsNamed(boat, name)) || !rigs.Any(rig => IsChosen(rig.Boat, [name])))];
        return Named(boats, option, ofGates, errors);
    }

    /// <summary>Whether a boat is among those named, or none is.</summary>
    public static bool IsChosen(string boat, IReadOnlyList<string> names) =>
        names.Count == 0 || names.Any(name => boat.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The boats of these names, in any case. A name of no boat is an error.</summary>
    /// <param name="boats">All boats.</param>
    /// <param name="option">The option that has the names.</param>
    /// <param name="names">The names.</param>
    /// <param name="errors">Where errors go.</param>
    public static IReadOnlyList<BoatRecord> Named(
        IReadOnlyList<BoatRecord> boats, string option, IReadOnlyList<string> names, List<InputProblem> errors)
    {
        foreach (string name in names.Where(name => !boats.Any(boat => IsNamed(boat, name))))
        {
            string known = string.Join(", ", boats.Select(boat => boat.Current.Boat));
            errors.Add(new(option, null, null, name, $"is none of the boats that were read: {known}."));
        }

        return [.. boats.Where(boat => names.Any(name => IsNamed(boat, name)))];
    }

    private static bool IsNamed(BoatRecord boat, string name) =>
        boat.Current.Boat.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
}
