namespace Gatewright.Core;

/// <summary>A place in the stroke at which a gate is read and judged.</summary>
public enum Station
{
    /// <summary>Where the blade enters: the handle furthest to the stern.</summary>
    Catch,

    /// <summary>The shaft at right angles to the keel.</summary>
    Abeam,

    /// <summary>Where the blade leaves: the handle nearest the bow.</summary>
    Finish,
}

/// <summary>The stations in the order of the stroke, and their words.</summary>
public static class Stations
{
    /// <summary>Catch, abeam, finish.</summary>
    public static IReadOnlyList<Station> All { get; } = [Station.Catch, Station.Abeam, Station.Finish];

    /// <summary>The trade's word: "catch", "abeam" or "finish".</summary>
    public static string Word(this Station station) => station switch
    {
        Station.Catch => "catch",
        Station.Abeam => "abeam",
        _ => "finish",
    };

    /// <summary>The word with its preposition, for a sentence: "at the catch", "abeam", "at the finish".</summary>
    public static string Phrase(this Station station) => station switch
    {
        Station.Catch => "at the catch",
        Station.Abeam => "abeam",
        _ => "at the finish",
    };
}
