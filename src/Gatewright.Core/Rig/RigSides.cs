using Gatewright.Core.Judging;

namespace Gatewright.Core.Rig;

/// <summary>Starboard against port at each sculling seat: a height on the other side by a centimetre, an inboard alike.</summary>
internal static class RigSides
{
    /// <summary>
    /// Adds the reasons. One is laid to the side that misses its own target; to both where both do, or neither: the
    /// difference alone does not tell which to change.
    /// </summary>
    public static void Add(RigFigures figures, RigTargets targets, DecisionRule rule, List<RigReason>[] to)
    {
        for (int starboard = 0; starboard < figures.All.Count; starboard++)
        {
            RigFigure figure = figures.All[starboard];
            if (figure.Place.Side != Side.Starboard || targets.Class.Rowing != Rowing.Scull)
            {
                continue;
            }

            int port = figures.IndexOf(figure.Measure, figure.Place with { Side = Side.Port });
            if (port < 0 || targets.Find(figure.Measure, RigAspect.Sides, figure.Place with { Side = null }) is not { } target)
            {
                continue;
            }

            RigEstimate difference = figures.Difference(starboard, port);
            (bool starboardIsOut, bool portIsOut) =
                (RigJudge.IsOutside(figure, targets), RigJudge.IsOutside(figures.All[port], targets));
            if (starboardIsOut || !portIsOut)
            {
                Add(figure, figures.All[port].Place, to[starboard]);
            }

            if (portIsOut || !starboardIsOut)
            {
                Add(figures.All[port], figure.Place, to[port]);
            }

            void Add(RigFigure laidTo, RigPlace other, List<RigReason> reasons)
            {
                if (RigJudge.Reason(laidTo, RigReasonKind.Sides, difference, target, rule, other) is { } reason)
                {
                    reasons.Add(reason);
                }
            }
        }
    }
}
