using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Words.Suspected;

namespace Gatewright.Words.Told;

/// <summary>What is told of a boat as a whole.</summary>
public sealed class BoatWords
{
    private readonly Wording _say;

    internal BoatWords(Wording say) => _say = say;

    /// <summary>"Heron 8+"; of a boat of which only oars were read, that no gate was.</summary>
    public string Name(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return _say.Text(check.Verdict.Gates.Count == 0 ? "Shed.Boat.NoGate" : "Shed.Boat", check.Verdict.Boat, check.Verdict.Class.Name);
    }

    /// <summary>Of a boat of which only oars were read.</summary>
    public string NoGate => _say.Text("Boat.NoGate");

    /// <summary>"Heron 8+: seat 5 port; check level and gauge first": what is not good, and what comes before its verdict's advice.</summary>
    public string Trouble(BoatCheck check)
    {
        const int MostNamed = 2;
        ArgumentNullException.ThrowIfNull(check);
        List<GatePlace> gates = [.. check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).Select(g => g.Gate)];
        return _say.Text(
            SharedFault.IsProbable(check) ? "Shed.Trouble.LevelFirst" : "Shed.Trouble",
            Name(check),
            gates.Count > MostNamed ? _say.Counted("Count.Gates", gates.Count) : _say.Names.Gates(gates));
    }

    /// <summary>What no verdict shows and should be seen to all the same, a sentence each without its full stop.</summary>
    public IEnumerable<string> Notices(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return Disagreements(check.Verdict).Concat(SlippedSleeves(check)).Concat(Changed(check)).Concat(LeftAside(check));
    }

    /// <summary>Between the stations, where nothing is judged: at a station it is a reason of the gate's verdict.</summary>
    private IEnumerable<string> Disagreements(BoatVerdict boat) =>
        from gate in boat.Gates
        from pitch in gate.Pitches
        where pitch.RepeatsDisagree && pitch.At.Station is null
        select _say.Text("Notice.Disagree", _say.Names.Gate(gate.Gate), _say.Names.AtPoint(pitch.At), pitch.Repeats);

    /// <summary>"seat 3 port was mended on 2026-10-10 and not read since".</summary>
    public string Changed(GateChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return _say.Text($"GateChanged.{change.By}", _say.Names.Gate(change.Gate), _say.Language.Day(change.On));
    }

    /// <summary>"Seat 3 port was mended on 2026-10-10 and not read since: read it again."</summary>
    public string ReadAgain(GateChange change) => _say.Text("Boat.ReadAgain", Sentence.Capital(Changed(change)));

    /// <summary>Those that were read a second time: the others are reasons of their gates' verdicts.</summary>
    private IEnumerable<string> Changed(BoatCheck check) => check.Context.Changes
        .Where(c => c.IsConfirmed || c.At.Station is null)
        .Select(c => c.Item is ReadItem.PinAft or ReadItem.PinOut
            ? _say.Text("Notice.Changed.Pin", _say.Names.Gate(c.Gate), _say.Language.Day(c.Before))
            : _say.Text("Notice.Changed", _say.Names.GateFirst(c.Gate), _say.Language.Day(c.Before)))
        .Distinct();

    private IEnumerable<string> LeftAside(BoatCheck check) => check.Context.LeftAside == 0
        ? []
        : [_say.Counted("Notice.LeftAside", check.Context.LeftAside, check.Settings.DaysCombined)];

    /// <summary>Oars whose sleeve has probably slipped, which no verdict on a gate shows.</summary>
    private IEnumerable<string> SlippedSleeves(BoatCheck check) =>
        from oar in check.Readings.Readings.Where(r => r.Item == ReadItem.Sleeve).Select(r => r.Gate).Distinct().Order()
        let slipped = new CausePart(Cause.Sleeve, oar)
        let probability = check.Diagnosis.Probability(part => part == slipped)
        where probability >= CauseChoice.ProbablyWrong
        let degrees = SleeveBeliefs.MeanDegrees(check.Diagnosis, oar, slipped)
        select _say.Text(
            degrees > 0 ? "Notice.Sleeve.More" : "Notice.Sleeve.Less",
            _say.Names.Gate(oar),
            _say.Figures.Percent(probability),
            _say.Figures.Degrees(Math.Abs(degrees)));
}
