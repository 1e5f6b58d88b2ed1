using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Server.Boats;

/// <summary>What a club judges its boats by.</summary>
internal static class ClubSettings
{
    /// <summary>The settings with the chances that the club's own finished jobs have taught.</summary>
    public static CheckSettings Of(Club club)
    {
        CheckSettings settings = CheckSettings.Default;
        return settings with
        {
            Diagnosing = settings.Diagnosing with { Chances = new ChancesView(club, settings.Diagnosing.Chances).Chances },
        };
    }

    /// <summary>The standard of a boat: its own, else the club's, else the default.</summary>
    public static Standard Standard(Club club, BoatView boat) => new StandardsView(club).For(boat);

    /// <summary>The standard of the club.</summary>
    public static Standard OfClub(Club club) => new StandardsView(club).OfClub;
}
