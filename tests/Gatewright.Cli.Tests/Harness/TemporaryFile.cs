namespace Gatewright.Cli.Tests.Harness;

/// <summary>A file that is gone when the test is over.</summary>
internal sealed class TemporaryFile : IDisposable
{
    public TemporaryFile(IEnumerable<string> lines) => File.WriteAllLines(Path, lines);

    public string Path { get; } = System.IO.Path.GetTempFileName();

    public void Dispose() => File.Delete(Path);
}
