using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Cli.CheckShed.ForPrograms;

/// <summary>The answer for programs.</summary>
internal static class ShedJson
{
    public static string Of(ShedCheck shed) => CheckJson.Text(new CheckDocument(
        CheckDocument.Name,
        CheckedStandard.Of(shed.Standard),
        [.. shed.Boats.AsParallel().AsOrdered().Select(boat => CheckMapping.Boat(boat, shed.Changed.GetValueOrDefault(boat.Verdict.Boat)))],
        [.. shed.Warnings.Select(CheckedProblem.Of)],
        [.. shed.Rigs.Select(rig => rig.Written)]));
}
