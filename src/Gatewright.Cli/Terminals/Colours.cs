namespace Gatewright.Cli.Terminals;

/// <summary>How many colours the output can show.</summary>
internal enum Colours
{
    /// <summary>None, and no escape sequence of any kind: a pipe, a file, or a person who asked for none.</summary>
    None,

    /// <summary>The sixteen that every colour terminal has.</summary>
    Sixteen,

    /// <summary>256 or more.</summary>
    Many,
}
