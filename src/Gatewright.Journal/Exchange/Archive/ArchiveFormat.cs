using System.Security.Cryptography;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>What a club's file is made of.</summary>
public static class ArchiveFormat
{
    /// <summary>The format, as club.json names it.</summary>
    public const string Name = "gatewright.club/1";

    /// <summary>For people who open the file without this program.</summary>
    public const string Readme = "README.txt";

    /// <summary>What the file says of itself.</summary>
    public const string Club = "club.json";

    /// <summary>The journal, an entry a line.</summary>
    public const string Entries = "entries.jsonl";

    /// <summary>The media type of each photo.</summary>
    public const string BlobTypes = "blobs.json";

    /// <summary>What the names of photos begin with.</summary>
    public const string BlobFolder = "blobs/";

    internal const int HashDigits = 2 * SHA256.HashSizeInBytes;

    internal const string ReadmeText =
        """
        This is one club's journal of its boats, as Gatewright keeps it: everything that was recorded, in plain files.

        entries.jsonl  The journal: one JSON object (RFC 8259) a line, in UTF-8, oldest number first. "ms" is the time in
                       milliseconds since 1970-01-01 UTC, "n" a counter within it, "kind" what was recorded, "v" the version
                       of that kind, and "body" what it says. Nothing is ever changed: an entry of kind "retract" takes
                       back the entry it names.
        blobs/         Photos. The name of each is its SHA-256, by which entries of kind "photo" name it.
        blobs.json     The media type of each photo.
        club.json      The club, the count of entries, the number of the last, and "head": begin with 32 zero bytes; for
                       each line take the SHA-256 of the 32 bytes before and the line without its end; the last is the
                       head, in hexadecimal.

        """;

    /// <summary>The name of a photo's member.</summary>
    internal static string BlobName(string sha256) => BlobFolder + sha256;

    /// <summary>Whether a text is a hash as names have it.</summary>
    internal static bool IsHash(ReadOnlySpan<char> text)
    {
        foreach (char c in text)
        {
            if (!char.IsAsciiHexDigitLower(c))
            {
                return false;
            }
        }

        return text.Length == HashDigits;
    }
}
