using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;

namespace Gatewright.Replica.Tests.Copies;

public sealed class OwnEntryTests
{
    /// <summary>What shelves have is read for ever: this text is of the first version.</summary>
    private const string First =
        """{"state":"refused","seen":[1760000000000,3],"right":true,"number":7,"code":"not-allowed","reasons":["ask a keeper"],"entry":{"id":"0197b1c2-3d4e-7f50-8a61-b2c3d4e5f607","club":"c1","member":"m1","device":"d1","ms":1760000000000,"n":4,"kind":"hold","v":1,"body":{"boat":"nuthatch", "reason":"gate 2"}}}""";

    [Fact]
    public void It_is_written_as_it_was_read()
    {
        OwnEntry own = OwnEntryJson.Read(5, First)!;

        Assert.Equal(
            (5, OwnState.Refused, new HybridTime(1760000000000, 3), true, 7, "not-allowed", "ask a keeper"),
            (own.Place, own.State, own.Seen, own.IsTimeRight, own.Number, own.Code, Assert.Single(own.Reasons)));
        Assert.Equal("""{"boat":"nuthatch", "reason":"gate 2"}""", Encoding.UTF8.GetString(own.Entry.Body.Span));
        Assert.Equal(First, OwnEntryJson.Write(own));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{"state":"elsewhere","seen":[0,0],"right":true,"entry":{}}""")]
    [InlineData("""{"state":"unsent","seen":[0],"right":true,"entry":{}}""")]
    [InlineData("""{"state":"unsent","seen":[0,0],"right":"yes","entry":{}}""")]
    public void What_cannot_be_read_is_left_as_it_is(string text)
    {
        Assert.Null(OwnEntryJson.Read(1, text));
        Assert.Equal(text, Assert.Single(OwnEntries.Read([new(1, text)]).Unreadable).Text);
    }

    [Theory]
    [InlineData("{\"number\":1,\"entry\":{}}\n")]
    [InlineData("{\"number\":0}\n")]
    [InlineData("<html>\n")]
    [InlineData("{\"number\":1,\"ent")]
    public void A_page_that_is_not_whole_is_not_taken(string lines) =>
        Assert.Throws<FormatException>(() => NumberedLines.Read(Encoding.UTF8.GetBytes(lines)));

    /// <summary>8 MiB and 5,000 lines: docs/exchanging-entries.md.</summary>
    [Fact]
    public void A_batch_is_never_more_than_a_server_takes()
    {
        byte[] body = Encoding.UTF8.GetBytes($$"""{"text":"{{new string('x', 60_000)}}"}""");
        OwnEntry[] unsent = [.. Enumerable.Range(0, 200).Select(i => new OwnEntry
        {
            Place = i,
            Entry = new()
            {
                Id = Guid.CreateVersion7(), Club = "c", Member = "m", Device = "d", Time = new(i, 0), Kind = "note", Version = 1, Body = body,
            },
        })];

        var batch = PushBatch.Of(unsent, 5000);

        Assert.InRange(batch.Lines.Length, (8 * 1024 * 1024) - 70_000, 8 * 1024 * 1024);
        Assert.Equal(batch.Entries.Count, batch.Lines.Span.Count((byte)'\n'));
        Assert.Equal(3, PushBatch.Of(unsent, 3).Entries.Count);
    }
}
