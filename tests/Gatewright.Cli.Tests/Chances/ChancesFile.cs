using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.Chances;

/// <summary>A place for a table of chances, and what is beside it; gone when the test is over.</summary>
internal sealed class ChancesFile : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    public string Path => System.IO.Path.Combine(_folder, "club.json");

    public string Text => File.ReadAllText(Path);

    /// <summary>The names in its folder.</summary>
    public IEnumerable<string> Beside => Directory.EnumerateFiles(_folder).Select(file => System.IO.Path.GetFileName(file)!).Order(StringComparer.Ordinal);

    public string Kept(int number) => File.ReadAllText(FormattableString.Invariant($"{Path}.kept-{number}"));

    public ProgramRun Run(params string[] args) => ProgramRun.Of(["chances", .. args, "--chances", Path]);

    /// <summary>What a run says, with the file's place left out, which is another each time.</summary>
    public string Told(ProgramRun run) => run.Output.Replace(_folder + "/", string.Empty, StringComparison.Ordinal);

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
