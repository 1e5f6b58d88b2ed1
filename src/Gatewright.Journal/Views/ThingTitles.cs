using Gatewright.Journal.Exchange;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>
/// What a club's things of one kind are called where a name has to tell them apart: by name, and where two have one, or
/// none is set, with the key.
/// </summary>
public sealed class ThingTitles
{
    private readonly Dictionary<string, string> _titles = [];

    /// <summary>The titles of a club's things of one kind.</summary>
    public ThingTitles(Club club, string thing)
    {
        ArgumentNullException.ThrowIfNull(club);
        var named = club.Subjects.Where(s => s.Thing == thing)
            .Select(s => (s.Key, Name: Tidy(new ThingView(club, thing, s.Key)["name"]) ?? Tidy(s.Key) ?? s.Key))
            .ToList();
        foreach (IGrouping<string, (string Key, string Name)> group in named.GroupBy(n => NameText.Key(n.Name)))
        {
            bool isOnly = group.Count() == 1;
            foreach ((string key, string name) in group)
            {
                _titles.Add(key, isOnly ? name : $"{name} ({key})");
            }
        }
    }

    private ThingTitles()
    {
    }

    /// <summary>Titles for whoever reads none of them: every thing is called by its key.</summary>
    internal static ThingTitles Keys { get; } = new();

    /// <summary>A thing's title; its key where nothing was said of it.</summary>
    public string this[string key] => _titles.GetValueOrDefault(key, key);

    /// <summary>A name as files take it: single spaces, and no characters that cannot be seen. It has no shield to be taken off.</summary>
    private static string? Tidy(string? name)
    {
        string visible = string.Concat((name ?? "").Where(c => !NameText.HasHiddenCharacters([c])));
        return NameText.Tidy(NameText.Shielded(visible)).Trim() is { Length: > 0 } tidy ? tidy : null;
    }
}
