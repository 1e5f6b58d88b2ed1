using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;

namespace Gatewright.Cli.Terminals;

/// <summary>Parses and runs; a command line that makes no sense is wrong input like any other.</summary>
internal static class CommandLine
{
    private const string Name = "gatewright";

    public static int Run(RootCommand root, string[] args, Terminal terminal)
    {
        // Else help would name whatever file started it.
        root.HelpName = Name;
        root.Options.OfType<HelpOption>().Single().Action = new HelpWithExamples();
        ParseResult result = root.Parse(args.Length == 0 ? ["--help"] : args);
        bool isWrong = args.Length == 0 || result.Action is ParseErrorAction;
        int status = isWrong ? Refuse(result, terminal) : Invoke(result, terminal);
        terminal.Output.Flush();
        terminal.Error.Flush();
        return status;
    }

    /// <summary>What works on a store can be stopped with Ctrl-C and clears up; the rest needs no such care.</summary>
    private static int Invoke(ParseResult result, Terminal terminal) => result.Action is AsynchronousCommandLineAction
        ? Waited.For(result.InvokeAsync(Into(terminal.Output, terminal)))
        : result.Invoke(Into(terminal.Output, terminal));

    /// <summary>Everything on the standard error: nothing was asked that has an answer, and 0 would say "all good".</summary>
    private static int Refuse(ParseResult result, Terminal terminal)
    {
        if (result.Action is ParseErrorAction errors)
        {
            // The errors alone: under a page of help they would scroll away.
            errors.ShowHelp = false;
        }

        result.Invoke(Into(terminal.Error, terminal));
        if (result.Errors.Count > 0)
        {
            terminal.Error.Write($"Try: {Name} {string.Join(' ', CommandPath(result).Append("--help"))}\n");
        }

        return ExitStatus.WrongInput;
    }

    private static InvocationConfiguration Into(TextWriter output, Terminal terminal) =>
        new() { Output = output, Error = terminal.Error };

    private static IEnumerable<string> CommandPath(ParseResult result) =>
        Names(result.CommandResult).Reverse();

    private static IEnumerable<string> Names(CommandResult command)
    {
        for (CommandResult? at = command; at is { Command: not RootCommand }; at = at.Parent as CommandResult)
        {
            yield return at.Command.Name;
        }
    }
}
