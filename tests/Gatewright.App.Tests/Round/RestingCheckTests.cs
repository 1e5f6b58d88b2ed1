using Gatewright.App.Round;
using Gatewright.App.Tests.World;

namespace Gatewright.App.Tests.Round;

public sealed class RestingCheckTests
{
    [Fact]
    public async Task A_check_that_cannot_be_made_is_told_to_whoever_waits_for_it()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        var told = new TaskCompletionSource<Exception>();
        var torn = new InvalidOperationException("torn");
        var check = new RestingCheck(club.InHand, () => throw torn, told.SetResult);

        check.Later("teal", TimeSpan.Zero);

        Assert.Same(torn, await told.Task.WaitAsync(TimeSpan.FromSeconds(30), Xunit.TestContext.Current.CancellationToken));
    }
}
