using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.CheckShed;

/// <summary>The files of readings, opened; those that cannot be are errors like any other.</summary>
internal sealed class OpenSources : IDisposable
{
    private const string StandardInput = "-";

    private readonly List<ReadingsSource> _readable = [];
    private readonly List<InputProblem> _errors = [];

    public IReadOnlyList<ReadingsSource> Readable => _readable;

    public IReadOnlyList<InputProblem> Errors => _errors;

    /// <summary>Opens them.</summary>
    /// <param name="files">The files; none for what is piped in.</param>
    /// <param name="command">The command whose help says more.</param>
    /// <param name="terminal">Where standard input is.</param>
    public static OpenSources Of(IReadOnlyList<string> files, string command, Terminal terminal)
    {
        var sources = new OpenSources();
        if (files.Count == 0 && !terminal.InputIsPiped)
        {
            sources._errors.Add(new("standard input", null, null, null, $"no file was named and nothing is piped in; see {command} --help."));
        }

        foreach (string file in files.Count == 0 ? [StandardInput] : files.Distinct())
        {
            if (sources._errors.Count == 0 || files.Count > 0)
            {
                sources.Open(file, terminal);
            }
        }

        return sources;
    }

    public void Dispose() => _readable.ForEach(source => source.Content.Dispose());

    private void Open(string file, Terminal terminal)
    {
        if (file == StandardInput)
        {
            _readable.Add(new("standard input", terminal.Input));
            return;
        }

        if (InputFile.TryOpen(file, _errors) is { } content)
        {
            _readable.Add(new(file, content));
        }
    }
}
