using System.Text;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>One run of the program in this process, with nothing of it reaching the real terminal.</summary>
internal sealed record ProgramRun(int Status, string Output, string Error)
{
    public static ProgramRun Of(params string[] args) => Of(args, new());

    public static ProgramRun Of(string[] args, Setting setting)
    {
        // The width of a screen, the colours and the standard input are what a run depends on beside its arguments.
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(setting.Input ?? string.Empty));
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int status = Program.Run(args, new(input, setting.Input is not null, output, error, setting.Colours, setting.Width));
        return new(status, output.ToString(), error.ToString());
    }

    public string[] Lines => Output.Split('\n');
}

/// <summary>What surrounds a run.</summary>
/// <param name="Input">What is piped in; null where a person sits at the terminal.</param>
/// <param name="Colours">What the output can show.</param>
/// <param name="Width">Columns of the screen; null where there is none.</param>
internal sealed record Setting(string? Input = null, Colours Colours = Colours.None, int? Width = null);
