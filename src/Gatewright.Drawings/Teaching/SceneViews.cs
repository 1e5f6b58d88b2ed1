namespace Gatewright.Drawings.Teaching;

/// <summary>Which pictures of a scene are shown; on a small screen a few at a time.</summary>
[Flags]
public enum SceneViews
{
    /// <summary>None of them.</summary>
    None = 0,

    /// <summary>The oar from above.</summary>
    FromAbove = 1,

    /// <summary>The gate as one looks along the shaft.</summary>
    FromSide = 2,

    /// <summary>The blade in the water.</summary>
    Blade = 4,

    /// <summary>Hull and pin from astern.</summary>
    FromAstern = 8,

    /// <summary>The gauge on the face, boat upright.</summary>
    GaugeUpright = 16,

    /// <summary>The gauge on the face, boat upside down.</summary>
    GaugeInverted = 32,

    /// <summary>All six.</summary>
    All = FromAbove | FromSide | Blade | FromAstern | GaugeUpright | GaugeInverted,
}
