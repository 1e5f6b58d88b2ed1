using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Gatewright.Cli.Terminals;

/// <summary>The library's help, and under it examples to copy.</summary>
internal sealed class HelpWithExamples : SynchronousCommandLineAction
{
    private const int Width = 80;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int status = new HelpAction { MaxWidth = Width }.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.Write("Examples:\n");
        foreach (Example example in Examples.Of(parseResult.CommandResult.Command))
        {
            output.Write($"  {example.Line}\n      {example.Meaning}\n");
        }

        return status;
    }
}
