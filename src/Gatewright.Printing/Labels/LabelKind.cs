namespace Gatewright.Printing.Labels;

/// <summary>What labels are for.</summary>
public enum LabelKind
{
    /// <summary>Boats.</summary>
    Boats,

    /// <summary>Seats of boats.</summary>
    Seats,

    /// <summary>Racks.</summary>
    Racks,

    /// <summary>Oars.</summary>
    Oars,
}
