namespace Gatewright.Replica.Exchanging;

/// <summary>How much is sent or asked for at once: less after each time that it did not come through.</summary>
internal sealed class BatchSize
{
    private const int Largest = 5000;
    private const int Usual = 2000;
    private const int Smallest = 50;

    /// <summary>Bytes in one request, unpacked: 8 MiB.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>Lines in one request.</summary>
    public int Lines { get; private set; } = Usual;

    public void Shrink() => Lines = Math.Max(Smallest, Lines / 2);

    /// <summary>So many lines were too many, whatever their size.</summary>
    public void Cut(int lines) => Lines = Math.Max(1, lines / 2);

    public void Grow() => Lines = Math.Min(Largest, Lines * 2);
}
