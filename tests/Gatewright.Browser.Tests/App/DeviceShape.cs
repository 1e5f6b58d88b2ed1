namespace Gatewright.Browser.Tests.App;

/// <summary>What a device looks like.</summary>
/// <param name="Width">CSS pixels.</param>
/// <param name="Height">CSS pixels.</param>
/// <param name="IsDark">Whether it likes it dark.</param>
/// <param name="Locale">Its language.</param>
/// <param name="HasLargeText">Whether its text is twice as large as usual.</param>
internal sealed record DeviceShape(int Width, int Height, bool IsDark = false, string Locale = "en-GB", bool HasLargeText = false)
{
    /// <summary>A small phone.</summary>
    public static DeviceShape Phone { get; } = new(360, 740);

    /// <summary>A desk.</summary>
    public static DeviceShape Desk { get; } = new(1280, 800);
}
