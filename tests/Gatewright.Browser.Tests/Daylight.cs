namespace Gatewright.Browser.Tests;

/// <summary>When a screen is looked at.</summary>
internal enum Daylight
{
    Both,
    Day,
    Dusk,
}
