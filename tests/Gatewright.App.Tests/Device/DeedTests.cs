using System.Globalization;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Tests.Device;

public sealed class DeedTests
{
    private readonly Texts<DeviceTexts> _texts = new();
    private readonly Deed _deed;

    public DeedTests()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");
        _deed = new(_texts);
    }

    public static TheoryData<string> Foreseen => ["refused", "full", "picture"];

    [Theory]
    [MemberData(nameof(Foreseen))]
    public async Task What_stands_in_the_way_is_told_until_something_is_done(string kind)
    {
        Exception broken = kind switch
        {
            "refused" => new NotRecordedException(["No such gate."]),
            "full" => new ShelfException(ShelfFault.Full, "full"),
            _ => new PhotoException(null),
        };

        Assert.False(await _deed.TryAsync(() => throw broken));
        Assert.Equal(ShelfFaults.Told(broken, _texts), _deed.Fault);
        Assert.False(_deed.IsBusy);

        Assert.True(await _deed.TryAsync(() => Task.CompletedTask));
        Assert.Null(_deed.Fault);
    }

    [Fact]
    public async Task What_nobody_foresaw_is_thrown_on_and_holds_nothing_up()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => _deed.TryAsync(() => throw new InvalidOperationException()));

        Assert.Null(_deed.Fault);
        Assert.True(await _deed.TryAsync(() => Task.CompletedTask));
    }

    [Fact]
    public async Task A_second_tap_does_nothing_while_the_first_is_under_way()
    {
        var disk = new TaskCompletionSource();
        int done = 0;
        Task<bool> first = _deed.TryAsync(() => disk.Task);

        Assert.False(await _deed.TryAsync(() => Task.FromResult(done++)));
        disk.SetResult();

        Assert.True(await first);
        Assert.Equal(0, done);
    }

    [Fact]
    public async Task Where_each_tap_counts_it_is_busy_until_the_last_is_done()
    {
        TaskCompletionSource one = new(), two = new();
        Task<bool> first = _deed.TryAsync(() => one.Task, eachCounts: true);
        Task<bool> second = _deed.TryAsync(() => two.Task, eachCounts: true);

        one.SetResult();
        Assert.True(await first);
        Assert.True(_deed.IsBusy);

        two.SetResult();
        Assert.True(await second);
        Assert.False(_deed.IsBusy);
    }

    [Fact]
    public async Task What_was_in_the_way_is_forgotten_when_it_no_longer_matters()
    {
        await _deed.TryAsync(() => throw new PhotoException(null));

        _deed.Forget();

        Assert.Null(_deed.Fault);
    }
}
