using System.IO.Compression;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>The members of a club's file that belong there, by name.</summary>
internal sealed class ArchiveMembers
{
    private readonly Dictionary<string, ZipArchiveEntry> _byName = new(StringComparer.Ordinal);
    private readonly long _packed;

    private ArchiveMembers(ArchiveLimits limits, long packed) => (Limits, _packed) = (limits, packed);

    public ArchiveLimits Limits { get; }

    public IEnumerable<string> BlobHashes =>
        _byName.Keys.Where(n => n.StartsWith(ArchiveFormat.BlobFolder, StringComparison.Ordinal)).Select(n => n[ArchiveFormat.BlobFolder.Length..]);

    public static ArchiveMembers None(ArchiveLimits limits) => new(limits, 0);

    public static ArchiveMembers Of(ZipArchive zip, ArchiveLimits limits, long packed, ArchiveProblems problems)
    {
        var members = new ArchiveMembers(limits, packed);
        foreach (ZipArchiveEntry member in zip.Entries)
        {
            if (!Belongs(member.FullName))
            {
                problems.Add(member.FullName, "does not belong in a club's file");
            }
            else if (!members._byName.TryAdd(member.FullName, member))
            {
                problems.Add(member.FullName, "is there twice");
            }
        }

        foreach (string name in (string[])[ArchiveFormat.Readme, ArchiveFormat.Club, ArchiveFormat.Entries, ArchiveFormat.BlobTypes])
        {
            if (members.Find(name) is null)
            {
                problems.Add(name, "is missing: the file is not a club's, or not whole");
            }
        }

        return members;
    }

    public ZipArchiveEntry? Find(string name) => _byName.GetValueOrDefault(name);

    /// <summary>What one pass over the file may unpack.</summary>
    public UnpackedBudget Budget() => new(Math.Min(Limits.TotalBytes, Limits.FreeBytes + (_packed * Limits.Ratio)));

    public ValueTask<Stream> OpenAsync(ZipArchiveEntry member, long most, CancellationToken cancellation) =>
        OpenAsync(member, most, Budget(), cancellation);

    public static async ValueTask<Stream> OpenAsync(
        ZipArchiveEntry member, long most, UnpackedBudget budget, CancellationToken cancellation) =>
        new UnpackedStream(await member.OpenAsync(cancellation).ConfigureAwait(false), most, budget);

    /// <summary>Whether reading failed over what the file holds: what the zip reader throws at damage, and what is thrown here.</summary>
    public static bool IsBroken(Exception fault) => fault is ArchiveException or InvalidDataException or EndOfStreamException or NotSupportedException;

    /// <summary>Names are taken whole and compared, never used as paths: what is not on the list is refused.</summary>
    private static bool Belongs(string name) =>
        name is ArchiveFormat.Readme or ArchiveFormat.Club or ArchiveFormat.Entries or ArchiveFormat.BlobTypes
        || (name.StartsWith(ArchiveFormat.BlobFolder, StringComparison.Ordinal)
            && ArchiveFormat.IsHash(name.AsSpan(ArchiveFormat.BlobFolder.Length)));
}
