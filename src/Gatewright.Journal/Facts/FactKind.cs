using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Gatewright.Journal.Facts;

/// <summary>A kind of entry: its name, the version written today, and how each version is read.</summary>
internal sealed class FactKind
{
    private readonly Dictionary<int, Func<ReadOnlyMemory<byte>, Fact>> _readers = [];
    private readonly Func<Fact, byte[]> _write;

    private FactKind(string name, int version, Type type, Func<Fact, byte[]> write) =>
        (Name, Version, Type, _write) = (name, version, type, write);

    public string Name { get; }

    /// <summary>The version that is written; every lower one is still read.</summary>
    public int Version { get; }

    public Type Type { get; }

    /// <param name="name">Its name in entries.</param>
    /// <param name="json">How its body is written; asked for only once one is read or written, since making it takes time and memory.</param>
    public static FactKind Of<T>(string name, Func<FactJson, JsonTypeInfo<T>> json)
        where T : Fact
    {
        var kind = new FactKind(name, 1, typeof(T), fact => JsonSerializer.SerializeToUtf8Bytes((T)fact, json(FactJson.Default)));
        kind._readers[1] = body => JsonSerializer.Deserialize(body.Span, json(FactJson.Default)) ?? throw new JsonException("null");
        return kind;
    }

    public bool Reads(int version) => _readers.ContainsKey(version);

    public Fact Read(int version, ReadOnlyMemory<byte> body) => _readers[version](body);

    public byte[] Write(Fact fact) => _write(fact);
}
