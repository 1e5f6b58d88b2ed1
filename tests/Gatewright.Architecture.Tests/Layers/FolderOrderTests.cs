using System.Reflection;
using ArchUnitNET.Loader;
using LoadedTypes = ArchUnitNET.Domain.Architecture;

namespace Gatewright.Architecture.Tests.Layers;

public class FolderOrderTests
{
    private const string Samples = "Gatewright.Architecture.Tests.Samples.Order";

    /// <summary>
    /// The way from a number to a mended gate. Mending uses what was diagnosed; nothing is diagnosed by what it would
    /// take to mend, and nothing real is decided by a simulation; a load takes its random numbers alone from there.
    /// </summary>
    private static readonly FolderOrder Core = new(
        "Gatewright.Core", "Numerics", "Geometry", "Measuring", "Judging", "Diagnosing", "Checking", "Advising", "Mending", "Rig", "Oars", "Stroke",
        "Changing", "Simulating", "Load");

    private static readonly LoadedTypes TheseTests = Load(typeof(FolderOrderTests).Assembly);

    [Fact]
    public void Folders_of_Core_use_only_those_before_them() =>
        Rule.Holds(Core.Violations(Load(typeof(Gatewright.Core.Side).Assembly)));

    [Theory]
    [InlineData("InField")]
    [InlineData("InBody")]
    [InlineData("InLambda")]
    [InlineData("InIterator")]
    [InlineData("AsArgumentOfAGeneric")]
    [InlineData("InANestedType")]
    public void A_use_of_a_later_folder_is_found(string sample)
    {
        Assert.Contains(
            new FolderOrder(Samples, "Early", "Late").Violations(TheseTests),
            found => found.StartsWith($"{Samples}.Early.{sample}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_use_of_an_earlier_folder_is_allowed() =>
        Assert.DoesNotContain(
            new FolderOrder(Samples, "Early", "Late").Violations(TheseTests),
            found => found.StartsWith(Samples + ".Late", StringComparison.Ordinal));

    [Fact]
    public void A_use_of_a_folder_by_the_root_is_found() =>
        Assert.Contains(
            new FolderOrder(Samples, "Early", "Late").Violations(TheseTests),
            found => found.StartsWith(Samples + ".RootUsesFolder", StringComparison.Ordinal));

    [Fact]
    public void A_folder_without_a_place_is_found() =>
        Assert.Contains(
            $"{Samples}.Late stands nowhere in the order of folders",
            new FolderOrder(Samples, "Early").Violations(TheseTests));

    private static LoadedTypes Load(Assembly assembly) =>
        new ArchLoader().LoadAssemblies(assembly).Build();
}
