using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Entries;

public sealed class EntryJsonTests
{
    private const string Line =
        """{"id":"01900000-0000-7000-8000-000000000001","club":"club","member":"m1","device":"phone","ms":10,"n":2,"kind":"hold","v":1,"body":{"boat":"heron","reason":"knocked"}}""";

    [Fact]
    public void What_was_written_reads_back_to_the_byte()
    {
        Entry entry = Read(Line);

        Assert.Equal(Line, Encoding.UTF8.GetString(EntryJson.ToLine(entry)));
        Assert.Equal((Journals.Id(1), new HybridTime(10, 2), "hold", 1), (entry.Id, entry.Time, entry.Kind, entry.Version));
    }

    [Fact]
    public void A_body_is_kept_as_it_came_blanks_and_unknown_fields_and_all()
    {
        const string Body = """{ "boat" : "heron",  "later" : [1, 2.50] }""";
        Entry entry = Read(Line[..Line.IndexOf("{\"boat", StringComparison.Ordinal)] + Body + "}");

        Assert.Equal(Body, Encoding.UTF8.GetString(entry.Body.Span));
    }

    [Theory]
    [InlineData("", "not a JSON object at byte 0: ")]
    [InlineData("[]", "not a JSON object at byte : []")]
    [InlineData("{", "not a JSON object at byte 1: {")]
    [InlineData("""{"id":"01900000-0000-4000-8000-000000000001","club":"c","member":"m","device":"d","ms":0,"n":0,"kind":"k","v":1,"body":{}}""", "\"id\" must be a UUID of version 7")]
    [InlineData("""{"id":"01900000-0000-7000-8000-000000000001","club":"a b","member":"m","device":"d","ms":-1,"n":0,"kind":"k","v":1,"body":[]}""", "\"club\" must be 1 to 64 letters, digits, '-', '_' or '.'; \"ms\" must be a whole number from 0 to 253402300799999; \"body\" must be an object")]
    [InlineData("{}", "\"id\" is missing; \"club\" is missing; \"member\" is missing; \"device\" is missing; \"ms\" is missing; \"n\" is missing; \"kind\" is missing; \"v\" is missing; \"body\" is missing")]
    public void Everything_wrong_with_a_line_is_said_at_once(string line, string problems)
    {
        Assert.Null(EntryJson.Read(Encoding.UTF8.GetBytes(line), out IReadOnlyList<string> found));
        Assert.Equal(problems, string.Join("; ", found));
    }

    [Fact]
    public void Text_that_is_not_Unicode_is_told_and_throws_nothing()
    {
        byte[] line = Encoding.UTF8.GetBytes(Line);
        line[Array.IndexOf(line, (byte)'m', 60)] = 0xFF;

        Assert.Null(EntryJson.Read(line, out IReadOnlyList<string> problems));
        Assert.NotEmpty(problems);
    }

    [Fact]
    public void No_mutation_of_a_line_throws()
    {
        var random = new Random(5);
        byte[] line = Encoding.UTF8.GetBytes(Line);
        for (int i = 0; i < 20_000; i++)
        {
            byte[] mutated = [.. line];
            for (int change = random.Next(1, 6); change > 0; change--)
            {
                mutated[random.Next(mutated.Length)] = (byte)random.Next(256);
            }

            Entry? entry = EntryJson.Read(mutated.AsSpan(0, random.Next(mutated.Length + 1)), out IReadOnlyList<string> problems);
            Assert.Equal(entry is null, problems.Count > 0);
        }
    }

    private static Entry Read(string line)
    {
        Entry? entry = EntryJson.Read(Encoding.UTF8.GetBytes(line), out IReadOnlyList<string> problems);
        Assert.Empty(problems);
        return entry!;
    }
}
