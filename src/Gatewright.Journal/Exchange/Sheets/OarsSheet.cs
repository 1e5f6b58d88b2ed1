using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange.OarsFiles;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange.Sheets;

/// <summary>The oars of a club as a file of oars: of each what is set of it, and its last readings, a row a day.</summary>
internal static class OarsSheet
{
    public static void Write(Club club, TextWriter to)
    {
        var row = new CsvRow(to);
        foreach (ReadingsColumn column in OarsFormat.Columns)
        {
            row.Cell(column.Name);
        }

        row.End();
        var boats = new ThingTitles(club, Things.Boat);
        var gauges = new ThingTitles(club, Things.Gauge);
        var sets = new ThingTitles(club, Things.OarSet);
        foreach (OarView oar in new OarsView(club).All.Where(o => !o.IsOutOfUse))
        {
            List<Recorded> last = [.. OarItems.All.Select(oar.Last).OfType<Recorded>()];
            foreach (IGrouping<DateOnly?, Recorded> day in last.GroupBy(r => (DateOnly?)Day.Of(r)).OrderBy(g => g.Key).DefaultIfEmpty(new Nothing()))
            {
                OarRead? sleeve = day.Select(r => (OarRead)r.Fact).FirstOrDefault(r => r.Item == OarItem.Sleeve);
                Cells(
                    row,
                    SheetText.Shielded(oar.Name ?? oar.Key),
                    SheetText.Shielded(oar.Set is { } set ? sets[set] : ""),
                    oar.Side?.Word() ?? "",
                    SheetText.Shielded(oar.Fields["blade"] ?? oar.Blade ?? ""),
                    SheetText.Shielded(oar.Boat is { } boat ? boats[boat] : ""),
                    oar.Boat is null ? "" : oar.Seat?.ToString(CultureInfo.InvariantCulture) ?? "",
                    Figure(day, OarItem.Length) ?? (last.Count == 0 ? oar.Fields["length"] : null) ?? "",
                    Figure(day, OarItem.Inboard) ?? (last.Count == 0 ? oar.Fields["inboard"] : null) ?? "",
                    Figure(day, OarItem.Weight) ?? (last.Count == 0 ? oar.Fields["weight"] : null) ?? "",
                    sleeve?.Value.ToString(CultureInfo.InvariantCulture) ?? "",
                    sleeve?.Laid?.Word() ?? "",
                    sleeve?.Lie?.Word() ?? "",
                    sleeve is null ? "" : Level(club, sleeve, day.Key!.Value),
                    SheetText.Shielded(sleeve?.Gauge is { } gauge ? gauges[gauge] : ""),
                    day.Key?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
                    "");
            }
        }
    }

    private static string? Figure(IEnumerable<Recorded> day, OarItem item)
    {
        foreach (Recorded record in day)
        {
            if (record.Fact is OarRead read && read.Item == item)
            {
                double own = (RigUnits.OfWord(read.Unit ?? "cm") ?? RigUnit.Centimetres).InOwn((double)read.Value);
                return Math.Round(own, 4).ToString(CultureInfo.InvariantCulture);
            }
        }

        return null;
    }

    /// <summary>The level of a rack is written as what the rack was read to be.</summary>
    private static string Level(Club club, OarRead sleeve, DateOnly day) => sleeve.Level switch
    {
        LevelBasis.Read => (sleeve.BowHigh ?? 0).ToString(CultureInfo.InvariantCulture),
        LevelBasis.BubbleCentred => "bubble",
        LevelBasis.Rack when sleeve.Rack is { } rack && RackLevels.Of(club, rack, day) is { } known
            => Math.Round(known.Attitude.BowHigh.Degrees, 4).ToString(CultureInfo.InvariantCulture),
        _ => "eye",
    };

    private static void Cells(CsvRow row, params ReadOnlySpan<string> cells)
    {
        foreach (string cell in cells)
        {
            row.Cell(cell);
        }

        row.End();
    }

    /// <summary>An oar of which nothing was read has a row all the same.</summary>
    private sealed class Nothing : List<Recorded>, IGrouping<DateOnly?, Recorded>
    {
        public DateOnly? Key => null;
    }
}
