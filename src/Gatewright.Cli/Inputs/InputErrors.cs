using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Cli.Inputs;

/// <summary>Tells all at once what is wrong with the input.</summary>
internal static class InputErrors
{
    /// <summary>Tells them, for people on the standard error and for programs on the standard output.</summary>
    /// <returns>The exit status.</returns>
    public static int Tell(
        IReadOnlyList<InputProblem> errors, int beyond, Form form, Terminal terminal, string so = "Nothing was judged.")
    {
        if (form == Form.Json)
        {
            terminal.Output.Write(CheckJson.Text(
                new ProblemsDocument(ProblemsDocument.Name, [.. errors.Select(CheckedProblem.Of)], beyond)));
            terminal.Output.Write('\n');
        }

        foreach (InputProblem problem in errors)
        {
            terminal.Error.Write(CellText.Tame(problem.ToString()) + "\n");
        }

        string more = beyond > 0 ? $", of which {beyond} are not listed" : string.Empty;
        terminal.Error.Write($"{Figures.Count(errors.Count + beyond, "error")}{more}. {so}\n");
        return ExitStatus.WrongInput;
    }
}
