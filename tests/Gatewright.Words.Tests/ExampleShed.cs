using System.Reflection;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;
using Gatewright.Words.Told;

namespace Gatewright.Words.Tests;

/// <summary>The shed of the examples, checked.</summary>
internal static class ExampleShed
{
    private static readonly Lazy<ToldShed> Checked = new(Check);

    public static ToldShed Shed => Checked.Value;

    /// <summary>Everything that can be told of it: the report with all there is, and each boat in brief.</summary>
    public static IReadOnlyList<string> Everything(Wording say) =>
    [
        .. say.Shed.Statements(Shed, new(All: true, Explain: true)),
        .. Shed.Boats.SelectMany(say.Tales.Of),
        .. Shed.Boats.SelectMany(boat => boat.Verdict.Gates.Select(gate => say.Reasons.Why(gate, boat.Verdict.Standard)).OfType<string>()),
    ];

    public static string Embedded(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd();
    }

    private static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"The tests were built without {name}.");

    private static ToldShed Check()
    {
        using Stream file = Open("shed.csv");
        ReadingsInput input = ReadingsCsv.Read([new("shed.csv", file)], CheckSettings.Default.Diagnosing.Measuring);
        Assert.Empty(input.Errors);
        return new([.. input.Records.Select(boat => boat.Check(CheckSettings.Default))], Standard.Club) { NeedsAttention = true };
    }
}
