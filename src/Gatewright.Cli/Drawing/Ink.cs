namespace Gatewright.Cli.Drawing;

/// <summary>What a piece of text is for, from which a terminal with colours makes its look. Never the only sign of it.</summary>
internal enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>Lines of a drawing, and what need not be read.</summary>
    Quiet,

    /// <summary>Names and headings.</summary>
    Strong,

    /// <summary>A verdict, or the figure that made it.</summary>
    Good,

    /// <inheritdoc cref="Good"/>
    Unsure,

    /// <inheritdoc cref="Good"/>
    Adjust,

    /// <inheritdoc cref="Good"/>
    Stop,
}
