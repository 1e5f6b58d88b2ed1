using System.CommandLine.Parsing;
using System.Globalization;

namespace Gatewright.Cli.Terminals;

/// <summary>Numbers on the command line: with a decimal point in every country, and within limits.</summary>
internal static class NumberArgument
{
    /// <summary>Reads a number, or says what was expected.</summary>
    public static Func<ArgumentResult, double> Within(double least, double most, string unit) => result =>
    {
        string text = result.Tokens[0].Value;
        bool isNumber = double.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number);
        if (!isNumber || !(number >= least && number <= most))
        {
            string option = ((OptionResult)result.Parent!).Option.Name;
            result.AddError(string.Create(
                CultureInfo.InvariantCulture, $"{option}: '{text}' is not a number of {unit} from {least} to {most}."));
        }

        return number;
    };
}
