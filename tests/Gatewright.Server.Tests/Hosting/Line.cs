using System.Globalization;
using System.Text;
using Gatewright.Journal.Entries;

namespace Gatewright.Server.Tests.Hosting;

/// <summary>A line of a pulled journal.</summary>
internal sealed record Line(long Number, Entry Entry)
{
    /// <summary>What the server writes for an entry of a number, by the format's description.</summary>
    public static string Of(long number, Entry entry) => string.Create(
        CultureInfo.InvariantCulture, $"{{\"number\":{number},\"entry\":{Encoding.UTF8.GetString(EntryJson.ToLine(entry))}}}");

    public static Line Read(string text)
    {
        const string Head = "{\"number\":";
        int comma = text.IndexOf(',', StringComparison.Ordinal);
        long number = long.Parse(text.AsSpan(Head.Length, comma - Head.Length), CultureInfo.InvariantCulture);
        string entry = text[(comma + ",\"entry\":".Length)..^1];
        Entry? read = EntryJson.Read(Encoding.UTF8.GetBytes(entry), out IReadOnlyList<string> problems);
        Assert.True(read is not null, $"{string.Join(' ', problems)}: {text}");
        return new(number, read);
    }
}
