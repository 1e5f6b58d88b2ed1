using System.Net.Http.Json;
using Gatewright.Journal.Entries;
using Gatewright.Server.Syncing;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Server.Tests.Faults;

/// <summary>A phone that records and sends on, whatever becomes of the servers: each entry until it is acknowledged.</summary>
internal sealed class StubbornDevice(string club, string member, Visitor[] ways, int seed)
{
    // A rower does not record faster than this either.
    private const int MostUnsent = 60;

    private readonly Random _chance = new(seed);

    /// <summary>What servers have said they have, with the number each was told.</summary>
    public Dictionary<Guid, long> Acknowledged { get; } = [];

    public int Lost { get; private set; }

    /// <summary>Goes on until it is told to stop, and then until all it recorded is acknowledged.</summary>
    public async Task RunAsync(CancellationToken stop)
    {
        int way = 0;
        var unsent = new List<Entry>();
        while (!stop.IsCancellationRequested || unsent.Count > 0)
        {
            if (!stop.IsCancellationRequested && unsent.Count < MostUnsent)
            {
                unsent.AddRange(Enumerable.Range(0, _chance.Next(1, 12)).Select(_ => Written.Hold(member, club)));
            }

            if (await SentAsync(ways[way % ways.Length], unsent) is { } answer)
            {
                Assert.Empty(answer.Refused);
                foreach (Taken taken in answer.Taken)
                {
                    Assert.True(Acknowledged.TryAdd(taken.Id, taken.Number) || Acknowledged[taken.Id] == taken.Number);
                }

                unsent.RemoveAll(e => Acknowledged.ContainsKey(e.Id));
            }
            else
            {
                Lost++;
                way++;
                await Task.Delay(20, CancellationToken.None);
            }
        }
    }

    private async Task<PushAnswer?> SentAsync(Visitor way, List<Entry> entries)
    {
        try
        {
            HttpResponseMessage answer = await way.PushAsync(club, entries);
            return answer.IsSuccessStatusCode ? await answer.Content.ReadFromJsonAsync<PushAnswer>(CancellationToken.None) : null;
        }
        catch (Exception cut) when (cut is HttpRequestException or IOException)
        {
            return null;
        }
    }
}
