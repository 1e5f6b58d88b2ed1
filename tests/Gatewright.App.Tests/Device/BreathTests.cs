using Gatewright.App.Device;

namespace Gatewright.App.Tests.Device;

public sealed class BreathTests
{
    // Longer than any pause that is taken where nobody taps, and far from the half minute after which nobody is waited for.
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public async Task What_can_wait_waits_while_somebody_taps_and_goes_on_once_they_are_done()
    {
        var breath = new Breath();
        breath.Hold();
        Task waiting = breath.TakeAsync().AsTask();
        await Task.Delay(Moment, TestContext.Current.CancellationToken);
        breath.Hold();
        await Task.Delay(Moment, TestContext.Current.CancellationToken);
        Assert.False(waiting.IsCompleted);

        breath.LetGo();

        await waiting.WaitAsync(Patience, TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task Who_is_let_go_and_held_again_waits_on()
    {
        var breath = new Breath();
        breath.Hold();
        Task waiting = breath.TakeAsync().AsTask();
        breath.LetGo();
        breath.Hold();
        await Task.Delay(Moment, TestContext.Current.CancellationToken);
        Assert.False(waiting.IsCompleted);

        breath.LetGo();

        await waiting.WaitAsync(Patience, TestContext.Current.CancellationToken);
        Assert.Equal(2, breath.Holds);
    }

    [Fact]
    public async Task Nobody_waits_where_nobody_taps()
    {
        var breath = new Breath();
        await breath.TakeAsync().AsTask().WaitAsync(Patience, TestContext.Current.CancellationToken);
        breath.LetGo();
        await breath.TakeAsync().AsTask().WaitAsync(Patience, TestContext.Current.CancellationToken);
    }
}
