using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Rig;

/// <summary>The rigs measured at the World Championships 2017, as they are published: survey-2017.csv says what and where from.</summary>
internal static class SurveyTable
{
    private static readonly string[] Columns =
        ["boat", "event", "seat", "width", "length", "inboard", "work_through", "stretcher", "height_starboard", "height_port", "height_sweep", "heels"];

    /// <summary>Every row: a seat.</summary>
    public static IReadOnlyList<SurveySeat> Seats { get; } =
    [
        .. Embedded.Lines("Rig/survey-2017.csv")
            .Where(line => line.Length > 0 && line[0] != '#')
            .Skip(1)
            .Select(line => line.Split(','))
            .Select(cells => new SurveySeat(cells[0], cells[1], cells[2].Length == 0 ? null : int.Parse(cells[2], CultureInfo.InvariantCulture), cells)),
    ];

    /// <summary>The boats, with the seats that are numbered; of a single the only one.</summary>
    public static IEnumerable<IGrouping<(string Boat, string Event), SurveySeat>> Boats =>
        Seats.Where(s => s.Number is not null || s.Class.Seats == 1).GroupBy(s => (s.Boat, s.Event));

    public static double? Cell(string[] cells, string column) =>
        cells[Array.IndexOf(Columns, column)] is { Length: > 0 } text ? double.Parse(text, CultureInfo.InvariantCulture) : null;
}

/// <summary>One row of the survey.</summary>
internal sealed record SurveySeat(string Boat, string Event, int? Number, string[] Cells)
{
    public BoatClass Class => BoatClass.Parse(Event[1..]);

    public Crew Crew => Event[0] == 'W' ? Crew.Women : Crew.Men;

    public double? this[string column] => SurveyTable.Cell(Cells, column);

    /// <summary>
    /// The row as it would be taken here. Sides of sweep seats are not in the survey: the usual rig, stroke on port (common
    /// practice). One oar of a scull was measured: it stands for both.
    /// </summary>
    public IEnumerable<RigReading> Readings()
    {
        int seat = Number ?? 1;
        bool isScull = Class.Rowing == Rowing.Scull;
        Side only = (Class.Seats - seat) % 2 == 0 ? Side.Port : Side.Starboard;
        Side[] sides = isScull ? [Side.Port, Side.Starboard] : [only];
        List<(RigMeasure Measure, Side? Side, double? Value)> all =
        [
            (isScull ? RigMeasure.Span : RigMeasure.Spread, null, this["width"]),
            (RigMeasure.WorkThrough, null, this["work_through"]),
            (RigMeasure.StretcherAngle, null, this["stretcher"]),
            (RigMeasure.HeelDepth, null, this["heels"]),
        ];
        foreach (Side side in sides)
        {
            all.Add((RigMeasure.Inboard, side, this["inboard"]));
            all.Add((RigMeasure.OarLength, side, this["length"]));
            all.Add((RigMeasure.Height, side, !isScull ? this["height_sweep"] : side == Side.Port ? this["height_port"] : this["height_starboard"]));
        }

        return all.Where(m => m.Value is not null).Select(m => new RigReading(m.Measure, new(seat, m.Side), m.Value!.Value));
    }
}
