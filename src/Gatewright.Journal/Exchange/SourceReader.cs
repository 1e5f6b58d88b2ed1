using nietras.SeparatedValues;

namespace Gatewright.Journal.Exchange;

/// <summary>Reads one source into the shed.</summary>
internal sealed class SourceReader
{
    private readonly Shed _shed;
    private readonly Reporter _report;
    private readonly SourceText _text;
    private readonly char _separator;
    private readonly RowFields _fields = new();
    private DataRow? _rows;

    /// <summary>Whether a line that declares the separator is still to come.</summary>
    private bool _hasDeclaration;
    private bool _hasRows;

    private SourceReader(SourceText text, RowPlace start, Shed shed)
    {
        _shed = shed;
        _report = new(shed.Problems, start);
        _text = text;
        ReadOnlySpan<char> first = text.FirstLine();
        _separator = HeaderLine.Separator(first);
        _hasDeclaration = HeaderLine.IsDeclaration(first, out _);
    }

    public static void Read(ReadingsSource source, int index, Shed shed)
    {
        using var text = new SourceText(source.Content);
        new SourceReader(text, new(index, source.Name, 1), shed).Read();
    }

    private void Read()
    {
        using SepReader reader = new Sep(_separator)
            .Reader(o => o with { HasHeader = false, DisableColCountCheck = true })
            .From(_text);
        bool isWhole = ReadRows(reader);
        if (isWhole && _text.Defect is TextDefect defect)
        {
            _report.Unreadable(defect);
        }
        else if (isWhole && _rows is null)
        {
            _report.Empty();
        }
        else if (isWhole && !_hasRows)
        {
            _report.OnlyHeader();
        }
    }

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

            _report.MoveTo(line);
            QuoteFault fault = _fields.Take(row);
            bool goesOn = fault == QuoteFault.None ? _fields.CountUsed == 0 || ReadRow() : GoesOnAfter(fault);
            if (!goesOn)
            {
                return false;
            }

            line += 1 + _fields.LineEnds;
        }

        return true;
    }

    private bool ReadRow()
    {
        if (_rows is not null)
        {
            _hasRows = true;
            _rows.Read();
            return true;
        }

        if (_hasDeclaration)
        {
            _hasDeclaration = false;
            return true;
        }

        if (ColumnMap.Of(_fields, _report) is not ColumnMap map)
        {
            return false;
        }

        _rows = new(new(_fields, map), _report, _shed, _separator);
        return true;
    }

    /// <summary>After a quote mark that swallowed line ends, one cannot tell what is inside quotes and what is not.</summary>
    private bool GoesOnAfter(QuoteFault fault)
    {
        bool spansLines = _fields.LineEnds > 0;
        ReadOnlySpan<char> cell = _fields[_fields.Count - 1];
        if (fault == QuoteFault.NotClosed)
        {
            _report.QuoteNotClosed(cell);
            return false;
        }

        _report.StrayQuote(cell, spansLines);
        _hasRows = true;
        return !spansLines && _rows is not null;
    }
}
