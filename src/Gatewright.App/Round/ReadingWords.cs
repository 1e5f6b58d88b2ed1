using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Journal.Rounds;
using Gatewright.Words;

namespace Gatewright.App.Round;

/// <summary>How a reading is told: where it is, what was just taken, what comes next.</summary>
internal sealed class ReadingWords(Texts<RoundTexts> texts, Wording say)
{
    /// <summary>A gate, as short as the plan has room for.</summary>
    public string Short(GatePlace gate) => texts["GateShort", gate.Seat, say.Names.Side(gate.Side)];

    /// <summary>Where something is read, as it stands over the pad.</summary>
    public string Where(ReadingStep step) => texts[
        "Where",
        Short(step.Gate),
        step.Station is { } station ? say.Names.AtStation(station) : say.Names.Item(step.Item)];

    /// <summary>The same as it is spoken.</summary>
    public string Spoken(ReadingStep step) => Short(step.Gate) + ", "
        + (step.Station is { } station ? say.Names.Station(station) : say.Names.Item(step.Item));

    /// <summary>What is spoken after a reading: what was taken, and what comes next.</summary>
    /// <param name="desk">The boat being read.</param>
    /// <param name="judged">The verdict on the gate that was read; null where there is none.</param>
    public string Said(ReadingDesk desk, GateVerdict? judged)
    {
        string taken = desk.Told is not { } told
            ? string.Empty
            : judged is null
                ? texts["Recorded", Spoken(told.Step), Figures.Shown(told.Value)]
                : texts["RecordedJudged", Spoken(told.Step), Figures.Shown(told.Value), say.Names.Verdict(judged.Verdict)];
        string slip = desk.Told?.Slip is { } back ? " " + texts["SlipTakenBack", Figures.Shown(back)] : string.Empty;
        string note = desk.Told is { IsNoted: true } ? " " + texts["NoteKept"] : string.Empty;
        return taken + slip + note + " " + (desk.Walk.Now is { } next ? texts["NextIs", Spoken(next)] : texts["AllRead"]);
    }

    /// <summary>What was taken back, and what stands again since then.</summary>
    public string TakenBack(TakenReading back) => texts["TakenBack", Where(back.Step), Figures.Shown(back.Value)]
        + (back.Slip is { } slip ? " " + texts["SlipAgain", Figures.Shown(slip)] : string.Empty);

    /// <summary>How the boat lies, and how sure its level is.</summary>
    public string Lies(ReadingDesk desk, IReadOnlyList<LevelWay> ways)
    {
        string lie = Sentence.Capital(say.Names.Lie(desk.Laying.Lie));
        return ways.FirstOrDefault(w => w.Basis == desk.Laying.Level) is { } way
            ? texts["LiesSo", lie, say.Levels.Name(way.Level), say.Figures.Brief(Math.Round(way.U.Degrees, 2))]
            : lie;
    }
}
