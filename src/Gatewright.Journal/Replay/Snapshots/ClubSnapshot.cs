using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Replay.Snapshots;

/// <summary>
/// A club as bytes, so that opening it costs what came since and not its whole age. It is a copy of what the journal
/// says and can be thrown away at any time; where it cannot be read, the journal is replayed.
/// </summary>
public static class ClubSnapshot
{
    /// <summary>Writes a club.</summary>
    /// <param name="club">The club.</param>
    /// <param name="number">The number of the last entry in it, 0 or more: the journal is read on from there.</param>
    /// <param name="to">Where to; it is neither flushed nor closed.</param>
    public static void Write(Club club, long number, Stream to)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(to);
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        to.Write(SnapshotFormat.Name);
        to.Write(SnapshotFormat.Fingerprint);
        var blocks = new BlockWriter(to);
        blocks.Text(club.Name);
        blocks.Number(number);
        blocks.Number(club.Count);
        blocks.Close();
        bool isOpen = false;
        foreach (Recorded recorded in club.All())
        {
            Write(blocks, recorded);
            isOpen = !blocks.IsFull;
            if (!isOpen)
            {
                blocks.Close();
            }
        }

        if (isOpen)
        {
            blocks.Close();
        }

        blocks.Close();
    }

    /// <summary>Reads a club and the number of the last entry in it.</summary>
    /// <remarks>Facts are read when they are asked for: the entries were checked when they were let in.</remarks>
    /// <exception cref="SnapshotException">It is damaged, cut short, or of a program that filed otherwise.</exception>
    public static (Club Club, long Number) Read(Stream from)
    {
        (BlockReader blocks, string name, long number, int count) = Begin(from);
        Club club = Club.Empty(name).With(Entries(blocks, name));
        return club.Count == count ? (club, number) : throw BlockReader.Damaged();
    }

    /// <summary>The same, a little at a time: where there is one thread, whoever taps meanwhile is heard.</summary>
    /// <param name="from">The snapshot.</param>
    /// <param name="isVouched">Whether whoever kept it has seen that it is what was written: then no hash is worked out.</param>
    /// <param name="breathe">Called after each few entries, and awaited.</param>
    /// <exception cref="SnapshotException">It is damaged, cut short, or of a program that filed otherwise.</exception>
    public static async Task<(Club Club, long Number)> ReadAsync(Stream from, bool isVouched, Func<ValueTask> breathe)
    {
        ArgumentNullException.ThrowIfNull(breathe);
        (BlockReader blocks, string name, long number, int count) = Begin(from, isVouched);
        Club club = await Club.Empty(name).WithAsync(Entries(blocks, name), breathe).ConfigureAwait(true);
        return club.Count == count ? (club, number) : throw BlockReader.Damaged();
    }

    /// <summary>Looks through a snapshot, and makes no club of it.</summary>
    /// <returns>The club's id, the number of the last entry in it, and how many there are.</returns>
    /// <exception cref="SnapshotException">It is damaged, cut short, or of a program that filed otherwise.</exception>
    public static (string Club, long Number, int Count) Look(Stream from)
    {
        (BlockReader blocks, string name, long number, int count) = Begin(from);
        return Entries(blocks, name).Count() == count ? (name, number, count) : throw BlockReader.Damaged();
    }

    private static (BlockReader Blocks, string Club, long Number, int Count) Begin(Stream from, bool isVouched = false)
    {
        ArgumentNullException.ThrowIfNull(from);
        var blocks = new BlockReader(from, isVouched);
        byte[] head = new byte[SnapshotFormat.Name.Length + SnapshotFormat.Fingerprint.Length];
        blocks.Fill(head);
        if (!head.AsSpan().StartsWith(SnapshotFormat.Name) || !head.AsSpan().EndsWith(SnapshotFormat.Fingerprint))
        {
            throw new SnapshotException("The snapshot is of another program or another version of it: replay the journal.");
        }

        return blocks.Next() ? (blocks, blocks.Text(), blocks.Number(), blocks.Count()) : throw BlockReader.Damaged();
    }

    private static void Write(BlockWriter blocks, Recorded recorded)
    {
        Entry entry = recorded.Entry;
        blocks.Id(entry.Id);
        blocks.Text(entry.Member);
        blocks.Text(entry.Device);
        blocks.Number(entry.Time.Milliseconds);
        blocks.Number(entry.Time.Counter);
        blocks.Text(entry.Kind);
        blocks.Number(entry.Version);
        blocks.Text(recorded.About.Thing);
        blocks.Text(recorded.About.Key);
        blocks.Number(recorded.Retracts is null ? 0 : 1);
        if (recorded.Retracts is { } target)
        {
            blocks.Id(target);
        }

        blocks.Bytes(entry.Body.Span);
    }

    private static IEnumerable<Recorded> Entries(BlockReader blocks, string club)
    {
        while (blocks.Next())
        {
            while (!blocks.IsAtEnd)
            {
                yield return Entry(blocks, club);
            }
        }
    }

    private static Recorded Entry(BlockReader blocks, string club)
    {
        Guid id = blocks.Id();
        string member = blocks.Text();
        string device = blocks.Text();
        var time = new HybridTime(blocks.Number(), blocks.Count());
        string kind = blocks.Text();
        int version = blocks.Count();
        var about = new Subject(blocks.Text(), blocks.Text());
        Guid? retracts = blocks.Number() == 0 ? null : blocks.Id();
        return new(
            new()
            {
                Id = id,
                Club = club,
                Member = member,
                Device = device,
                Time = time,
                Kind = kind,
                Version = version,
                Body = blocks.Bytes(),
            },
            about,
            retracts);
    }
}
