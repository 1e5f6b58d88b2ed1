namespace Gatewright.Cli.Tests.Harness;

/// <summary>The files that come with the program to try it on, and those of these tests.</summary>
internal static class ExampleFiles
{
    public const string Shed = "examples/shed.csv";
    public const string Stores = "examples/stores.csv";
    public const string Jobs = "examples/jobs.csv";
    public const string Rig = "examples/rig.csv";
    public const string Oars = "examples/oars.csv";
    public const string Small = "Data/shed.csv";
    public const string Wrong = "Data/wrong.csv";

    /// <summary>Every file of readings there is.</summary>
    public static IEnumerable<string> All =>
        Directory.EnumerateFiles("examples", "*.csv").Where(file => file is not (Stores or Jobs or Rig or Oars)).Append(Small).Order(StringComparer.Ordinal);

    public static TheoryData<string> AllAsTheory => [.. All];
}
