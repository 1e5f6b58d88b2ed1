using System.Security.Cryptography;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>Looks through a club's file once, front to back, and keeps nothing of it but what is wrong.</summary>
internal sealed class ArchiveCheck(ArchiveMembers members, ArchiveProblems problems, CancellationToken cancellation)
{
    private const int SmallMember = 64 * 1024;
    private const int Piece = 64 * 1024;

    /// <summary>A hash, a media type, and the marks round them.</summary>
    private const int BlobTypeLine = 128;

    private readonly UnpackedBudget _budget = members.Budget();

    public async Task<ArchiveReading> RunAsync()
    {
        ArchiveHead? head = null;
        Dictionary<string, string> types = [];
        await MemberAsync(ArchiveFormat.Readme, SmallMember, async stream => await WholeAsync(stream).ConfigureAwait(false)).ConfigureAwait(false);
        await MemberAsync(ArchiveFormat.Club, SmallMember, async stream => head = ArchiveJson.ReadHead(await WholeAsync(stream).ConfigureAwait(false), problems)).ConfigureAwait(false);
        await MemberAsync(ArchiveFormat.BlobTypes, SmallMember + (BlobTypeLine * (long)members.Limits.Blobs), async stream => types = ArchiveJson.ReadTypes(await WholeAsync(stream).ConfigureAwait(false), problems)).ConfigureAwait(false);
        await MemberAsync(ArchiveFormat.Entries, long.MaxValue, stream => EntriesAsync(stream, head)).ConfigureAwait(false);
        await BlobsAsync(types).ConfigureAwait(false);
        return new(members, head, types, problems);
    }

    private async Task MemberAsync(string name, long most, Func<Stream, Task> read)
    {
        if (members.Find(name) is not { } member)
        {
            return;
        }

        try
        {
            Stream stream = await ArchiveMembers.OpenAsync(member, most, _budget, cancellation).ConfigureAwait(false);
            await using (stream.ConfigureAwait(false))
            {
                await read(stream).ConfigureAwait(false);
            }
        }
        catch (Exception broken) when (ArchiveMembers.IsBroken(broken))
        {
            problems.Add(name, broken is ArchiveException ? broken.Message : "cannot be unpacked: the file is damaged or cut short");
        }
    }

    private async Task<byte[]> WholeAsync(Stream stream)
    {
        using var whole = new MemoryStream();
        await stream.CopyToAsync(whole, cancellation).ConfigureAwait(false);
        return whole.ToArray();
    }

    private async Task EntriesAsync(Stream stream, ArchiveHead? head)
    {
        using var chain = new LineChain();
        var lines = new ArchiveLines(stream);
        var ids = new HashSet<Guid>();
        while (await lines.NextAsync(cancellation).ConfigureAwait(false) is { } line)
        {
            chain.Add(line.Span);
            if (chain.Count > members.Limits.Entries)
            {
                throw new ArchiveException(FormattableString.Invariant($"has more than {members.Limits.Entries} entries, the most that is taken"));
            }

            Line(line.Span, chain.Count, head, ids);
        }

        if (head is not null && (head.Entries != chain.Count || head.Last != chain.Count))
        {
            problems.Add(ArchiveFormat.Entries, FormattableString.Invariant($"has {chain.Count} entries, and {ArchiveFormat.Club} says {head.Entries}, the last with number {head.Last}"));
        }
        else if (head is not null && head.Head != chain.Head)
        {
            problems.Add(ArchiveFormat.Entries, $"is not what was written: its hash is {chain.Head}, and {ArchiveFormat.Club} says {ShownText.Of(head.Head)}");
        }
    }

    private void Line(ReadOnlySpan<byte> line, long number, ArchiveHead? head, HashSet<Guid> ids)
    {
        Entry? entry = EntryJson.Read(line, out IReadOnlyList<string> envelope);
        foreach (string problem in entry is null ? envelope : EntryRules.ProblemsOfBefore(entry))
        {
            problems.Add(ArchiveFormat.Entries, problem, number);
        }

        if (entry is not null && !ids.Add(entry.Id))
        {
            problems.Add(ArchiveFormat.Entries, $"entry {entry.Id} is there twice", number);
        }

        if (entry is not null && head is not null && entry.Club != head.Club)
        {
            problems.Add(ArchiveFormat.Entries, $"an entry of club {entry.Club}, and the file is of {ShownText.Of(head.Club)}", number);
        }
    }

    private async Task BlobsAsync(Dictionary<string, string> types)
    {
        int count = 0;
        foreach (string hash in members.BlobHashes)
        {
            if (++count > members.Limits.Blobs)
            {
                problems.Add(ArchiveFormat.BlobFolder, FormattableString.Invariant($"has more than {members.Limits.Blobs} photos, the most that is taken"));
                break;
            }

            string name = ArchiveFormat.BlobName(hash);
            if (!types.ContainsKey(hash))
            {
                problems.Add(name, $"has no media type in {ArchiveFormat.BlobTypes}");
            }

            await MemberAsync(name, members.Limits.BlobBytes, stream => BlobAsync(stream, name, hash)).ConfigureAwait(false);
        }

        foreach (string hash in types.Keys.Where(hash => members.Find(ArchiveFormat.BlobName(hash)) is null))
        {
            problems.Add(ArchiveFormat.BlobName(hash), $"is missing, and {ArchiveFormat.BlobTypes} names it");
        }
    }

    private async Task BlobAsync(Stream stream, string name, string expected)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        byte[] piece = new byte[Piece];
        for (int read; (read = await stream.ReadAsync(piece, cancellation).ConfigureAwait(false)) > 0;)
        {
            hash.AppendData(piece.AsSpan(0, read));
        }

        string found = Convert.ToHexStringLower(hash.GetHashAndReset());
        if (found != expected)
        {
            problems.Add(name, $"is damaged: its hash is {found}");
        }
    }
}
