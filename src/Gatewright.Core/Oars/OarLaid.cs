namespace Gatewright.Core.Oars;

/// <summary>Which way round an oar lies while its blade rests on the gunwale of its own side, the shaft abeam.</summary>
public enum OarLaid
{
    /// <summary>The handle away from the boat: the blade points inboard. The usual way.</summary>
    HandleOut,

    /// <summary>The shaft across the boat, the blade pointing out over its own side, as it is rowed.</summary>
    Across,
}

/// <summary>The way round as the geometry uses it.</summary>
public static class OarLaidExtensions
{
    /// <summary>+1 with the handle out, −1 across: turned end for end, the oar meets the boat's rise from the other side.</summary>
    public static int Sign(this OarLaid laid) => laid == OarLaid.HandleOut ? 1 : -1;

    /// <summary>The word in files: "handle-out" or "across".</summary>
    public static string Word(this OarLaid laid) => laid == OarLaid.HandleOut ? "handle-out" : "across";

    /// <summary>
    /// Whether a reading counts as positive when the flat rises to the bow; else when it rises to the stern. The lie turns it
    /// as the way round does, since an oar's own side is the other one of a boat turned over.
    /// </summary>
    public static bool IsPositiveToBow(this OarLaid laid, Lie lie) => laid.Sign() * lie.Sign() > 0;
}
