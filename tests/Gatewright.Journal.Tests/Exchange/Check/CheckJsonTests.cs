using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Journal.Tests.Exchange.Check;

public sealed class CheckJsonTests
{
    [Fact]
    public void Problems_are_written_key_by_key()
    {
        var document = new ProblemsDocument(
            ProblemsDocument.Name, [CheckedProblem.Of(new InputProblem("round.csv", 7, "reading", "45", "is too much."))], 2);
        Assert.Equal(
            """
            {
              "format": "gatewright.problems/1",
              "errors": [
                {
                  "source": "round.csv",
                  "line": 7,
                  "column": "reading",
                  "value": "45",
                  "message": "is too much."
                }
              ],
              "beyond": 2
            }
            """.ReplaceLineEndings("\n"),
            CheckJson.Text(document));
    }

    [Fact]
    public void What_is_not_known_is_null_and_its_key_is_there()
    {
        string json = CheckJson.Text(new ProblemsDocument(ProblemsDocument.Name, [new("round.csv", null, null, null, "is empty.")], 0));
        Assert.Contains("\"line\": null", json, StringComparison.Ordinal);
        Assert.Contains("\"column\": null", json, StringComparison.Ordinal);
        Assert.Contains("\"value\": null", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Degree_signs_stay_readable_and_control_characters_do_not_get_through()
    {
        string json = CheckJson.Text(new ProblemsDocument(ProblemsDocument.Name, [new("round.csv", null, null, "4°\u001b", "±")], 0));
        Assert.Contains("\"value\": \"4°\\u001B\"", json, StringComparison.Ordinal);
        Assert.Contains("\"message\": \"±\"", json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.23456, 1.2346)]
    [InlineData(0.00004, 0.0)]
    [InlineData(-0.00004, 0.0)]
    [InlineData(0.00005, 0.0001)]
    public void A_quantity_has_four_decimals_and_no_negative_nought(double degrees, double written)
    {
        double value = Quantity.Of(Estimate.FromDegrees(degrees, 0)).Value;
        Assert.Equal(written, value);
        Assert.False(double.IsNegative(value));
    }
}
