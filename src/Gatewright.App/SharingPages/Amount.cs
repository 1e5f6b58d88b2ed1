using Gatewright.App.Frame;

namespace Gatewright.App.SharingPages;

/// <summary>So many entries and photos, in words.</summary>
public static class Amount
{
    /// <summary>"2 entries and 1 photo"; of what there is none of, nothing is said.</summary>
    public static string Of(int entries, int photos, Texts<SharingPagesTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        string written = entries == 1 ? texts["OneEntry"] : texts["Entries", entries];
        string pictures = photos == 1 ? texts["OnePhoto"] : texts["SomePhotos", photos];
        return photos == 0 ? written : entries == 0 ? pictures : texts["Both", written, pictures];
    }
}
