namespace Gatewright.Journal.Exchange;

/// <summary>Why a source cannot be read further as text.</summary>
internal enum TextDefectKind
{
    /// <summary>It begins as the files of spreadsheet programs do.</summary>
    SpreadsheetFile,

    /// <summary>A character that text does not have.</summary>
    NotText,

    /// <summary>Bytes that are none of the encoding's.</summary>
    WrongEncoding,

    /// <summary>No end to a row.</summary>
    EndlessRow,

    /// <summary>No end to a row because of a quote mark that is not closed.</summary>
    EndlessQuote,
}

/// <summary>Where a source stops being readable, and why.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Line">Where; of an endless quote, where it opens.</param>
/// <param name="RowLine">Where the row begins that it stands in: rows from there on were not read whole.</param>
/// <param name="Shown">The text up to it, or nothing.</param>
internal sealed record TextDefect(TextDefectKind Kind, int Line, int RowLine, string? Shown = null);
