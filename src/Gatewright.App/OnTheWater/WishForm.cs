using Gatewright.App.Frame;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.App.OnTheWater;

/// <summary>How a wish is meant.</summary>
public enum WishKind
{
    /// <summary>So much more than now; of a ratio in hundredths.</summary>
    More,

    /// <summary>So much less.</summary>
    Less,

    /// <summary>That very value.</summary>
    Exactly,
}

/// <summary>A wish as somebody is typing it.</summary>
public sealed class WishLine
{
    /// <summary>Which figure.</summary>
    public StrokeFigure Figure { get; set; } = StrokeFigure.Load;

    /// <summary>How it is meant.</summary>
    public WishKind Kind { get; set; } = WishKind.Less;

    /// <summary>The number, as it was typed.</summary>
    public string? Amount { get; set; }

    /// <summary>What the number counts.</summary>
    public string? Unit => Figure == StrokeFigure.Overlap ? "cm" : !Figure.IsRatio() ? "°" : Kind == WishKind.Exactly ? null : "%";

    /// <summary>The wish; null where no such number was typed. A finish is typed as degrees past abeam.</summary>
    public StrokeWish? Of(StrokeGeometry now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (Figures.Read(Amount) is not { } amount || (amount < 0 && Kind != WishKind.Exactly))
        {
            return null;
        }

        int sign = Figure == StrokeFigure.Finish ? -1 : 1;
        double by = (Kind == WishKind.Less ? -1 : 1) * (double)amount;
        return new(Figure, Kind == WishKind.Exactly ? sign * by : Figure.IsRatio() ? now[Figure] * (1 + (by / 100)) : now[Figure] + (sign * by));
    }
}

/// <summary>A measure as somebody says how far it may be set.</summary>
public sealed class BoundsLine
{
    private readonly AllowedStep _usual;

    /// <summary>As far as usual.</summary>
    public BoundsLine(AllowedStep usual)
    {
        ArgumentNullException.ThrowIfNull(usual);
        _usual = usual;
        (Least, Most) = (Text(usual.Least), Text(usual.Most));
    }

    /// <summary>Which measure.</summary>
    public RigMeasure Measure => _usual.Measure;

    /// <summary>Whether it may be set at all.</summary>
    public bool May { get; set; } = true;

    /// <summary>The least, as it was typed.</summary>
    public string? Least { get; set; }

    /// <summary>The most.</summary>
    public string? Most { get; set; }

    /// <summary>The step within these bounds; null where they are none.</summary>
    public AllowedStep? Of(SeatRig rig)
    {
        (double least, double most) = Measure.Plausible();
        return Figures.Read(Least) is { } from && Figures.Read(Most) is { } to && from <= to && (double)from >= least && (double)to <= most
            ? _usual.Within(rig, (double)from, (double)to)
            : null;
    }

    private static string Text(Length length) => Figures.Text(Math.Round((decimal)length.Centimetres, 1));
}

/// <summary>What somebody wants of a seat, and what may be set for it.</summary>
public sealed class WishForm
{
    private readonly StrokeLab _lab;

    /// <summary>One wish, and everything settable as far as usual.</summary>
    public WishForm(StrokeLab lab)
    {
        ArgumentNullException.ThrowIfNull(lab);
        _lab = lab;
        Bounds = [.. AllowedStep.Usual(lab.Seat.Rig).Select(s => new BoundsLine(s))];
    }

    /// <summary>The wishes.</summary>
    public List<WishLine> Wishes { get; } = [new()];

    /// <summary>The measures.</summary>
    public IReadOnlyList<BoundsLine> Bounds { get; }

    /// <summary>Whether the wishes are numbers, each figure once.</summary>
    public bool IsWished => _lab.Before is { } before && Wishes.TrueForAll(w => w.Of(before.Geometry) is not null) && Wishes.DistinctBy(w => w.Figure).Count() == Wishes.Count;

    /// <summary>Whether something may be set, within bounds that are some.</summary>
    public bool IsBounded => Bounds.Any(b => b.May) && Bounds.All(b => !b.May || b.Of(_lab.Seat.Rig) is not null);

    /// <summary>Searches; null where what was typed is not whole.</summary>
    public WishResult? Search() => IsWished && IsBounded && _lab.Before is { } before
        ? WishResult.Of(
            before,
            [.. Wishes.Select(w => w.Of(before.Geometry)!.Value)],
            [.. Bounds.Where(b => b.May).Select(b => b.Of(_lab.Seat.Rig)!)])
        : null;
}
