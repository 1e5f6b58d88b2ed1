namespace Gatewright.App.Rig;

/// <summary>Where one gets to in a boat's rig.</summary>
internal static class RigLinks
{
    /// <summary>The rig of a boat.</summary>
    public static string Rig(string boat) => $"boat/{Uri.EscapeDataString(boat)}/rig";

    /// <summary>Measuring it.</summary>
    public static string Measure(string boat) => Rig(boat) + "/measure";
}
