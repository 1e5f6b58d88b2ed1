using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Copies;

/// <summary>What a device remembers beside a club goes when the club does.</summary>
public sealed class SettingsOfAClubTests(ServerOfTheRun server)
{
    [Fact]
    public async Task They_are_the_club_s_alone_and_there_when_the_device_is_opened_again()
    {
        Phone phone = await server.PhoneAsync(server.NewClub(), "m-1");
        (string one, string other) = (await StartAsync(phone), await StartAsync(phone));
        await phone.Device.SetAsync(one, "round", "of one");
        await phone.Device.SetAsync(other, "round", "of the other");
        await phone.Device.SetAsync(other, "round", null);
        await phone.OpenAsync();

        Assert.Equal(("of one", null), (phone.Device.Of(one, "round"), phone.Device.Of(other, "round")));
        Assert.Equal("of one", phone.Device.Settings[$"round/{one}"]);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task They_go_with_it(bool isHandedOver)
    {
        string target = server.NewClub();
        Phone phone = await server.PhoneAsync(target, "m-1");
        await phone.ExchangeAsync();
        await phone.Device.SetAsync("theme", "dark");
        await phone.Device.SetAsync(target, "round", "of the target");
        string[] before = Names(phone.Device);
        string club = await StartAsync(phone);
        await phone.Device.SetAsync(club, "round", "a");
        await phone.Device.SetAsync(club, "ticks travel teal", "b");
        Assert.Equal(before.Length + 2, phone.Device.Settings.Count);

        await (isHandedOver ? phone.Device.HandOverAsync(club, target) : phone.Device.LetGoAsync(club));

        Assert.Equal(before, Names(phone.Device));
        await phone.OpenAsync();
        Assert.Equal(before, Names(phone.Device));
    }

    [Fact]
    public async Task Nothing_is_kept_of_a_club_that_is_not_held()
    {
        Phone phone = await server.PhoneAsync(server.NewClub(), "m-1");
        string club = await StartAsync(phone);
        string[] before = Names(phone.Device);
        await phone.Device.LetGoAsync(club);

        await phone.Device.SetAsync(club, "chances", "counted");

        Assert.Equal(before, Names(phone.Device));
    }

    private static async Task<string> StartAsync(Phone phone) => (await phone.Device.StartClubAsync("Lock End")).Held.Club;

    private static string[] Names(Device device) => [.. device.Settings.Keys.Order(StringComparer.Ordinal)];
}
