using System.Text.Json.Serialization;

namespace Gatewright.Server.Boats;

/// <summary>A boat in the list of a shed.</summary>
/// <param name="Key">What it is asked for by.</param>
/// <param name="Name">Its name.</param>
/// <param name="BoatClass">Its class; the key is <c>class</c>.</param>
/// <param name="Verdict">
/// good, unsure, adjust, stop, of its worst gate among those read; read-again where these are good and others were changed and not read
/// since; not-read where none is read.
/// </param>
/// <param name="StaysAshore">Whether it is to stay ashore: held, by what was read, or by what was read of a gate before it was changed.</param>
/// <param name="Holds">Why it is held, each as somebody typed it, or in English where the program says it.</param>
/// <param name="LastRead">The day it was last read.</param>
/// <param name="Standard">What it was judged by.</param>
public sealed record BoatListed(
    string Key,
    string Name,
    [property: JsonPropertyName("class")] string? BoatClass,
    string Verdict,
    bool StaysAshore,
    IReadOnlyList<string> Holds,
    DateOnly? LastRead,
    string? Standard);
