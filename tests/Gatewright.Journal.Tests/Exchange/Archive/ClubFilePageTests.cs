using System.Globalization;
using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange.Archive;

namespace Gatewright.Journal.Tests.Exchange.Archive;

/// <summary>docs/club-file.md says what the program does.</summary>
public sealed class ClubFilePageTests
{
    private const string Page = "club-file.md";

    [Fact]
    public async Task The_table_of_members_has_those_that_are_written()
    {
        using var zip = new System.IO.Compression.ZipArchive(new MemoryStream(await Archives.SmallAsync()));
        Assert.Equal(
            zip.Entries.Select(e => e.FullName.Replace(Archives.PictureHash, "", StringComparison.Ordinal)),
            MarkdownTable.Of(Page, "member").Codes("member").Select(c => Assert.Single(c)));
    }

    [Fact]
    public async Task The_table_of_club_json_has_its_fields()
    {
        using JsonDocument head = JsonDocument.Parse(Archives.Unpacked(await Archives.SmallAsync(), ArchiveFormat.Club));
        Assert.Equal(head.RootElement.EnumerateObject().Select(p => p.Name), MarkdownTable.Of(Page, "field").Codes("field").Select(c => Assert.Single(c)));
        Assert.Equal([ArchiveFormat.Name], MarkdownTable.Of(Page, "field").Codes("what it is").First());
    }

    [Fact]
    public void The_table_of_limits_has_those_of_the_program()
    {
        ArchiveLimits limits = ArchiveLimits.Default;
        MarkdownTable table = MarkdownTable.Of(Page, "limit");
        Assert.Equal(
            new[] { limits.Entries, limits.Blobs, limits.BlobBytes, EntryLimits.Line, limits.TotalBytes, limits.Ratio }.Select(n => n.ToString("N0", CultureInfo.InvariantCulture)),
            table["most"]);
        Assert.EndsWith(limits.FreeBytes.ToString("N0", CultureInfo.InvariantCulture) + " bytes", table["limit"].Last(), StringComparison.Ordinal);
    }
}
