using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Changing;

/// <summary>A figure with its standard uncertainty, centimetres or degrees.</summary>
/// <param name="Value">The value.</param>
/// <param name="U">Its standard uncertainty.</param>
public sealed record WrittenFigure(double Value, double U);

/// <summary>A plan from one rig to another, as <c>gatewright.change/1</c>.</summary>
/// <param name="Format">The format's name and version.</param>
/// <param name="From">The rig as it is.</param>
/// <param name="To">The rig to come to.</param>
/// <param name="RiggersMoved">How many riggers come off.</param>
/// <param name="Steps">What to do, in working order.</param>
/// <param name="MeasureFirst">What to measure before anything is done about it.</param>
/// <param name="ReadAgain">What to read when all is done.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Missing">What the shelf lacks.</param>
public sealed record ChangeDocument(
    string Format,
    string From,
    string To,
    int RiggersMoved,
    IReadOnlyList<WrittenStep> Steps,
    IReadOnlyList<WrittenUnclear> MeasureFirst,
    IReadOnlyList<WrittenItem> ReadAgain,
    IReadOnlyList<WrittenPart> Parts,
    IReadOnlyList<WrittenPart> Missing)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.change/1";
}

/// <summary>One step.</summary>
/// <param name="Phase">riggers, width, height, pin, insert, oars, stretcher.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Item">What is set; null where a rigger or an oar changes its place.</param>
/// <param name="Mark">The rigger or oar, where it bears a mark.</param>
/// <param name="Before">What it is before.</param>
/// <param name="After">What to expect after.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Effects">What else comes out otherwise.</param>
/// <param name="Instruction">What to do, in a sentence.</param>
/// <param name="Mind">What to mind.</param>
public sealed record WrittenStep(
    string Phase,
    int Seat,
    string? Side,
    string? Item,
    string? Mark,
    WrittenFigure? Before,
    WrittenFigure? After,
    IReadOnlyList<WrittenPart> Parts,
    IReadOnlyList<WrittenEffect> Effects,
    string Instruction,
    IReadOnlyList<string> Mind);

/// <summary>What a step makes of something it does not set.</summary>
/// <param name="Of">overlap, gearing, pitch-catch, pitch-abeam, pitch-finish.</param>
/// <param name="Before">Before.</param>
/// <param name="After">After.</param>
public sealed record WrittenEffect(string Of, double Before, double After);

/// <summary>What cannot be told yet.</summary>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Item">What.</param>
/// <param name="Wanted">What it is to be.</param>
/// <param name="Now">What is known of it.</param>
/// <param name="Why">not-measured, cannot-tell, no-part.</param>
public sealed record WrittenUnclear(int Seat, string? Side, string Item, double Wanted, WrittenFigure? Now, string Why);

/// <summary>An item at a place.</summary>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Item">What.</param>
public sealed record WrittenItem(int Seat, string? Side, string Item);

/// <summary>A part and how many.</summary>
/// <param name="Part">insert, shim, washer, pin.</param>
/// <param name="Size">Degrees or millimetres.</param>
/// <param name="Count">How many.</param>
public sealed record WrittenPart(string Part, double Size, int Count);

/// <summary>Two rigs side by side, as <c>gatewright.compare/1</c>.</summary>
/// <param name="Format">The format's name and version.</param>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
/// <param name="Items">Every item that either has.</param>
/// <param name="Marks">Riggers and oars that are not the same.</param>
public sealed record CompareDocument(
    string Format, string First, string Second, IReadOnlyList<WrittenCompared> Items, IReadOnlyList<WrittenMark> Marks)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.compare/1";
}

/// <summary>One item at one place in two rigs.</summary>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Item">What.</param>
/// <param name="First">In the first; null where it is not known.</param>
/// <param name="Second">In the second; null where it is not known.</param>
/// <param name="Difference">The second less the first; null where one is missing.</param>
/// <param name="Probability">That the difference truly has its sign; null where one is missing.</param>
/// <param name="As">differs, alike, untold, one-sided, not-taken-since.</param>
public sealed record WrittenCompared(
    int Seat, string? Side, string Item, WrittenFigure? First, WrittenFigure? Second, WrittenFigure? Difference, double? Probability, string As);

/// <summary>A rigger or an oar that is another.</summary>
/// <param name="Of">rigger or oar.</param>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side.</param>
/// <param name="First">Its mark in the first.</param>
/// <param name="Second">Its mark in the second.</param>
public sealed record WrittenMark(string Of, int Seat, string Side, string? First, string? Second);

/// <summary>A boat on the road, as <c>gatewright.travel/1</c>.</summary>
/// <param name="Format">The format's name and version.</param>
/// <param name="Boat">The boat.</param>
/// <param name="Off">Its riggers in the order in which they come off.</param>
/// <param name="Check">The quick check when it stands again.</param>
public sealed record TravelDocument(string Format, string Boat, IReadOnlyList<WrittenRigger> Off, IReadOnlyList<WrittenQuick> Check)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.travel/1";
}

/// <summary>A rigger.</summary>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side.</param>
/// <param name="Mark">Its mark; null where none is on record.</param>
public sealed record WrittenRigger(int Seat, string Side, string? Mark);

/// <summary>A reading of the quick check.</summary>
/// <param name="Seat">The seat.</param>
/// <param name="Side">The side, where it has one.</param>
/// <param name="Item">What.</param>
/// <param name="Expected">What it should show if nothing changed; null where nothing was known.</param>
/// <param name="Floor">Of the pitch at the catch, degrees: below it the boat does not go out, changed or not; null for all else.</param>
/// <param name="Before">What it was as the boat left; null where nothing was known.</param>
public sealed record WrittenQuick(int Seat, string? Side, string Item, WrittenFigure? Expected, double? Floor, WrittenFigure? Before);

/// <summary>Writes the documents as JSON.</summary>
public static class ChangeJson
{
    private static readonly ChangeJsonContext Context = new(WrittenJson.Options());

    /// <summary>A plan as JSON text, without a line end.</summary>
    public static string Text(ChangeDocument document) => JsonSerializer.Serialize(document, Context.ChangeDocument);

    /// <summary>A comparison as JSON text, without a line end.</summary>
    public static string Text(CompareDocument document) => JsonSerializer.Serialize(document, Context.CompareDocument);

    /// <summary>A travel sheet as JSON text, without a line end.</summary>
    public static string Text(TravelDocument document) => JsonSerializer.Serialize(document, Context.TravelDocument);
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSerializable(typeof(ChangeDocument))]
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(TravelDocument))]
internal sealed partial class ChangeJsonContext : JsonSerializerContext;
