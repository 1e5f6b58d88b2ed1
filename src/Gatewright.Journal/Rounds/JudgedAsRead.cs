using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
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
public sealed class JudgedAsRead
{
    private readonly FacesRead? _faces;
    private readonly Standard _standard;

    private JudgedAsRead(FacesRead? faces, Standard standard)
    {
        (_faces, _standard) = (faces, standard);
        if (faces?.Readings is { Readings.Count: > 0 } read)
        {
            CheckSettings settings = CheckSettings.Default;
            MeasuringSettings measuring = settings.Diagnosing.Measuring;
            ReadingsNow now = read.Now(settings.DaysCombined, measuring);
            Verdict = new Judge(standard, settings.Rule, measuring)
                .Boat(now.Readings, CorrectedReadings.Of(now.Readings.Readings, measuring), new NothingFeared(), now.Changes);
        }
    }

    /// <summary>The verdict; null while nothing was read there, or the class is not known.</summary>
    public BoatVerdict? Verdict { get; }

    /// <summary>Judges a boat at a station.</summary>
    public static JudgedAsRead Of(Club club, BoatView boat, Station station)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        return new(FacesRead.Of(club, boat, station, CheckSettings.Default.Diagnosing.Measuring), ClubSettings.Of(club, boat));
    }

    /// <summary>The boat judged anew, after something came to it.</summary>
    /// <param name="club">The club with it.</param>
    /// <param name="boat">The boat with it.</param>
    /// <param name="added">All that came to the club, where it came to this boat alone; null where something else changed too.</param>
    /// <param name="station">Where it is judged.</param>
    internal JudgedAsRead Then(Club club, BoatView boat, IReadOnlyList<Recorded>? added, Station station) =>
        _faces?.With(added, station) is { } faces ? new(faces, _standard) : Of(club, boat, station);
}
