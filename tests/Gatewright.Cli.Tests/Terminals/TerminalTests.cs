using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Tests.Terminals;

public sealed class TerminalTests
{
    [Theory]
    [InlineData(true, "xterm", null, null, "Sixteen")]
    [InlineData(true, "xterm-256color", null, null, "Many")]
    [InlineData(true, "xterm", "truecolor", null, "Many")]
    [InlineData(true, "dumb", "truecolor", null, "None")]
    [InlineData(false, "xterm-256color", "truecolor", null, "None")]
    [InlineData(true, "xterm-256color", "truecolor", "1", "None")]
    [InlineData(true, "xterm-256color", "truecolor", "0", "None")]
    [InlineData(true, "xterm-256color", null, "", "Many")]
    public void Colours_are_for_screens_that_have_them_and_people_who_want_them(
        bool isScreen, string term, string? colorTerm, string? noColor, string colours)
    {
        // NO_COLOR: "when present and not an empty string (regardless of its value)" (no-color.org).
        var environment = new Dictionary<string, string?> { ["TERM"] = term, ["COLORTERM"] = colorTerm, ["NO_COLOR"] = noColor };
        Assert.Equal(Enum.Parse<Colours>(colours), Terminal.ColoursOf(isScreen, environment.GetValueOrDefault));
    }
}
