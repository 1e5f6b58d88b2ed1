using Gatewright.Architecture.Tests.Samples;

namespace Gatewright.Architecture.Tests.Immutability;

public class ImmutabilityTests
{
    private static IEnumerable<Type> Core => HandWritten.Types(typeof(Core.Side).Assembly);

    [Fact]
    public void No_static_of_Core_changes() => Rule.Holds(StaticState.Violations(Core));

    [Fact]
    public void No_type_of_Core_changes() => Rule.Holds(InstanceState.Violations(Core));

    [Theory]
    [InlineData(typeof(Changing.StaticThatIsSet), "_count is a static that can be set")]
    [InlineData(typeof(Changing.StaticProperty), "<Count>k__BackingField is a static that can be set")]
    [InlineData(typeof(Changing.StaticArray), "Table is a static whose content can be changed")]
    [InlineData(typeof(Changing.StaticList), "Seen is a static whose content can be changed")]
    [InlineData(typeof(Changing.StaticArrayInDisguise), "<All>k__BackingField is a static that can be cast to something that can be changed")]
    public void A_static_that_changes_is_found(Type sample, string fault) =>
        Assert.Equal([$"{sample.FullName}.{fault}"], StaticState.Violations([sample]));

    [Theory]
    [InlineData(typeof(Changing.OpenStruct), " is a struct that is not readonly")]
    [InlineData(typeof(Changing.Setter), ".Value has a setter")]
    [InlineData(typeof(Changing.PrivateSetter), ".Value has a setter")]
    [InlineData(typeof(Changing.OpenField), "._value can be set")]
    [InlineData(typeof(Changing.RemembersANumber), ".<Value>k__BackingField can be set")]
    [InlineData(typeof(Changing.ArrayOut), ".Values hands out what can be changed")]
    [InlineData(typeof(Changing.ListOut), ".Values hands out what can be changed")]
    public void A_type_that_changes_is_found(Type sample, string fault) =>
        Assert.Contains(sample.FullName + fault, InstanceState.Violations([sample]));

    [Fact]
    public void Types_that_last_are_left_alone()
    {
        Type[] lasting = [.. HandWritten.Types(typeof(Lasting).Assembly)
            .Where(type => type == typeof(Lasting) || type.DeclaringType == typeof(Lasting))];

        Assert.Equal(4, lasting.Length);
        Assert.Empty(StaticState.Violations(lasting));
        Assert.Empty(InstanceState.Violations(lasting));
    }

    [Fact]
    public void Every_folder_of_Core_is_looked_at() =>
        Assert.Superset(
            new HashSet<string?> { "Gatewright.Core", "Gatewright.Core.Geometry", "Gatewright.Core.Diagnosing" },
            Core.Select(type => type.Namespace).ToHashSet());
}
