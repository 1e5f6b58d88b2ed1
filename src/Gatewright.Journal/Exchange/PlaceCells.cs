using Gatewright.Core;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>The cells that name things and say when and on what a boat lay.</summary>
internal sealed class PlaceCells(RowCells cells, Reporter report)
{
    /// <summary>Null when it has reported an error.</summary>
    public Lie? Lie()
    {
        ReadOnlySpan<char> text = cells[Column.Lie];
        Lie? lie = text.IsEmpty ? Core.Lie.Upright : Vocabulary.Lies.Find(text);
        if (lie is null)
        {
            report.NoLie(text);
        }

        return lie;
    }

    /// <summary>Null when it has reported an error.</summary>
    public Bedding? Bed()
    {
        ReadOnlySpan<char> text = cells[Column.Bed];
        Bedding? bed = text.IsEmpty ? Bedding.Firm : Vocabulary.Beds.Find(text);
        if (bed is null)
        {
            report.NoBed(text);
        }

        return bed;
    }

    /// <summary>The day, null where none is given.</summary>
    /// <returns>False when it has reported an error.</returns>
    public bool TryDate(out DateOnly? day)
    {
        ReadOnlySpan<char> text = cells[Column.Date];
        day = text.IsEmpty ? null : DateText.Find(text);
        if (day is null && !text.IsEmpty)
        {
            report.NoDate(text);
            return false;
        }

        return true;
    }

    /// <summary>Whether a name is one: there, where it has to be, not too long, and of characters that can be shown.</summary>
    public bool HasName(Column column, bool isRequired, string expected)
    {
        ReadOnlySpan<char> text = cells[column];
        if (text.IsEmpty)
        {
            if (isRequired)
            {
                report.Blank(column, expected);
            }

            return !isRequired;
        }

        if (text.Length > NameText.Longest)
        {
            report.NameTooLong(column, text);
            return false;
        }

        if (NameText.HasHiddenCharacters(text))
        {
            report.NameHidden(column, text);
            return false;
        }

        return true;
    }
}
