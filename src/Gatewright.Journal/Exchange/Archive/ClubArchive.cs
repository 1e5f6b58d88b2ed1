using System.IO.Compression;
using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>A club as one file that can be read without this program: docs/club-file.md.</summary>
public static class ClubArchive
{
    /// <summary>Bytes in the list of members for each of them: 46, its name, and what some writers add.</summary>
    private const int MemberInList = 256;

    /// <summary>Writes a club's file.</summary>
    /// <remarks>Of one journal it is the same to the byte each time. The whole is never in memory.</remarks>
    /// <param name="to">Where to; it need not seek, and is left open.</param>
    /// <param name="club">The club's id.</param>
    /// <param name="program">The program and version that writes it.</param>
    /// <param name="entries">All entries of the club in the order of their numbers, which run from 1 without gaps.</param>
    /// <param name="blobs">The photos; one that comes twice is written once.</param>
    /// <param name="cancellation">Stops the writing.</param>
    /// <exception cref="ArchiveException">A photo is not what its hash says.</exception>
    /// <exception cref="ArgumentException">An entry is another club's, or goes over several lines.</exception>
    public static async Task WriteAsync(
        Stream to,
        string club,
        string program,
        IAsyncEnumerable<Entry> entries,
        IAsyncEnumerable<ArchiveBlob> blobs,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(blobs);
        ZipArchive zip = await ZipArchive.CreateAsync(to, ZipArchiveMode.Create, leaveOpen: true, null, cancellation).ConfigureAwait(false);
        await using (zip.ConfigureAwait(false))
        {
            await new ArchiveWriter(zip, cancellation).WriteAsync(club, program, entries, blobs).ConfigureAwait(false);
        }
    }

    /// <summary>Looks through a club's file from end to end and says everything that is wrong with it.</summary>
    /// <remarks>Never fails over what the file holds; a stream that cannot be read throws as streams do.</remarks>
    /// <param name="from">The file. It has to seek, since a zip's list of members is at its end, and stays open.</param>
    /// <param name="limits">How much is taken.</param>
    /// <param name="cancellation">Stops the reading.</param>
    public static async Task<ArchiveReading> ReadAsync(Stream from, ArchiveLimits limits, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(limits);
        if (!from.CanSeek)
        {
            throw new ArgumentException("A club's file is read from a stream that seeks: put an upload on disk first.", nameof(from));
        }

        var problems = new ArchiveProblems(limits.Problems);
        ArchiveMembers members = await MembersAsync(from, limits, problems, cancellation).ConfigureAwait(false);
        return await new ArchiveCheck(members, problems, cancellation).RunAsync().ConfigureAwait(false);
    }

    private static async Task<ArchiveMembers> MembersAsync(
        Stream from, ArchiveLimits limits, ArchiveProblems problems, CancellationToken cancellation)
    {
        long most = (limits.Blobs + 16L) * MemberInList;
        long? list = await CentralDirectory.LengthAsync(from, cancellation).ConfigureAwait(false);
        if (list is null)
        {
            problems.Add(null, "This is not a club's file: it is no zip, or was cut short.");
            return ArchiveMembers.None(limits);
        }

        if (list > most)
        {
            problems.Add(null, FormattableString.Invariant($"The file has a list of members of {list} bytes; at most {most} are taken."));
            return ArchiveMembers.None(limits);
        }

        from.Position = 0;
        try
        {
            // Not disposed: its members are opened as long as the reading is used, and the stream is the caller's.
            ZipArchive zip = await ZipArchive.CreateAsync(from, ZipArchiveMode.Read, leaveOpen: true, null, cancellation).ConfigureAwait(false);
            return ArchiveMembers.Of(zip, limits, from.Length, problems);
        }
        catch (Exception broken) when (ArchiveMembers.IsBroken(broken))
        {
            problems.Add(null, "This is not a club's file: its list of members is damaged or cut short.");
            return ArchiveMembers.None(limits);
        }
    }
}
