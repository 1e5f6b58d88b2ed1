using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core;
using Gatewright.Words.Judged;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>The first question: what the gates that are not good were read as, and which limits they do not meet.</summary>
internal static class WhatIsIt
{
    private const int Indent = 10;

    /// <summary>A boat with trouble all along is told in words; drawing each gate would bury the worst.</summary>
    private const int MostDrawn = 3;

    public static void Write(Page page, BoatCheck check, bool all)
    {
        page.Add(Heading.Of("What is it", "as read, corrected for level and gauge", page.Width));
        List<GateVerdict> wrong = [.. check.Verdict.Gates.Where(g => g.Verdict != Verdict.Good).OrderByDescending(g => g.Verdict)];
        List<GateVerdict> drawn = all ? wrong : [.. wrong.Take(MostDrawn)];
        foreach (GateVerdict gate in wrong)
        {
            foreach (Reason reason in ReasonChoice.Of(gate, all))
            {
                Line first = new Line().Add(" ").Add(reason.Verdict.Sign(), reason.Verdict.Ink());
                page.Paragraph(English.Reasons.Of(gate.Gate, reason, check.Verdict.Standard), Indent, first);
            }

            if (English.Reasons.LeftOut(gate, all) is { } more)
            {
                page.Paragraph($"{more}; {ShedCheck.HowToTellAll}.", Indent, ink: Ink.Quiet);
            }

            if (drawn.Contains(gate))
            {
                page.Add(Draw(gate, check.Verdict.Standard, page.Width));
            }
        }

        if (drawn.Count < wrong.Count)
        {
            page.Paragraph($"Drawn are the worst {MostDrawn}; --all draws every one.", Indent, ink: Ink.Quiet);
        }
    }

    private static IEnumerable<Line> Draw(GateVerdict gate, Standard standard, int width)
    {
        const int Left = Indent + 8;
        const int Figure = 12;
        var canvas = new Canvas(width, Stations.All.Count + 1);
        var scale = new PlumbScale(Reached(gate, standard), Left, width - Figure - 2);
        scale.DrawFigures(canvas, 0);
        foreach (Station station in Stations.All)
        {
            int y = (int)station + 1;
            StationPitch pitch = gate.At(station);
            Verdict verdict = gate.WorstAt(station);
            Ink ink = verdict != Verdict.Good ? verdict.Ink() : pitch.Read ? Ink.Plain : Ink.Quiet;
            canvas.Put(Indent, y, station.Word());
            scale.DrawReach(canvas, y, pitch.Pitch, pitch.Read, ink);
            scale.DrawLimits(canvas, y, standard.At(station));
            scale.DrawMark(canvas, y, pitch.Pitch.Value.Degrees, pitch.Read, ink);
            canvas.PutBefore(width - 2, y, PitchFigure.Of(pitch) + (pitch.Read ? " " : string.Empty), ink);
            if (verdict != Verdict.Good)
            {
                canvas.Put(width - 1, y, verdict.Mark().ToString(), ink);
            }
        }

        return canvas.Lines();
    }

    private static List<double> Reached(GateVerdict gate, Standard standard) =>
    [
        .. Stations.All.SelectMany(station => (IEnumerable<double>)
        [
            gate.At(station).Pitch.Value.Degrees - gate.At(station).Pitch.U.Degrees,
            gate.At(station).Pitch.Value.Degrees + gate.At(station).Pitch.U.Degrees,
            standard.At(station).Floor.Degrees,
            standard.At(station).Highest.Degrees,
        ]),
    ];
}
