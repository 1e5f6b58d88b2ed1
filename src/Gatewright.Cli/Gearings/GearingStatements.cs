using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Gearings;

/// <summary>A seat's gearing and arc, a change and a wish, in words.</summary>
internal static class GearingStatements
{
    private const int MostAnswers = 4;

    public static Statements Of(GearingTold told)
    {
        var to = new Statements();
        SeatRig rig = told.Stroke.Seat.Rig;
        to.Add($"{told.Boat ?? "A rig"}, seat {Figures.Degrees(told.SeatNumber, 0)}, {English.Stroke.Of(rig.Rowing)}: {string.Join(", ", SeatRig.Measures(rig.Rowing).Select(m => Measured(told.Stroke.Seat, m)))}.");
        to.Add("± is one standard uncertainty. What nobody measured is the target, marked so.");
        to.Pause();
        foreach (StrokeFigure figure in StrokeFigures.All)
        {
            to.Add($"{Sentence.Capital(English.Stroke.Figure(figure))} {English.Stroke.Value(figure, told.Stroke[figure])}. {English.Stroke.What(figure)}");
        }

        if (told.Change is { } change)
        {
            to.Pause();
            Change(to, change);
        }

        if (told.Found is { } found)
        {
            to.Pause();
            Wanted(to, told, found);
        }

        to.Pause();
        foreach (string rule in English.Stroke.Rules.Append(English.Stroke.OfReach))
        {
            to.Add(rule);
        }

        return to;
    }

    private static string Measured(MeasuredSeat seat, RigMeasure measure)
    {
        int at = Array.IndexOf(SeatRig.Measures(seat.Rig.Rowing), measure);
        string figure = English.Rig.Figure(new RigEstimate(seat.Rig.Get(measure).Centimetres, seat.Covariance.U(at)), RigUnit.Centimetres);
        return $"{English.Rig.Measure(measure)} {figure}{(seat.Assumed.Contains(measure) ? " (target)" : string.Empty)}";
    }

    private static void Change(Statements to, StrokeChange change)
    {
        foreach (StrokeEffect effect in change.Alone)
        {
            to.Add($"{Sentence.Capital(Steps(effect.Steps))}: {Effects(effect)}.");
        }

        if (change.Alone.Count > 1)
        {
            to.Add($"Together: {Effects(change.Together)}.");
            to.Add($"Beyond the sum of each alone: catch {Figures.Degrees(change.Interaction(StrokeFigure.Catch), 2)}°, load {Figures.Degrees(100 * change.Interaction(StrokeFigure.Load) / change.Together[StrokeFigure.Load].Before, 2)} %.");
        }
    }

    private static void Wanted(Statements to, GearingTold told, WishFound found)
    {
        string wanted = string.Join(" and ", told.Wishes.Select(w => $"{English.Stroke.Figure(w.Figure)} {English.Stroke.Value(w.Figure, w.Value)}"));
        to.Add($"Wanted: {wanted}.");
        if (found.Answers.Count == 0)
        {
            to.Add(English.Stroke.Unreachable(told.Wishes[0], found.Reachable));
            to.Add($"What may be set: {string.Join("; ", told.Allowed.Select(English.Stroke.Allowed))}.");
            if (told.Nearest is { } nearest)
            {
                Nearest(to, told, nearest);
            }

            return;
        }

        foreach (WishAnswer answer in found.Answers.Take(MostAnswers))
        {
            string after = After(told, answer);
            to.Add(answer.Steps.Count == 0
                ? $"Nothing need be set: {after}."
                : $"{Sentence.Capital(Steps(answer.Steps))}, {Figures.Degrees(answer.Minutes, 0)} min a seat: {after}.");
        }
    }

    private static void Nearest(Statements to, GearingTold told, NearestRig nearest)
    {
        to.Add(nearest.Nearest.Steps.Count == 0
            ? English.Stroke.NothingNearer
            : $"The nearest: {Steps(nearest.Nearest.Steps)}, {Figures.Degrees(nearest.Nearest.Minutes, 0)} min a seat: {After(told, nearest.Nearest)}.");
        to.Add(English.Stroke.Stopped(nearest.Stopping));
    }

    private static string After(GearingTold told, WishAnswer answer) => string.Join(
        ", ",
        told.Wishes.Select(w => w.Figure).Append(StrokeFigure.Arc).Append(StrokeFigure.Load).Distinct()
            .Select(f => $"{English.Stroke.Figure(f)} {English.Stroke.Value(f, answer.After[f])}"));

    private static string Steps(IReadOnlyList<RigStep> steps) => string.Join(" and ", steps.Select(English.Stroke.Step));

    private static string Effects(StrokeEffect effect) =>
        string.Join(", ", effect.Figures.Select(f => $"{English.Stroke.Figure(f.Figure)} {English.Stroke.By(f)}"));
}
