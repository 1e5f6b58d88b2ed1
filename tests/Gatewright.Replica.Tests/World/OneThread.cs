using System.Collections.Concurrent;

namespace Gatewright.Replica.Tests.World;

/// <summary>One thread that does everything, as a browser's page has it: whatever blocks it waits for itself for ever.</summary>
internal sealed class OneThread : SynchronizationContext
{
    private readonly BlockingCollection<(SendOrPostCallback Act, object? State)> _posted = [];

    public override void Post(SendOrPostCallback d, object? state) => _posted.Add((d, state));

    public static Task RunAsync(Func<Task> act)
    {
        var done = new TaskCompletionSource();
        var thread = new Thread(() =>
        {
            var here = new OneThread();
            SetSynchronizationContext(here);
            Task running = act();
            running.ContinueWith(_ => here._posted.CompleteAdding(), TaskScheduler.Default);
            foreach ((SendOrPostCallback posted, object? state) in here._posted.GetConsumingEnumerable())
            {
                posted(state);
            }

            done.SetFromTask(running);
        })
        {
            IsBackground = true,
        };
        thread.Start();
        return done.Task;
    }
}
