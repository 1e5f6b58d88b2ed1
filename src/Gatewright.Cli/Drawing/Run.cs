namespace Gatewright.Cli.Drawing;

/// <summary>A piece of a line in one ink.</summary>
internal readonly record struct Run(string Text, Ink Ink);
