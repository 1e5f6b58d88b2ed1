using System.Runtime.InteropServices.JavaScript;

namespace Gatewright.App.Device;

/// <summary>A finger, or a mouse, on the page: between its coming down and what the program hears of it pass some hundredths of a second.</summary>
internal static partial class Finger
{
    /// <summary>So long one mostly stays.</summary>
    public static TimeSpan Stays { get; } = TimeSpan.FromMilliseconds(100);

    /// <summary>Whether one has come down just now; never outside a browser.</summary>
    public static bool IsDown => OperatingSystem.IsBrowser() && IsDownOnPage();

    [JSImport("globalThis.gatewright.isTouched")]
    private static partial bool IsDownOnPage();
}
