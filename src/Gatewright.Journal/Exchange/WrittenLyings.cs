using System.Globalization;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// The lyings of boats that nothing in a row would tell apart: a boat was moved between them and lay alike that day. The first of
/// them has no mark, those after it are numbered from two.
/// </summary>
internal sealed class WrittenLyings
{
    private readonly Dictionary<(string Boat, BoatLie Lie), string> _marks = [];

    private WrittenLyings()
    {
    }

    /// <summary>Whether there are any.</summary>
    public bool AreMarked => _marks.Count > 0;

    /// <summary>The marks of boats, each of another name.</summary>
    public static WrittenLyings Of(IEnumerable<BoatReadings> boats)
    {
        var written = new WrittenLyings();
        foreach (BoatReadings boat in boats)
        {
            foreach (IGrouping<BoatLie, BoatLie> alike in boat.Readings.Select(r => r.Lie).Distinct().GroupBy(l => l with { Moved = null }))
            {
                foreach ((int before, BoatLie lie) in alike.Index().Skip(1))
                {
                    written._marks.Add((boat.Boat, lie), (before + 1).ToString(CultureInfo.InvariantCulture));
                }
            }
        }

        return written;
    }

    /// <summary>What stands in the row of a reading; blank for none.</summary>
    public string Mark(BoatReadings boat, BoatLie lie) => _marks.GetValueOrDefault((boat.Boat, lie), "");
}
