namespace Gatewright.Printing.Labels;

/// <summary>A label: what is meant, in words and as a code.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Line">What it is, smaller.</param>
/// <param name="Code">What a camera reads off it.</param>
/// <param name="Typed">What is typed where there is no camera.</param>
public sealed record Label(string Title, string Line, string Code, string Typed);
