using System.Globalization;
using System.Text;

namespace Gatewright.Journal.Exchange;

/// <summary>Something in a file that a person has to look at: where it stands, what it is, and what to do.</summary>
/// <param name="Source">The file, as the caller named it.</param>
/// <param name="Line">The line, 1 the first; null where it concerns the whole file or a JSON file.</param>
/// <param name="Column">The column's name, or the path in a JSON file, which begins with <c>$</c>.</param>
/// <param name="Value">What stands there, shortened and without control characters; null where nothing does.</param>
/// <param name="Message">What is wrong with it, what was expected, and the remedy.</param>
public sealed record InputProblem(string Source, int? Line, string? Column, string? Value, string Message)
{
    /// <summary>"round.csv, line 7, column reading: '45' is …: …".</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Source);
        if (Line is int line)
        {
            text.Append(CultureInfo.InvariantCulture, $", line {line}");
        }

        if (Column is not null)
        {
            text.Append(Column.StartsWith('$') ? ", at " : ", column ").Append(Column);
        }

        text.Append(": ");
        if (Value is not null)
        {
            text.Append('\'').Append(Value).Append("' ");
        }

        return text.Append(Message).ToString();
    }
}
