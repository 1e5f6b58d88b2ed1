namespace Gatewright.Journal.Exchange;

/// <summary>Things by the names that people give them, each made when its name is first met.</summary>
/// <remarks>Rows of one boat follow one another, so the last name is tried first, without looking it up.</remarks>
internal sealed class NameTable<T>(Func<string, T> make)
    where T : class
{
    private readonly Dictionary<string, T> _byKey = new(StringComparer.Ordinal);
    private readonly Dictionary<string, T> _bySpelling = new(StringComparer.Ordinal);
    private readonly List<T> _all = [];
    private string _lastSpelling = "";
    private T? _last;

    /// <summary>All of them, in the order in which they were first met.</summary>
    public IReadOnlyList<T> All => _all;

    public T Named(ReadOnlySpan<char> spelling)
    {
        if (_last is null || !spelling.SequenceEqual(_lastSpelling))
        {
            if (!_bySpelling.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(spelling, out string? known, out _last))
            {
                known = spelling.ToString();
                _last = Learn(known);
            }

            _lastSpelling = known;
        }

        return _last;
    }

    private T Learn(string spelling)
    {
        string name = NameText.Tidy(spelling);
        string key = NameText.Key(name);
        if (!_byKey.TryGetValue(key, out T? thing))
        {
            thing = make(name);
            _byKey.Add(key, thing);
            _all.Add(thing);
        }

        _bySpelling.Add(spelling, thing);
        return thing;
    }
}
