using Gatewright.App.Frame;

namespace Gatewright.App.Tests.Frame;

public class ByNameTests
{
    [Fact]
    public void Letters_with_dots_stand_beside_those_without_and_case_does_not_count() =>
        // DIN 5007-1 (from memory): ä as a, ö as o, ü as u, ß as ss.
        Assert.Equal(
            ["Ähre", "amsel", "Mole", "Möwe", "Straße", "Strasse 2", "Überfahrt", "Uferlauf"],
            new[] { "Uferlauf", "Überfahrt", "Mole", "Strasse 2", "amsel", "Straße", "Möwe", "Ähre" }.Order(ByName.Order));

    [Fact]
    public void Names_that_differ_by_dots_alone_have_an_order() => Assert.True(ByName.Order.Compare("Mowe", "Möwe") < 0);
}
