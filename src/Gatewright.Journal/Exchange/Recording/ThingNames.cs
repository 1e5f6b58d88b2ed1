using System.Security.Cryptography;
using System.Text;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>A club's things of one kind by the names that files give them.</summary>
internal sealed class ThingNames
{
    private const int LongestSlug = 60;

    private readonly string _thing;
    private readonly Dictionary<string, string> _keys = [];
    private readonly HashSet<string> _taken;

    public ThingNames(Club club, string thing)
    {
        _thing = thing;
        _taken = [.. club.Subjects.Where(s => s.Thing == thing).Select(s => s.Key)];
        foreach (string key in _taken.Order(StringComparer.Ordinal))
        {
            string? name = new ThingView(club, thing, key)["name"];
            _keys.TryAdd(NameText.Key(name ?? key), key);
        }
    }

    /// <summary>The key of the thing of a name, known or made for it.</summary>
    public string Key(string name)
    {
        string spelling = NameText.Key(name);
        if (!_keys.TryGetValue(spelling, out string? key))
        {
            string slug = Slug(name);
            string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{_thing}\n{spelling}")))[..12];
            key = IsWhole(name) && _taken.Add(slug) ? slug : $"{slug}-{hash}".TrimStart('-');
            _taken.Add(key);
            _keys.Add(spelling, key);
        }

        return key;
    }

    /// <summary>Whether a slug says all that the name does.</summary>
    private static bool IsWhole(string name) => name.Length is > 0 and <= LongestSlug && name.All(c => char.IsAsciiLetterOrDigit(c) || c == ' ');

    private static string Slug(string name) => new([.. name
        .Where(c => char.IsAsciiLetterOrDigit(c) || c == ' ')
        .Select(c => c == ' ' ? '-' : char.ToLowerInvariant(c))
        .Take(LongestSlug)]);
}
