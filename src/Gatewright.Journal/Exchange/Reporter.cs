using System.Globalization;
using System.Runtime.CompilerServices;

namespace Gatewright.Journal.Exchange;

/// <summary>Takes down what is wrong with a row or a source. What it is told is in the message classes beside it.</summary>
internal sealed class Reporter(Problems problems, RowPlace place)
{
    private readonly Problems _problems = problems;

    /// <summary>The row that is being read.</summary>
    public RowPlace Place { get; private set; } = place;

    public void MoveTo(int line) => Place = Place with { Line = line };

    /// <summary>An error in a cell of a reading's row, or in all of it when no column is named.</summary>
    public void Error(
        Column? column, ReadOnlySpan<char> value, [InterpolatedStringHandlerArgument("")] ref Message message) =>
        CellError(column?.Name(), value, ref message);

    /// <summary>An error in a cell of the row, or in all of it when no column is named.</summary>
    public void CellError(
        string? column, ReadOnlySpan<char> value, [InterpolatedStringHandlerArgument("")] ref Message message)
    {
        if (message.IsWanted)
        {
            _problems.Errors.Add(Place.SourceIndex, new(Place.Source, Place.Line, column, Shown(value), message.ToStringAndClear()));
        }
    }

    /// <summary>An error in the source that no row of it is to blame for.</summary>
    public void SourceError([InterpolatedStringHandlerArgument("")] ref Message message)
    {
        if (message.IsWanted)
        {
            _problems.Errors.Add(Place.SourceIndex, new(Place.Source, null, null, null, message.ToStringAndClear()));
        }
    }

    /// <summary>An error in the header.</summary>
    public void HeaderError(string column, [InterpolatedStringHandlerArgument("")] ref Message message)
    {
        if (message.IsWanted)
        {
            _problems.Errors.Add(Place.SourceIndex, new(Place.Source, Place.Line, column, null, message.ToStringAndClear()));
        }
    }

    /// <summary>A warning, once for a column and value: what a spreadsheet did, it did in every row.</summary>
    public void WarnOnce(string column, ReadOnlySpan<char> value, string message)
    {
        string? shown = Shown(value);
        if (_problems.IsNew(Place.SourceIndex, column, shown))
        {
            _problems.Warnings.Add(Place.SourceIndex, new(Place.Source, Place.Line, column, shown, message));
        }
    }

    private static string? Shown(ReadOnlySpan<char> value) => value.IsEmpty ? null : ShownText.Of(value);

    /// <summary>An error's wording: not put together when a thousand have been kept, so that the rest cost nothing.</summary>
    [InterpolatedStringHandler]
    internal ref struct Message
    {
        private DefaultInterpolatedStringHandler _text;

        public Message(int literalLength, int formattedCount, Reporter reporter, out bool isWanted)
        {
            isWanted = IsWanted = reporter._problems.Errors.TakesAnother();
            _text = isWanted ? new(literalLength, formattedCount, CultureInfo.InvariantCulture) : default;
        }

        public bool IsWanted { get; }

        public void AppendLiteral(string text) => _text.AppendLiteral(text);

        public void AppendFormatted<T>(T value) => _text.AppendFormatted(value);

        public void AppendFormatted<T>(T value, string format) => _text.AppendFormatted(value, format);

        public void AppendFormatted(ReadOnlySpan<char> value) => _text.AppendFormatted(ShownText.Of(value));

        public string ToStringAndClear() => _text.ToStringAndClear();
    }
}
