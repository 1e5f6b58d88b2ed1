using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>A rack by its name, with every level that rows give it.</summary>
internal sealed class RackRows(string name)
{
    private readonly Dictionary<DateOnly, (Rack Rack, RowPlace Place)> _dated = [];
    private (Rack Rack, RowPlace Place)? _undated;
    private Rack[]? _byDate;

    public string Name => name;

    /// <summary>Whether a row tried to give it a level and failed: then that is what has to be mended.</summary>
    public bool IsFaulty { get; set; }

    /// <summary>Its levels, oldest first; one without a date counts as the oldest.</summary>
    public IEnumerable<Rack> Levels => _dated.Values.Select(d => d.Rack).Append(_undated?.Rack).OfType<Rack>().OrderBy(Day);

    /// <summary>Takes a level.</summary>
    /// <returns>The other level that it was given for the same day, with its row; null when there is none.</returns>
    public (Rack Rack, RowPlace Place)? Contradicts(Rack rack, RowPlace place)
    {
        (Rack Rack, RowPlace Place) before;
        if (rack.ReadOn is not DateOnly day)
        {
            before = _undated ??= (rack, place);
        }
        else if (!_dated.TryGetValue(day, out before))
        {
            before = (rack, place);
            _dated.Add(day, before);
        }

        return before.Rack == rack ? null : before;
    }

    /// <summary>
    /// The rack as it was last read by that day, or failing that, as it was first read after it; for a boat without a
    /// date as it was last read. A level without a date counts as the oldest. Null when it was never read.
    /// </summary>
    public Rack? On(DateOnly? day)
    {
        _byDate ??= [.. Levels];
        if (_byDate.Length == 0)
        {
            return null;
        }

        int after = Array.FindIndex(_byDate, r => Day(r) > (day ?? DateOnly.MaxValue));
        return _byDate[after < 0 ? ^1 : Math.Max(after - 1, 0)];
    }

    private static DateOnly Day(Rack rack) => rack.ReadOn ?? DateOnly.MinValue;
}
