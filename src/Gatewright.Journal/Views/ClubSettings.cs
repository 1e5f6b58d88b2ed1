using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
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

    /// <summary>The chances that the club's own finished jobs have taught, counted over its whole journal.</summary>
    public static PriorChances Chances(Club club) => Chances(new ChancesView(club));

    /// <summary>The same, from what was counted.</summary>
    public static PriorChances Chances(ChancesView counted)
    {
        ArgumentNullException.ThrowIfNull(counted);
        return Chances(counted.Found);
    }

    /// <summary>The same, from what was found.</summary>
    public static PriorChances Chances(FoundCauses found) => CheckSettings.Default.Diagnosing.Chances.After(found);

    /// <summary>The settings, with the club's standard and its chances.</summary>
    public static CheckSettings Of(Club club) => Of(club, Chances(club));

    /// <summary>The settings, with the club's standard and chances that were counted before.</summary>
    public static CheckSettings Of(Club club, PriorChances chances)
    {
        CheckSettings settings = CheckSettings.Default;
        return settings with { Standard = OfClub(club), Diagnosing = settings.Diagnosing with { Chances = chances } };
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
