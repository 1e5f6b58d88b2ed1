namespace Gatewright.Printing.Paper;

/// <summary>Which part of a text stands at a place.</summary>
internal enum Align
{
    /// <summary>Its beginning.</summary>
    Left,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    Right,
}
