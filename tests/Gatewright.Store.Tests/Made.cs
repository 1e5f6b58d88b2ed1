using System.Globalization;
using System.Text;
using Gatewright.Journal.Entries;

namespace Gatewright.Store.Tests;

/// <summary>Entries by number: the same number is always the same entry.</summary>
internal static class Made
{
    public static Entry Entry(int number, string club = "club", string text = "knocked") => new()
    {
        Id = Guid.Parse($"01900000-0000-7000-8000-{number:x12}"),
        Club = club,
        Member = "m1",
        Device = "phone",
        Time = new(1000 + number, 0),
        Kind = "hold",
        Version = 1,
        Body = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $$"""{"boat":"b{{number}}","reason":"{{text}}"}""")),
    };

    public static Entry[] Entries(int from, int count, string club = "club") =>
        [.. Enumerable.Range(from, count).Select(number => Entry(number, club))];
}
