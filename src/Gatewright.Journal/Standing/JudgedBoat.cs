using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Standing;

/// <summary>A boat as it was judged, with all that went into it, so that it can be told whether that still stands.</summary>
/// <param name="Standing">How it stands.</param>
/// <param name="Record">What it was judged from; null where there is nothing to judge.</param>
/// <param name="Settings">What it was judged by.</param>
/// <param name="OfAll">The shelves that every boat is read from.</param>
/// <param name="OfBoat">Those of its own.</param>
internal sealed record JudgedBoat(
    BoatStanding Standing, BoatRecord? Record, CheckSettings Settings, Shelves OfAll, Shelves OfBoat)
{
    /// <summary>A boat judged; null where nothing is on record of it.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The boat's key.</param>
    /// <param name="ofClub">What it is judged by, but for the standard.</param>
    /// <param name="ofAll">The shelves that every boat is read from.</param>
    /// <param name="instead">A standard in place of the boat's or the club's.</param>
    public static JudgedBoat? Of(Club club, string key, CheckSettings ofClub, Shelves ofAll, Standard? instead = null)
    {
        var view = new BoatView(club, key);
        if (view.Records.Count == 0)
        {
            return null;
        }

        BoatRecord? all = view.Record(ofClub.Diagnosing.Measuring);
        BoatRecord? record = all is { Current.Readings.Count: > 0 } ? all : null;
        CheckSettings settings = ofClub with { Standard = instead ?? ClubSettings.Of(club, view) };
        var changed = ChangedUnread.Of(all, BoatGates.Of(club, view), settings);
        return new(new(view, record?.Check(settings), changed), record, settings, ofAll, Shelves.OfBoat(club, key));
    }

    /// <summary>The same boat in a club that has grown: what did not change is kept. Null where its record did change.</summary>
    public JudgedBoat? In(Club club, CheckSettings ofClub, Shelves ofAll)
    {
        if (!OfAll.AreSame(ofAll) || !OfBoat.AreThoseOf(club))
        {
            return null;
        }

        CheckSettings settings = ofClub with { Standard = ClubSettings.Of(club, Standing.View) };
        return settings == Settings ? this

            // What was read before a change is not kept: by another standard it is judged from the beginning.
            : Standing.Changed is { Gates.Count: > 0 } ? null
            : this with { Standing = new(Standing.View, Record?.Check(settings)), Settings = settings };
    }
}
