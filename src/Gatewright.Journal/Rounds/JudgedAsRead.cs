using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rounds;

/// <summary>
/// A boat judged at the station that is read, and nowhere else, for the moment after a tap: what the rest of the stroke is
/// expected to be takes a diagnosis, which takes longer than a person with a cold thumb waits.
/// </summary>
/// <remarks>
/// It never says more than the whole check: every reason it gives stands there too. It may say less: of other stations, and
/// of a floor in doubt where nobody read, it knows nothing.
/// </remarks>
public static class JudgedAsRead
{
    /// <summary>The verdict; null while nothing was read there, or the class is not known.</summary>
    public static BoatVerdict? Of(Club club, BoatView boat, Station station)
    {
        ArgumentNullException.ThrowIfNull(boat);
        CheckSettings settings = CheckSettings.Default;
        MeasuringSettings measuring = settings.Diagnosing.Measuring;
        if (boat.Faces(station, measuring) is not { Readings.Count: > 0 } faces)
        {
            return null;
        }

        ReadingsNow now = faces.Now(settings.DaysCombined, measuring);
        return new Judge(ClubSettings.Of(club, boat), settings.Rule, measuring)
            .Boat(now.Readings, CorrectedReadings.Of(now.Readings.Readings, measuring), new NothingFeared(), now.Changes);
    }

    /// <summary>Far above any floor, so that no reason comes of where nobody read.</summary>
    private sealed class NothingFeared : IPitchForecast
    {
        private const double AboveEveryFloor = 90;
        private static readonly GaussianMixture Above = new([1], [AboveEveryFloor], [0]);

        public GaussianMixture At(GatePlace gate, OarAngle at) => Above;
    }
}
