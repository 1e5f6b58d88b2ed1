using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Journal.Exchange.Gearings;

/// <summary>A measure that may be set, and from where to where, as it was written: by the measure alone as far as usual.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Bounds">From where to where, in centimetres; null for the usual.</param>
public readonly record struct WrittenBounds(RigMeasure Measure, (double Least, double Most)? Bounds)
{
    /// <summary>How it is written, for whoever wrote it otherwise.</summary>
    public static string Expected { get; } =
        $"{WrittenStep.Names}, by itself or with = and from where to where in centimetres, as in inboard=113..117.";

    /// <summary>Reads <c>inboard</c> or <c>inboard=113..117</c>; null for what is neither.</summary>
    public static WrittenBounds? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = text.Split('=', 2);
        return WrittenStep.Measure(parts[0]) is not { } known ? null
            : parts.Length == 1 ? new(known, null)
            : parts[1].Split("..") is [{ } least, { } most] && WrittenStep.Centimetres(least) is { } from && WrittenStep.Centimetres(most) is { } to && IsWithin(known, from, to) ? new(known, (from, to))
            : null;
    }

    /// <summary>What may be set at a seat. Where nothing was written, all of it as far as usual; a seat that stands outside may stay.</summary>
    /// <returns>Null where a measure is none of such a seat, or is written twice.</returns>
    public static IReadOnlyList<AllowedStep>? Of(IReadOnlyList<WrittenBounds> written, SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(written);
        IReadOnlyList<AllowedStep> usual = AllowedStep.Usual(rig);
        if (written.Count == 0)
        {
            return usual;
        }

        bool isSound = written.All(w => usual.Any(u => u.Measure == w.Measure)) && written.DistinctBy(w => w.Measure).Count() == written.Count;
        return isSound
            ? [.. from step in usual
                from bounds in written
                where bounds.Measure == step.Measure
                select bounds.Bounds is var (least, most) ? step.Within(rig, least, most) : step]
            : null;
    }

    private static bool IsWithin(RigMeasure measure, double from, double to)
    {
        (double least, double most) = measure.Plausible();
        return from >= least && to <= most && from <= to;
    }
}
