using System.Runtime.CompilerServices;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>A club's file that was looked through from end to end. Its stream must stay open and as it is while this is used.</summary>
public sealed class ArchiveReading
{
    private readonly ArchiveMembers _members;
    private readonly IReadOnlyDictionary<string, string> _types;

    internal ArchiveReading(
        ArchiveMembers members, ArchiveHead? head, IReadOnlyDictionary<string, string> types, ArchiveProblems problems)
    {
        (_members, Head, _types) = (members, head, types);
        (Problems, ProblemsBeyond) = ([.. problems.Kept], problems.Beyond);
    }

    /// <summary>What the file says of itself; null when that cannot be read.</summary>
    public ArchiveHead? Head { get; }

    /// <summary>What is wrong with it, the first of it; nothing for a file in order.</summary>
    public IReadOnlyList<ArchiveProblem> Problems { get; }

    /// <summary>How many more problems there are.</summary>
    public long ProblemsBeyond { get; }

    /// <summary>The entries in the order of their numbers, from 1.</summary>
    /// <param name="evenIfBroken">Of a file with problems hands on the entries that can be read, as far as it can be read.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="ArchiveException">The file has problems, and nothing else was asked for.</exception>
    public async IAsyncEnumerable<Entry> EntriesAsync(
        bool evenIfBroken = false, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        Refuse(evenIfBroken);
        if (await OpenAsync(evenIfBroken, cancellation).ConfigureAwait(false) is not { } stream)
        {
            yield break;
        }

        await using (stream.ConfigureAwait(false))
        {
            var lines = new ArchiveLines(stream);
            while (await NextAsync(lines, evenIfBroken, cancellation).ConfigureAwait(false) is { } line)
            {
                if (EntryJson.Read(line.Span, out _) is { } entry && EntryRules.ProblemsOfBefore(entry).Count == 0)
                {
                    yield return entry;
                }
            }
        }
    }

    /// <summary>The photos.</summary>
    /// <param name="evenIfBroken">
    /// Of a file with problems hands on all photos there are, whatever is wrong with them: opening or reading one may then
    /// throw <see cref="ArchiveException"/>, <see cref="InvalidDataException"/> or <see cref="EndOfStreamException"/>.
    /// </param>
    /// <exception cref="ArchiveException">The file has problems, and nothing else was asked for.</exception>
    public IEnumerable<ArchiveBlob> Blobs(bool evenIfBroken = false)
    {
        Refuse(evenIfBroken);
        return _types.Select(type => (type, member: _members.Find(ArchiveFormat.BlobName(type.Key))))
            .Where(b => b.member is not null)
            .Select(b => new ArchiveBlob(b.type.Key, b.type.Value, cancellation => _members.OpenAsync(b.member!, _members.Limits.BlobBytes, cancellation)));
    }

    private async ValueTask<Stream?> OpenAsync(bool evenIfBroken, CancellationToken cancellation)
    {
        try
        {
            return _members.Find(ArchiveFormat.Entries) is { } member
                ? await _members.OpenAsync(member, long.MaxValue, cancellation).ConfigureAwait(false)
                : null;
        }
        catch (Exception broken) when (evenIfBroken && ArchiveMembers.IsBroken(broken))
        {
            return null;
        }
    }

    private static async ValueTask<ReadOnlyMemory<byte>?> NextAsync(ArchiveLines lines, bool evenIfBroken, CancellationToken cancellation)
    {
        try
        {
            return await lines.NextAsync(cancellation).ConfigureAwait(false);
        }
        catch (Exception broken) when (evenIfBroken && ArchiveMembers.IsBroken(broken))
        {
            return null;
        }
    }

    private void Refuse(bool evenIfBroken)
    {
        if (Problems.Count > 0 && !evenIfBroken)
        {
            throw new ArchiveException($"Nothing is taken from a file with problems. The first: {Problems[0]}");
        }
    }
}
