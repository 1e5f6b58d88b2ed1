using Gatewright.Core.Checking;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.App.Boat;

/// <summary>A boat as a page shows it: as it is, or as it was on a day.</summary>
/// <param name="Club">The club it is read from; of a day in the past, what was true by then.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="Day">The day in the past; null for today.</param>
/// <param name="Since">What came between that day and today.</param>
public sealed record BoatSeen(Club Club, BoatStanding Standing, DateOnly? Day, IReadOnlyList<ThingChange> Since)
{
    /// <summary>The boat.</summary>
    public BoatView View => Standing.View;

    /// <summary>Its check; null where nothing can be judged.</summary>
    public BoatCheck? Check => Standing.Check;

    /// <summary>Whether it is the past that is shown: nothing is recorded there.</summary>
    public bool IsPast => Day is not null;
}
