using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Server.Boats;

/// <summary>What a club judges its boats by.</summary>
internal static class ClubSettings
{
    /// <summary>The chances that the club's own finished jobs have taught, counted over its whole journal when first asked for.</summary>
    public static Lazy<Task<PriorChances>> Chances(Club club) =>
        new(() => Task.Run(() => new ChancesView(club).After(CheckSettings.Default.Diagnosing.Chances)));

    /// <summary>The settings, with the club's standard and its chances.</summary>
    public static CheckSettings Of(Club club, PriorChances chances)
    {
        CheckSettings settings = CheckSettings.Default;
        return settings with { Standard = OfClub(club), Diagnosing = settings.Diagnosing with { Chances = chances } };
    }

    /// <summary>The standard of a boat: its own, else the club's.</summary>
    public static Standard Of(Club club, BoatView boat) =>
        boat.Properties["standard"] is { } own ? StandardsView.For(club, own) : OfClub(club);

    /// <summary>The standard of the club: the one its settings name, else the default.</summary>
    public static Standard OfClub(Club club) =>
        StandardsView.For(club, new ThingView(club, Things.Settings, "club")["standard"]);
}
