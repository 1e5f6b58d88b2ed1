using Gatewright.Core.Judging;

namespace Gatewright.Core.Rig;

/// <summary>How one figure of a rig was judged.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Target">Its target; null where there is none, and then only its readings can disagree.</param>
/// <param name="Verdict">The worst of its reasons, or good.</param>
/// <param name="Reasons">Why it is not good, worst first; empty when it is.</param>
public sealed record JudgedFigure(RigFigure Figure, RigTarget? Target, Verdict Verdict, IReadOnlyList<RigReason> Reasons);

/// <summary>How a boat's rig was judged. It never is `stop`: that is for pitch.</summary>
/// <param name="Targets">What it was judged by.</param>
/// <param name="Verdict">That of its worst figure; `unsure` where nothing was taken that could be judged.</param>
/// <param name="Figures">Every figure, in the order of <see cref="RigFigures.All"/>.</param>
public sealed record RigVerdict(RigTargets Targets, Verdict Verdict, IReadOnlyList<JudgedFigure> Figures)
{
    /// <summary>How one figure was judged; null where it was neither taken nor worked out.</summary>
    public JudgedFigure? Find(RigMeasure measure, RigPlace place)
    {
        foreach (JudgedFigure judged in Figures)
        {
            if (judged.Figure.Measure == measure && judged.Figure.Place == place)
            {
                return judged;
            }
        }

        return null;
    }
}
