using System.Globalization;

namespace Gatewright.App.SharingPages;

/// <summary>Room on a disk, in words.</summary>
internal static class RoomSize
{
    /// <summary>"1.2 GB", "3.4 MB".</summary>
    public static string Of(long bytes) => bytes >= 1_000_000_000
        ? (bytes / 1e9).ToString("0.0", CultureInfo.CurrentCulture) + " GB"
        : (bytes / 1e6).ToString("0.0", CultureInfo.CurrentCulture) + " MB";
}
