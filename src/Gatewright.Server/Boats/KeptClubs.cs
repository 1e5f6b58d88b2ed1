namespace Gatewright.Server.Boats;

/// <summary>The clubs kept at hand, those used last, as many as there is room for.</summary>
/// <param name="mostClubs">Clubs, at most.</param>
/// <param name="mostEntries">Entries of all of them together, at most; one club alone may have more.</param>
internal sealed class KeptClubs(int mostClubs, long mostEntries)
{
    private readonly Lock _lock = new();
    private readonly Dictionary<string, LinkedListNode<OpenClub>> _clubs = new(StringComparer.Ordinal);
    private readonly LinkedList<OpenClub> _byUse = [];
    private long _entries;

    /// <summary>The clubs, those used last first.</summary>
    public IReadOnlyList<string> Names
    {
        get
        {
            lock (_lock)
            {
                return [.. _byUse.Select(open => open.Club.Name)];
            }
        }
    }

    /// <summary>A club that is kept, as far as it had come; null where it is not.</summary>
    public OpenClub? Find(string club)
    {
        lock (_lock)
        {
            if (!_clubs.TryGetValue(club, out LinkedListNode<OpenClub>? node))
            {
                return null;
            }

            _byUse.Remove(node);
            _byUse.AddFirst(node);
            return node.Value;
        }
    }

    /// <summary>Keeps a club in place of what was kept of it, and lets go of those for whom there is no more room.</summary>
    public void Keep(OpenClub open)
    {
        lock (_lock)
        {
            Remove(open.Club.Name);
            _clubs.Add(open.Club.Name, _byUse.AddFirst(open));
            _entries += open.Club.Count;
            while (_clubs.Count > 1 && (_clubs.Count > mostClubs || _entries > mostEntries))
            {
                Remove(_byUse.Last!.Value.Club.Name);
            }
        }
    }

    private void Remove(string club)
    {
        if (_clubs.Remove(club, out LinkedListNode<OpenClub>? node))
        {
            _byUse.Remove(node);
            _entries -= node.Value.Club.Count;
        }
    }
}
