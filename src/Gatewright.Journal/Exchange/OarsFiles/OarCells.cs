using System.Globalization;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Exchange.OarsFiles;

/// <summary>Reads a row under the header: an oar, and what was read of it.</summary>
internal sealed class OarCells(RowFields fields, TableColumns columns, Reporter report)
{
    private const int MostSeats = 8;
    private bool _isWrong;

    /// <summary>The row, or null when there is something wrong with it, which was reported.</summary>
    public OarRow? Row()
    {
        _isWrong = false;
        if (fields.CountUsed > columns.Count)
        {
            report.TooManyCells(fields[fields.CountUsed - 1], fields.CountUsed, columns.Count);
            return null;
        }

        string? oar = Name(OarsFormat.Oar);
        if (oar is null && !_isWrong)
        {
            report.BlankCell("oar", "what the oar is called");
            return null;
        }

        decimal? sleeve = Item(OarsFormat.Sleeve, OarItem.Sleeve);
        (LevelBasis level, decimal? bowHigh) = Level();
        var row = new OarRow(
            oar ?? "",
            Name(OarsFormat.Set),
            Word(OarsFormat.Side, Vocabulary.Sides),
            Name(OarsFormat.Blade),
            Name(OarsFormat.Boat),
            Seat(),
            Item(OarsFormat.Length, OarItem.Length),
            Item(OarsFormat.Inboard, OarItem.Inboard),
            Item(OarsFormat.Weight, OarItem.Weight),
            sleeve,
            Word(OarsFormat.LaidWay, OarsFormat.Laid),
            Word(OarsFormat.Lie, Vocabulary.Lies),
            level,
            bowHigh,
            Name(OarsFormat.Gauge),
            Date());
        if (row.Seat is not null && row.Boat is null)
        {
            Wrong(OarsFormat.Seat, "names a seat of no boat: name the boat too, or leave the seat blank.");
        }

        return _isWrong ? null : row;
    }

    private ReadOnlySpan<char> Text(int column) => fields[columns[column]];

    private string? Name(int column)
    {
        ReadOnlySpan<char> text = Text(column);
        if (text.IsEmpty)
        {
            return null;
        }

        string name = NameText.Tidy(text);
        if (name.Length is 0 or > FieldTypes.LongestText || NameText.HasHiddenCharacters(name))
        {
            Wrong(column, $"cannot be a name: expected up to {FieldTypes.LongestText} characters that can be seen.");
            return null;
        }

        return name;
    }

    private T? Word<T>(int column, WordTable<T> words)
        where T : struct, Enum
    {
        ReadOnlySpan<char> text = Text(column);
        if (text.IsEmpty)
        {
            return null;
        }

        if (words.Find(text) is { } found)
        {
            return found;
        }

        Wrong(column, $"is not understood: expected {words.Choice}.");
        return null;
    }

    private decimal? Item(int column, OarItem item)
    {
        ReadOnlySpan<char> text = Text(column);
        if (text.IsEmpty)
        {
            return null;
        }

        (double least, double most) = item.Plausible();
        if (DegreesText.Find(WithoutUnit(text, item)) is { } value && value >= least && value <= most)
        {
            return (decimal)value;
        }

        string unit = item switch { OarItem.Sleeve => "degrees", OarItem.Weight => "kilograms", _ => "centimetres" };
        Wrong(column, string.Create(CultureInfo.InvariantCulture, $"is no {item.Word()} of an oar: expected {unit} from {least:0.#} to {most:0.#}."));
        return null;
    }

    private int? Seat()
    {
        ReadOnlySpan<char> text = Text(OarsFormat.Seat);
        if (text.IsEmpty)
        {
            return null;
        }

        if (DegreesText.Find(text) is { } seat && seat == Math.Floor(seat) && seat is >= 1 and <= MostSeats)
        {
            return (int)seat;
        }

        Wrong(OarsFormat.Seat, $"is no seat: expected a number from 1, the bow, to {MostSeats}.");
        return null;
    }

    private (LevelBasis Level, decimal? BowHigh) Level()
    {
        ReadOnlySpan<char> text = Text(OarsFormat.BowHigh);
        if (text.IsEmpty || OarsFormat.Levels.Find(text) is LevelSource.Eye)
        {
            return (LevelBasis.ByEye, null);
        }

        if (OarsFormat.Levels.Find(text) is LevelSource.Bubble)
        {
            return (LevelBasis.BubbleCentred, null);
        }

        if (DegreesText.Find(text) is { } value && Math.Abs(value) <= ReadingsFormat.MostOfALevel)
        {
            return (LevelBasis.Read, (decimal)value);
        }

        Wrong(OarsFormat.BowHigh, $"is no level: expected degrees the bow lies high, at most {ReadingsFormat.MostOfALevel} either way, bubble or eye.");
        return default;
    }

    private DateOnly? Date()
    {
        ReadOnlySpan<char> text = Text(OarsFormat.Date);
        if (text.IsEmpty || DateText.Find(text) is not null)
        {
            return text.IsEmpty ? null : DateText.Find(text);
        }

        Wrong(OarsFormat.Date, "is no day: expected one such as 2026-05-04 or 4.5.2026.");
        return null;
    }

    private void Wrong(int column, string why)
    {
        _isWrong = true;
        report.CellError(OarsFormat.Columns[column].Name, Text(column), $"{why}");
    }

    private static ReadOnlySpan<char> WithoutUnit(ReadOnlySpan<char> text, OarItem item)
    {
        string unit = item == OarItem.Weight ? "kg" : item == OarItem.Sleeve ? "°" : "cm";
        return text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? CellText.Trim(text[..^unit.Length]) : text;
    }
}
