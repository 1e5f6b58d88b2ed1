using System.Reflection;
using Xunit.Sdk;
using Xunit.v3;

namespace Gatewright.Store.Tests;

/// <summary>Runs a test once on each engine.</summary>
public sealed class EveryEngineAttribute : DataAttribute
{
    public override ValueTask<IReadOnlyCollection<ITheoryDataRow>> GetData(MethodInfo testMethod, DisposalTracker disposalTracker) =>
        new([.. Enum.GetValues<Engine>().Select(engine => new TheoryDataRow<Engine>(engine))]);

    public override bool SupportsDiscoveryEnumeration() => true;
}
