using FsCheck.Xunit;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Keeping;

namespace Gatewright.Journal.Tests.Keeping;

public class ThingKeysTests
{
    [Theory]
    [InlineData("Älteste Möwe", "aelteste-moewe-3f9a04c2")]
    [InlineData("  Grebe / 2 ", "grebe-2-3f9a04c2")]
    [InlineData("Éole Straße", "eole-strasse-3f9a04c2")]
    [InlineData("???", "3f9a04c2")]
    [InlineData("", "3f9a04c2")]
    [InlineData("A name that goes on for much longer than a key", "a-name-that-goes-on-for-3f9a04c2")]
    public void A_key_can_be_read(string name, string key) => Assert.Equal(key, ThingKeys.New(name, 0x3f9a04c2));

    [Property]
    public bool A_key_is_of_plain_letters_and_never_parts_a_boat_from_a_seat(string? name, uint chance)
    {
        string key = ThingKeys.New(name ?? string.Empty, chance);
        return key.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && key.Length <= 33
            && FieldType.Key.Problem(key) is null;
    }

    [Property]
    public bool Another_chance_is_another_key(string? name, uint one, uint other) =>
        one == other || ThingKeys.New(name ?? string.Empty, one) != ThingKeys.New(name ?? string.Empty, other);
}
