using nietras.SeparatedValues;

namespace Gatewright.Journal.Exchange;

/// <summary>
/// Reads one source as a table, whatever its rows say: finds the separator, takes the cells of every row, passes over
/// blank ones, and stops where the rest cannot be told apart.
/// </summary>
internal abstract class TableReader
{
    private readonly SourceText _text;
    private bool _hasHeader;

    /// <summary>Whether a line that declares the separator is still to come.</summary>
    private bool _hasDeclaration;
    private bool _hasRows;

    /// <param name="text">The source.</param>
    /// <param name="report">Where problems go.</param>
    /// <param name="isColumn">Whether a name is that of a column: the separator is the one that makes most of them.</param>
    protected TableReader(SourceText text, Reporter report, HeaderLine.NameTest isColumn)
    {
        _text = text;
        Report = report;
        ReadOnlySpan<char> first = text.FirstLine();
        Separator = HeaderLine.Separator(first, isColumn);
        _hasDeclaration = HeaderLine.IsDeclaration(first, out _);
    }

    /// <summary>Where problems go; it stands at the row that is being read.</summary>
    protected Reporter Report { get; }

    /// <summary>What separates the columns.</summary>
    protected char Separator { get; }

    /// <summary>The cells of the row that is being read.</summary>
    protected RowFields Fields { get; } = new();

    /// <summary>Reads all of it.</summary>
    protected void ReadAll()
    {
        using SepReader reader = new Sep(Separator)
            .Reader(o => o with { HasHeader = false, DisableColCountCheck = true })
            .From(_text);
        bool isWhole = ReadRows(reader);
        if (isWhole && _text.Defect is TextDefect defect)
        {
            Report.Unreadable(defect);
        }
        else if (isWhole && !_hasHeader)
        {
            TellEmpty();
        }
        else if (isWhole && !_hasRows)
        {
            TellOnlyHeader();
        }
    }

    /// <summary>Reads the first row.</summary>
    /// <returns>Whether it is a header under which rows can be read.</returns>
    protected abstract bool ReadHeader();

    /// <summary>Reads a row under the header.</summary>
    protected abstract void ReadRow();

    /// <summary>Says that there is nothing in the source.</summary>
    protected abstract void TellEmpty();

    /// <summary>Says, if that is wrong, that there is nothing under the header.</summary>
    protected abstract void TellOnlyHeader();

    /// <returns>Whether it came to the end: not when a fault made the rest unreadable.</returns>
    private bool ReadRows(SepReader reader)
    {
        int line = 1;
        foreach (SepReader.Row row in reader)
        {
            if (line >= _text.Defect?.RowLine)
            {
                break;
            }

            Report.MoveTo(line);
            QuoteFault fault = Fields.Take(row);
            bool goesOn = fault == QuoteFault.None ? Fields.CountUsed == 0 || ReadTaken() : GoesOnAfter(fault);
            if (!goesOn)
            {
                return false;
            }

            line += 1 + Fields.LineEnds;
        }

        return true;
    }

    private bool ReadTaken()
    {
        if (_hasHeader)
        {
            _hasRows = true;
            ReadRow();
            return true;
        }

        if (_hasDeclaration)
        {
            _hasDeclaration = false;
            return true;
        }

        return _hasHeader = ReadHeader();
    }

    /// <summary>After a quote mark that swallowed line ends, one cannot tell what is inside quotes and what is not.</summary>
    private bool GoesOnAfter(QuoteFault fault)
    {
        bool spansLines = Fields.LineEnds > 0;
        ReadOnlySpan<char> cell = Fields[Fields.Count - 1];
        if (fault == QuoteFault.NotClosed)
        {
            Report.QuoteNotClosed(cell);
            return false;
        }

        Report.StrayQuote(cell, spansLines);
        _hasRows = true;
        return !spansLines && _hasHeader;
    }
}
