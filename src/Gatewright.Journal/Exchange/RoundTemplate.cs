using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange;

/// <summary>A file of readings with everything but the readings: what was written down in the shed is typed in behind.</summary>
public static class RoundTemplate
{
    private static readonly Column[] Columns =
        [Column.Boat, Column.Class, Column.Seat, Column.Side, Column.At, Column.Reading, Column.Lie, Column.BowHigh, Column.PortLow, Column.Gauge, Column.Date, Column.Note];

    /// <summary>
    /// Writes a row for each gate of each boat at each station, in the order of the walk. How a boat lies is put down as it was
    /// last laid; all else that was written in the shed is blank. A boat whose class is not known has no rows.
    /// </summary>
    /// <param name="to">Where to; it is neither flushed nor closed.</param>
    /// <param name="club">The club.</param>
    /// <param name="boats">The boats, in the order of the walk.</param>
    /// <param name="stations">The stations that are read.</param>
    public static void Write(TextWriter to, Club club, IEnumerable<BoatView> boats, IReadOnlyList<Station> stations)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(boats);
        var titles = new ThingTitles(club, Facts.Things.Boat);
        var row = new CsvRow(to);
        Write(row, column => column.Name());
        foreach (BoatView boat in boats)
        {
            foreach (ReadingStep step in RoundOrder.Of(BoatGates.Of(club, boat), stations))
            {
                Write(row, column => column switch
                {
                    Column.Boat => NameText.Shielded(titles[boat.Key]),
                    Column.Class => boat.Class!.Name,
                    Column.Seat => step.Gate.Seat.ToString(CultureInfo.InvariantCulture),
                    Column.Side => step.Gate.Side.Word(),
                    Column.At => step.Station!.Value.Word(),
                    Column.Lie => BoatBerth.Of(boat).Lie.Word(),
                    _ => string.Empty,
                });
            }
        }
    }

    private static void Write(CsvRow row, Func<Column, string> cell)
    {
        foreach (Column column in Columns)
        {
            row.Cell(cell(column));
        }

        row.End();
    }
}
