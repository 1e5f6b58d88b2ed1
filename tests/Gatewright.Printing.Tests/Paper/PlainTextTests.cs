using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Tests.Paper;

public class PlainTextTests
{
    [Theory]
    [InlineData("Heron", "Heron")]
    [InlineData("one\nline\r\n and\tanother ", "one line and another")]
    [InlineData("a\u202Egnp.exe", "agnp.exe")]
    [InlineData("\u0000bell\u0007", "bell")]
    [InlineData("A\u0308lteste Mo\u0308we", "Älteste Möwe")]
    public void People_s_text_is_printed_in_a_line_and_turns_nothing_round(string text, string printed) =>
        Assert.Equal(printed, PlainText.Of(text));
}
