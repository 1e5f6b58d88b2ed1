using Gatewright.Core.Checking;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.CheckShed;

/// <summary>The boats that a person named.</summary>
internal static class BoatChoice
{
    /// <summary>The boats of these names, in any case; all of them where none is named. A name of no boat is an error.</summary>
    public static IReadOnlyList<BoatRecord> Of(
        IReadOnlyList<BoatRecord> boats, IReadOnlyList<string> names, List<InputProblem> errors)
    {
        foreach (string name in names.Where(name => !boats.Any(boat => IsNamed(boat, name))))
        {
            string known = string.Join(", ", boats.Select(boat => boat.Current.Boat));
            errors.Add(new("--boat", null, null, name, $"is none of the boats that were read: {known}."));
        }

        return names.Count == 0 ? boats : [.. boats.Where(boat => names.Any(name => IsNamed(boat, name)))];
    }

    private static bool IsNamed(BoatRecord boat, string name) =>
        boat.Current.Boat.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
}
