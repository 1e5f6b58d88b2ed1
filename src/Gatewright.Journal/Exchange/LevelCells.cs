using Gatewright.Core.Geometry;

namespace Gatewright.Journal.Exchange;

/// <summary>The two cells that say how a boat or a rack lay. Each answers null when it has reported an error.</summary>
internal sealed class LevelCells(RowCells cells, Reporter report)
{
    /// <summary>Of a boat: two angles, a word, or nothing.</summary>
    public LevelStatement? OfBoat()
    {
        ReadOnlySpan<char> bowHigh = cells[Column.BowHigh];
        ReadOnlySpan<char> portLow = cells[Column.PortLow];
        if (bowHigh.IsEmpty && portLow.IsEmpty)
        {
            return new(LevelSource.Blank);
        }

        LevelSource? bowWord = Vocabulary.Levels.Find(bowHigh);
        LevelSource? portWord = Vocabulary.Levels.Find(portLow);
        if (bowWord is null && portWord is null)
        {
            return Angles(bowHigh, portLow) is HullAttitude read ? new(LevelSource.Read, read) : null;
        }

        if ((bowWord is null && !bowHigh.IsEmpty) || (portWord is null && !portLow.IsEmpty) || (bowWord ?? portWord) != (portWord ?? bowWord))
        {
            report.TwoLevels(portLow, bowHigh);
            return null;
        }

        return Word(bowWord ?? portWord!.Value, bowWord is null ? Column.PortLow : Column.BowHigh);
    }

    /// <summary>Of a rack: two angles.</summary>
    public HullAttitude? OfRack()
    {
        bool isWhole = true;
        foreach (Column column in (ReadOnlySpan<Column>)[Column.BowHigh, Column.PortLow])
        {
            if (cells[column].IsEmpty)
            {
                report.Blank(column, "degrees; the level of a rack is two numbers");
                isWhole = false;
            }
            else if (DegreesText.Find(cells[column]) is null)
            {
                report.NoRackLevel(column, cells[column]);
                isWhole = false;
            }
        }

        return isWhole ? Angles(cells[Column.BowHigh], cells[Column.PortLow]) : null;
    }

    private LevelStatement? Word(LevelSource word, Column column)
    {
        if (word == LevelSource.Rack && cells[Column.Rack].IsEmpty)
        {
            report.LevelOfNoRack(column);
            return null;
        }

        return new(word);
    }

    private HullAttitude? Angles(ReadOnlySpan<char> bowHigh, ReadOnlySpan<char> portLow)
    {
        if (bowHigh.IsEmpty || portLow.IsEmpty)
        {
            bool bowIsBlank = bowHigh.IsEmpty;
            report.HalfLevel(bowIsBlank ? Column.BowHigh : Column.PortLow, bowIsBlank ? Column.PortLow : Column.BowHigh);
        }

        double? bow = Degrees(Column.BowHigh, bowHigh);
        double? port = Degrees(Column.PortLow, portLow);
        return bow is double b && port is double p ? HullAttitude.FromDegrees(b, p) : null;
    }

    private double? Degrees(Column column, ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
        {
            return null;
        }

        double? degrees = DegreesText.Find(text);
        if (degrees is null)
        {
            report.NoLevel(column, text);
        }
        else if (Math.Abs(degrees.Value) > ReadingsFormat.MostOfALevel)
        {
            report.LevelTooLarge(column, text);
            return null;
        }

        return degrees;
    }
}
