using System.CommandLine.Parsing;
using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Cli.Gearings;

/// <summary>What stands on the command line as a name, = and a number: <c>spread=-1</c>, <c>catch=+2</c>, <c>load=+1%</c>.</summary>
internal static class NamedNumber
{
    private const double MostStep = 30;

    private static readonly RigMeasure[] Measures =
        [RigMeasure.Spread, RigMeasure.Span, RigMeasure.Inboard, RigMeasure.OarLength, RigMeasure.WorkThrough];

    /// <summary>Reads changes, or says what was expected.</summary>
    public static RigStep[] Steps(ArgumentResult result)
    {
        var steps = new List<RigStep>();
        foreach (string text in result.Tokens.Select(t => t.Value))
        {
            (string name, string number) = Parts(text);
            if (Number(number) is not { } by || Math.Abs(by) > MostStep || Array.Find(Measures, m => m.Word() == name) is var measure && measure.Word() != name)
            {
                result.AddError($"--change: '{text}' is no change: expected one of {string.Join(", ", Measures.Select(m => m.Word()))}, = and centimetres from -30 to 30, as in spread=-1.");
                return [];
            }

            steps.Add(new(measure, Length.FromCentimetres(by)));
        }

        return [.. steps];
    }

    /// <summary>Reads wishes, or says what was expected.</summary>
    public static WrittenWish[] Wishes(ArgumentResult result)
    {
        var wishes = new List<WrittenWish>();
        foreach (string text in result.Tokens.Select(t => t.Value))
        {
            (string name, string number) = Parts(text);
            bool isPercent = number.EndsWith('%');
            if (StrokeFigures.OfWord(name) is not { } figure
                || Number(number.TrimEnd('%')) is not { } value
                || (isPercent && !(figure.IsRatio() && IsSigned(number))))
            {
                result.AddError($"--want: '{text}' is no wish: expected one of {string.Join(", ", StrokeFigures.All.Select(f => f.Word()))}, = and a value, or + or - and by how much; of a ratio also with %, as in catch=+2 or load=+1%.");
                return [];
            }

            wishes.Add(new(figure, value, IsSigned(number), isPercent));
        }

        return [.. wishes];
    }

    private static bool IsSigned(string number) => number is ['+' or '-', ..];

    private static (string Name, string Number) Parts(string text)
    {
        string[] parts = text.Split('=', 2);
        return parts.Length == 2 ? (parts[0].Trim().ToLowerInvariant(), parts[1].Trim()) : (text, string.Empty);
    }

    private static double? Number(string text) => double.TryParse(
        text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
        ? number
        : null;
}
