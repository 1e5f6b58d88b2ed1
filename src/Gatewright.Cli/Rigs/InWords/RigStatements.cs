using Gatewright.Cli.Speaking;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Rigs.InWords;

/// <summary>The rig of a boat in words alone.</summary>
internal static class RigStatements
{
    public static void Add(Statements to, ShedRig rig, bool inInches = false)
    {
        to.Add($"The rig of {rig.Boat}, {rig.Targets.Class.Name}: {rig.Verdict?.Verdict.Word() ?? "not measured"}.");
        foreach (JudgedFigure judged in rig.Verdict?.Figures ?? [])
        {
            RigFigure figure = judged.Figure;
            string how = figure.IsComputed ? ", worked out" : string.Empty;
            bool isJudged = judged.Target is not null || judged.Reasons.Count > 0;
            to.Add($"{Words.Sentence.Capital(English.Rig.Place(figure.Place))}, {English.Rig.Measure(figure.Measure)} {English.Rig.Figure(figure.Value, RigTargetWords.UnitOf(figure.Measure, inInches))}{how}: {(isJudged ? judged.Verdict.Word() : "no target")}.");
        }

        foreach (string reason in rig.Verdict is { } verdict ? English.Rig.Why(verdict, inInches) : [])
        {
            to.Add(reason);
        }

        to.Add(RigTargetWords.Of(rig, inInches));
        to.Pause();
    }
}
