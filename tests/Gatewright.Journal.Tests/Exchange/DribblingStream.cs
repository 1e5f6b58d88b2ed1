namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Gives its bytes a few at a time, as pipes and networks do.</summary>
internal sealed class DribblingStream(byte[] bytes, int seed) : MemoryStream(bytes)
{
    private const int MostAtATime = 7;

    private readonly Random _random = new(seed);

    public override int Read(byte[] buffer, int offset, int count) =>
        base.Read(buffer, offset, Math.Min(count, _random.Next(1, MostAtATime + 1)));
}
