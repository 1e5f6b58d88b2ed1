using System.Globalization;
using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Simulating;

namespace Gatewright.Cli.Simulate;

/// <summary>What a simulation is and found, in words.</summary>
internal static class FindingsWords
{
    public static string What(SimulateRequest request) => string.Create(CultureInfo.InvariantCulture,
        $"{Figures.Count(request.Boats, "boat")} of class {request.Class.Name}, drawn and read by simulation, seed {request.Seed}. Each has one gate with one fault, thrown by more than {Figures.Short(Ranking.LeastFault)}° in all, any gate and any of {BoatDraw.GateCauses.Count} causes alike. "
        + $"It lies on its rack, its level read; every gate is read {Places(request.Stations)}. What stands after ± is the standard error of a simulation of this size.{Table(request)}");

    public const string Prior =
        "As many boats more, as often faulty as boats are. Each cause at each gate, and of the whole boat, was given a probability: of those given about as much, so many were true.";

    public static string Brier(Reliability reliability) => string.Create(CultureInfo.InvariantCulture,
        $"Brier score {Four(reliability.Brier)}; {Four(reliability.Unread)} for stating what is usual without reading anything. 0 would be to know.");

    public const string Decided =
        "Decided is a boat when every gate that was judged other than good has its cause found, or when all were judged good and a hidden fault is unlikely. Right is one whose true cause is then the likeliest of its gate. What is not decided counts the readings that were taken; a level, or a gauge reversed, counts two.";

    /// <summary>"94.5 % ± 1.6".</summary>
    public static string Percent(Counted counted) => string.Create(CultureInfo.InvariantCulture,
        $"{100 * counted.Share:0.0} % ± {100 * counted.Error:0.0}");

    /// <summary>"12.0 ± 0.4".</summary>
    public static string Mean(Averaged averaged) => string.Create(CultureInfo.InvariantCulture,
        $"{averaged.Value:0.0} ± {averaged.Error:0.0}");

    /// <summary>"0.05 to 0.2".</summary>
    public static string Band(ReliabilityBand band) => string.Create(CultureInfo.InvariantCulture, $"{band.From:0.##} to {band.To:0.##}");

    /// <summary>"0.112 ± 0.021", the share of a band that was true.</summary>
    public static string True(ReliabilityBand band) => string.Create(CultureInfo.InvariantCulture, $"{band.True.Share:0.000} ± {band.Error:0.000}");

    public static string Three(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);

    private static string Four(Averaged averaged) => string.Create(CultureInfo.InvariantCulture, $"{averaged.Value:0.0000} ± {averaged.Error:0.0000}");

    private static string Table(SimulateRequest request) =>
        request.Chances is { } file ? $" What is likely, and how often boats are faulty, is as {file} has it." : string.Empty;

    private static string Places(IReadOnlyList<Station> stations)
    {
        List<string> places = [.. stations.Select(s => s.Phrase())];
        return places.Count == 1 ? places[0] : $"{string.Join(", ", places.SkipLast(1))} and {places[^1]}";
    }
}
