using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;

namespace Gatewright.Words.Naming;

/// <summary>The trade's nouns.</summary>
public sealed class NameWords
{
    private readonly Wording _say;

    internal NameWords(Wording say) => _say = say;

    /// <summary>"good", "unsure", "adjust", "stop".</summary>
    public string Verdict(Verdict verdict) => _say.Text($"Verdict.{verdict}");

    /// <summary>"catch", "abeam", "finish".</summary>
    public string Station(Station station) => _say.Text($"Station.{station}");

    /// <summary>"at the catch", "abeam", "at the finish".</summary>
    public string AtStation(Station station) => _say.Text($"Station.{station}.Phrase");

    /// <summary>The station's word, or the angle: "catch", "20°".</summary>
    public string Point(StrokePoint at) => at.Station is { } station
        ? Station(station)
        : _say.Text("At.Angle", _say.Figures.Brief(at.Angle.Degrees));

    /// <summary>"at the catch", "at 20° from abeam".</summary>
    public string AtPoint(StrokePoint at) => at.Station is { } station
        ? AtStation(station)
        : _say.Text("At.Angle.Phrase", _say.Figures.Brief(at.Angle.Degrees));

    /// <summary>"port", "starboard".</summary>
    public string Side(Side side) => _say.Text($"Side.{side}");

    /// <summary>"upright", "inverted".</summary>
    public string Lie(Lie lie) => _say.Text($"Lie.{lie}");

    /// <summary>"sweep", "scull".</summary>
    public string Rowing(Rowing rowing) => _say.Text($"Rowing.{rowing}");

    /// <summary>What a rack's arms do to a boat's level.</summary>
    public string Bedding(Bedding bedding) => _say.Text($"Bedding.{bedding}");

    /// <summary>"seat 3 port".</summary>
    public string Gate(GatePlace gate) => _say.Text("Place.Gate", gate.Seat, Side(gate.Side));

    /// <summary>"Seat 3 port", where a sentence begins.</summary>
    public string GateFirst(GatePlace gate) => Sentence.Capital(Gate(gate));

    /// <summary>"seat 5", "seat 7 port": a gate that nobody read.</summary>
    public string Gate(MissingGate gate) => gate.Side is { } side
        ? Gate(new GatePlace(gate.Seat, side))
        : _say.Text("Place.Seat", gate.Seat);

    /// <summary>"seat 3 port, seat 4 starboard".</summary>
    public string Gates(IEnumerable<GatePlace> gates) => string.Join(", ", gates.Select(Gate));

    /// <summary>"seat 5, seat 7 port".</summary>
    public string Gates(IEnumerable<MissingGate> gates) => string.Join(", ", gates.Select(Gate));

    /// <summary>"the whole boat".</summary>
    public string WholeBoat => _say.Text("Place.Boat");

    /// <summary>"wrong or worn insert", "pin leans aft or forward".</summary>
    public string Cause(Cause cause) => _say.Text($"Cause.{cause}");

    /// <summary>A kind of reason in a few words: "below the limit".</summary>
    public string Reason(ReasonKind kind) => _say.Text($"ReasonKind.{kind}");

    /// <summary>What a gauge is held against: "the pin, from the side".</summary>
    public string Item(ReadItem item) => _say.Text($"ReadItem.{item}");

    /// <summary>What is to be read next: "the boat's level".</summary>
    public string Item(NextItem item) => _say.Text($"NextItem.{item}");

    /// <summary>What people tell of a boat: "a knock", "a crab at the finish".</summary>
    public string Report(ReportKind kind) => _say.Text($"Report.{kind}");

    /// <summary>"damage": what is told of a boat and says nothing of how its gates stand.</summary>
    public string Damage => _say.Text("Report.Damage");

    /// <summary>A report with its place: "a knock at seat 3 port", "the boat down to port".</summary>
    public string Report(Report report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report switch
        {
            { Gate: { } gate } => _say.Text("Report.At", Report(report.Kind), Gate(gate)),
            { Kind: ReportKind.DownToOneSide, Side: { } side } => _say.Text("Report.DownTo", Side(side)),
            _ => Report(report.Kind),
        };
    }

    /// <summary>"insert", "shim", "washer", "pin".</summary>
    public string Part(PartKind kind) => _say.Text($"PartKind.{kind}");

    /// <summary>"insert 4°", "shim 0.5 mm", "pin".</summary>
    public string Part(Part part) => part.Kind switch
    {
        PartKind.Pin => Part(part.Kind),
        PartKind.Insert => _say.Text("Part.Degrees", Part(part.Kind), _say.Figures.Brief(part.Size)),
        _ => _say.Text("Part.Millimetres", Part(part.Kind), _say.Figures.Brief(part.Size)),
    };

    /// <summary>"3 × insert 4°".</summary>
    public string Part(PartCount count) => _say.Text("Part.Count", count.Count, Part(count.Part));

    /// <summary>A way to mend, as a title: "Fit another insert".</summary>
    public string Remedy(RemedyKind kind) => _say.Text($"RemedyKind.{kind}");

    /// <summary>"mended", "not mended", "changed otherwise".</summary>
    public string Recheck(RecheckOutcome outcome) => _say.Text($"RecheckOutcome.{outcome}");
}
