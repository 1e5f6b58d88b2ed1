using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Oars;

/// <summary>A set of oars, each judged within it.</summary>
/// <param name="Key">Its key; null for the oars that are of no set.</param>
/// <param name="Title">What it is called; empty for those of no set.</param>
/// <param name="Blade">The shape of its blades.</param>
/// <param name="Oars">Its oars, by name; those out of use are not among them.</param>
/// <param name="Judged">Item by item; empty for the oars of no set.</param>
public sealed record OarSetView(
    string? Key, string Title, string? Blade, IReadOnlyList<OarView> Oars, IReadOnlyList<JudgedItem> Judged)
{
    /// <summary>The worst verdict of any oar; null where nothing can be compared.</summary>
    public Verdict? Verdict
    {
        get
        {
            Verdict? worst = null;
            foreach (JudgedItem item in Judged)
            {
                if (item.Verdict is { } verdict)
                {
                    worst = worst is { } so ? Verdicts.Worse(so, verdict) : verdict;
                }
            }

            return worst;
        }
    }

    /// <summary>The set judged by one item; null for the oars of no set.</summary>
    public JudgedItem? Of(OarItem item)
    {
        foreach (JudgedItem judged in Judged)
        {
            if (judged.Item == item)
            {
                return judged;
            }
        }

        return null;
    }

    /// <summary>The worst verdict of one oar within the set; null where it cannot be compared.</summary>
    public Verdict? VerdictOf(string oar)
    {
        Verdict? worst = null;
        foreach (JudgedItem item in Judged)
        {
            if (item.Worth != SetWorth.Alone && item.Find(oar) is { } judged)
            {
                worst = worst is { } so ? Verdicts.Worse(so, judged.Verdict) : judged.Verdict;
            }
        }

        return worst;
    }
}

/// <summary>
/// A club's oars and sets as its journal tells them. As of a day it is the view of the club as it was then:
/// <see cref="ClubOnDay"/>.
/// </summary>
public sealed class OarsView
{
    private readonly Dictionary<string, OarView> _oars = [];

    /// <summary>The oars of a club, by the usual numbers.</summary>
    public OarsView(Club club)
        : this(club, MeasuringSettings.Default)
    {
    }

    /// <summary>The oars of a club.</summary>
    public OarsView(Club club, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(settings);
        var titles = new ThingTitles(club, Things.Oar);
        var setTitles = new ThingTitles(club, Things.OarSet);
        var sessions = new OarSessions(club, settings);
        var sets = new Dictionary<string, ThingView>();
        var keys = new List<string>();
        foreach (Subject subject in club.Subjects)
        {
            if (subject.Thing == Things.OarSet)
            {
                sets.Add(subject.Key, new(club, Things.OarSet, subject.Key));
            }
            else if (subject.Thing == Things.Oar)
            {
                keys.Add(subject.Key);
            }
        }

        foreach (string key in keys)
        {
            string? set = new ThingView(club, Things.Oar, key)["set"];
            _oars.Add(key, new(club, key, titles[key], sessions, set is not null && sets.TryGetValue(set, out ThingView? of) ? of["blade"] : null));
        }

        All = [.. _oars.Values.OrderBy(o => o.Title, NaturalOrder.Instance).ThenBy(o => o.Key, StringComparer.Ordinal)];
        Sets = [.. sets.Where(s => !s.Value.IsOutOfUse)
            .Select(s => SetOf(s.Key, setTitles[s.Key], s.Value["blade"]))
            .OrderBy(s => s.Title, NaturalOrder.Instance).ThenBy(s => s.Key, StringComparer.Ordinal)];
        Loose = new(null, "", null, [.. All.Where(o => !o.IsOutOfUse && (o.Set is null || !sets.ContainsKey(o.Set)))], []);
    }

    /// <summary>Every oar, by name; those out of use too.</summary>
    public IReadOnlyList<OarView> All { get; }

    /// <summary>The sets in use, by name.</summary>
    public IReadOnlyList<OarSetView> Sets { get; }

    /// <summary>The oars in use that are of no set.</summary>
    public OarSetView Loose { get; }

    /// <summary>An oar by its key; null where there is none.</summary>
    public OarView? Oar(string key) => _oars.GetValueOrDefault(key);

    /// <summary>A set by its key; null where there is none in use.</summary>
    public OarSetView? Set(string key) => Sets.FirstOrDefault(s => s.Key == key);

    /// <summary>The set an oar is of; null for none.</summary>
    public OarSetView? SetOf(OarView oar)
    {
        ArgumentNullException.ThrowIfNull(oar);
        return oar.Set is { } set ? Set(set) : null;
    }

    /// <summary>The oars of a boat, from the bow, port before starboard; those without a seat last.</summary>
    public IReadOnlyList<OarView> InBoat(string boat) => [.. All.Where(o => !o.IsOutOfUse && o.Boat == boat)
        .OrderBy(o => o.Seat ?? int.MaxValue).ThenBy(o => o.Side ?? (Side)int.MaxValue)];

    /// <summary>The shape that all blades of a set have; null where they differ or it is not known.</summary>
    private static string? Common(List<OarView> oars) =>
        oars.Count > 0 && oars.TrueForAll(o => o.Blade == oars[0].Blade) ? oars[0].Blade : null;

    private OarSetView SetOf(string key, string title, string? blade)
    {
        List<OarView> oars = [.. All.Where(o => o.Set == key && !o.IsOutOfUse)];
        List<Oar> judged = oars.ConvertAll(o => o.Oar);
        return new(key, title, blade ?? Common(oars), oars, [.. OarItems.All.Select(item => OarSetJudge.Of(judged, item))]);
    }
}

/// <summary>Names in the order in which people number things: "Oar 2" before "Oar 10".</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    public static NaturalOrder Instance { get; } = new();

    public int Compare(string? x, string? y)
    {
        (string one, string other) = (NameText.Key(x ?? ""), NameText.Key(y ?? ""));
        for (int i = 0, j = 0; ; i++, j++)
        {
            if (i >= one.Length || j >= other.Length)
            {
                return (one.Length - i).CompareTo(other.Length - j);
            }

            int a = Digits(one, i);
            int b = Digits(other, j);
            if (a > 0 && b > 0)
            {
                ReadOnlySpan<char> p = one.AsSpan(i, a).TrimStart('0');
                ReadOnlySpan<char> q = other.AsSpan(j, b).TrimStart('0');
                int by = p.Length != q.Length ? p.Length.CompareTo(q.Length) : p.SequenceCompareTo(q);
                if (by != 0)
                {
                    return by;
                }

                (i, j) = (i + a - 1, j + b - 1);
            }
            else if (one[i] != other[j])
            {
                return one[i].CompareTo(other[j]);
            }
        }
    }

    private static int Digits(string text, int from)
    {
        int at = from;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at - from;
    }
}
