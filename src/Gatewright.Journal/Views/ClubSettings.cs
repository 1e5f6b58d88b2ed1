using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What a club judges its boats by, and what it is called.</summary>
public static class ClubSettings
{
    private const string Group = "club";

    /// <summary>What the club is called; null while it has no name.</summary>
    public static string? Name(Club club) => new ThingView(club, Things.Settings, Group)["name"];

    /// <summary>The settings with the chances that the club's own finished jobs have taught.</summary>
    public static CheckSettings Of(Club club)
    {
        CheckSettings settings = CheckSettings.Default;
        return settings with
        {
            Standard = OfClub(club),
            Diagnosing = settings.Diagnosing with { Chances = new ChancesView(club).After(settings.Diagnosing.Chances) },
        };
    }

    /// <summary>The standard of a boat: its own, else the club's.</summary>
    public static Standard Of(Club club, BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.Properties["standard"] is { } own ? StandardsView.For(club, own) : OfClub(club);
    }

    /// <summary>The standard of the club: the one its settings name, else the default.</summary>
    public static Standard OfClub(Club club) => StandardsView.For(club, new ThingView(club, Things.Settings, Group)["standard"]);
}
