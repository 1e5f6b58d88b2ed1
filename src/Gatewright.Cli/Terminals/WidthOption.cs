using System.CommandLine;

namespace Gatewright.Cli.Terminals;

/// <summary>The <c>--width</c> that every drawing command has.</summary>
internal static class WidthOption
{
    /// <summary>Where neither the person nor the screen says otherwise.</summary>
    private const int Usual = 80;

    /// <summary>Longer lines are hard to follow; a wider screen leaves the rest free.</summary>
    private const int Widest = 100;

    private const int Least = 40;
    private const int Most = 200;

    public static Option<int?> Make() => new("--width")
    {
        Description = $"Columns to write in, {Least} to {Most}. Usually the terminal's, {Widest} at most.",
        HelpName = "COLUMNS",
        CustomParser = result => (int?)NumberArgument.Within(Least, Most, "columns")(result),
    };

    /// <summary>The columns to write in.</summary>
    public static int Of(int? asked, Terminal terminal) =>
        asked ?? Math.Clamp(terminal.Width ?? Usual, Least, Widest);
}
