namespace Gatewright.Core.Diagnosing;

/// <summary>A story as the places of its causes in the list of openings: none, one or two.</summary>
/// <param name="First">The first cause, or −1.</param>
/// <param name="Second">The second, or −1.</param>
internal readonly record struct StoryParts(int First, int Second)
{
    public static StoryParts None => new(-1, -1);

    public int Count => First < 0 ? 0 : Second < 0 ? 1 : 2;

    public int this[int part] => part == 0 ? First : Second;

    public bool Has(int opening) => First == opening || Second == opening;

    public int CountUnknowns(IReadOnlyList<Opening> openings) =>
        (First < 0 ? 0 : openings[First].Unknowns.Length) + (Second < 0 ? 0 : openings[Second].Unknowns.Length);
}
