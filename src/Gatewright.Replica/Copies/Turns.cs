namespace Gatewright.Replica.Copies;

/// <summary>Lets one act after another: each begins when those before it are done, however they ended.</summary>
internal sealed class Turns
{
    private Task _last = Task.CompletedTask;

    public async Task TakeAsync(Func<Task> act)
    {
        var mine = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await Interlocked.Exchange(ref _last, mine.Task).ConfigureAwait(true);
        try
        {
            await act().ConfigureAwait(true);
        }
        finally
        {
            mine.SetResult();
        }
    }
}
