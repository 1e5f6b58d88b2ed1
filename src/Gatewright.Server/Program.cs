using System.CommandLine;
using System.CommandLine.Invocation;
using Gatewright.Server.Starting;

RootCommand root = ServeCommand.Of(ServeRun.RunAsync);
root.HelpName = "gatewright serve";
ParseResult result = root.Parse(args);
if (result.Action is ParseErrorAction errors)
{
    // The errors alone: under a page of help they would scroll away.
    errors.ShowHelp = false;
    await result.InvokeAsync(new() { Output = Console.Error, Error = Console.Error }).ConfigureAwait(false);
    return 2;
}

// The server itself waits for the signal to stop, and ends what it is doing first.
return await result.InvokeAsync(new() { ProcessTerminationTimeout = null }).ConfigureAwait(false);
