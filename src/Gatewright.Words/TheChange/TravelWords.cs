using Gatewright.Core.Changing;

namespace Gatewright.Words.TheChange;

/// <summary>What is said of a boat that goes on the road.</summary>
public sealed class TravelWords
{
    private readonly Wording _say;

    internal TravelWords(Wording say) => _say = say;

    /// <summary>How riggers come off.</summary>
    public string Off => _say.Text("Travel.Off");

    /// <summary>How a boat is loaded and unloaded, as is common practice.</summary>
    public string Loading => _say.Text("Travel.Loading");

    /// <summary>How riggers go on again.</summary>
    public string On => _say.Text("Travel.On");

    /// <summary>Before the readings of the quick check.</summary>
    public string Check => _say.Text("Travel.Check");

    /// <summary>What to do about a reading that lies outside.</summary>
    public string Outside => _say.Text("Travel.Outside");

    /// <summary>"Rigger P2: seat 2 port"; of one without a mark what to write on it.</summary>
    public string Rigger(TravellingRigger rigger)
    {
        ArgumentNullException.ThrowIfNull(rigger);
        string gate = _say.Names.Gate(rigger.Gate);
        return rigger.Mark is { } mark ? _say.Text("Travel.Mark", mark, gate) : _say.Text("Travel.Unmarked", gate);
    }

    /// <summary>
    /// A reading and what it should show if nothing changed; where that is not surely above the floor, how sure it was before and
    /// what a reading there proves.
    /// </summary>
    public string Reading(QuickReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        string place = Sentence.Capital(_say.Rig.Place(reading.Place));
        string item = _say.Changes.Item(reading.Item);
        string expected = reading is { Lowest: { } lowest, Highest: { } highest }
            ? _say.Text("Travel.Expected", place, item, Figure(lowest), Figure(highest))
            : _say.Text("Travel.NotKnown", place, item);
        if (reading is not { IsNearFloor: true, Floor: { } floor, SurelyAbove: { } sure })
        {
            return expected;
        }

        string before = reading is { Before: { } left, AboveFloorBefore: { } above }
            ? _say.Text("Travel.Before", expected, _say.Changes.Figure(reading.Item, left), Figure(floor), _say.Figures.Percent(above))
            : expected;
        return reading.ReachesBelowFloor
            ? _say.Text("Travel.Floor", before, Figure(floor))
            : _say.Text("Travel.Near", before, Figure(sure), Figure(floor));

        string Figure(double value) => _say.Changes.Figure(reading.Item, value);
    }
}
