using Gatewright.Core;
using Gatewright.Core.Stroke;

namespace Gatewright.Words.OnTheWater;

/// <summary>What is said of gearing and arc, and of what a change does to them.</summary>
public sealed class StrokeWords
{
    private readonly Wording _say;

    internal StrokeWords(Wording say) => _say = say;

    /// <summary>"catch", "gearing with the gate".</summary>
    public string Figure(StrokeFigure figure) => _say.Text($"Stroke.Figure.{figure}");

    /// <summary>What a figure is, in one line.</summary>
    public string What(StrokeFigure figure) => _say.Text($"Stroke.What.{figure}");

    /// <summary>A figure in its unit: "57.3°", "2.500", "21.0 cm".</summary>
    public string Value(StrokeFigure figure, double value) => _say.Figures.Degrees(value, Digits(figure)) + Behind(figure);

    /// <summary>The same with its standard uncertainty: "57.3 ± 2.1°".</summary>
    public string Value(StrokeFigure figure, (double Value, double U) known) => _say.Text(
        "Figure.Bare", _say.Figures.Degrees(known.Value, Digits(figure)), _say.Figures.Degrees(known.U, Digits(figure))) + Behind(figure);

    /// <summary>A change: "+0.3°", of a ratio "+1.2 %".</summary>
    public string By(FigureChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        (double by, double u) = change.Figure.IsRatio() ? (change.Percent, 100 * change.U / change.Before) : (change.By, change.U);
        return _say.Text("Figure.Bare", Signed(by), _say.Figures.Degrees(u, 2)) + (change.Figure.IsRatio() ? " %" : Behind(change.Figure));
    }

    /// <summary>"spread -1.0 cm".</summary>
    public string Step(RigStep step) => $"{_say.Rig.Measure(step.Measure)} {Signed(step.By.Centimetres, 1)} cm";

    /// <summary>That no rower of that reach could row it.</summary>
    public string NoStroke => _say.Text("Stroke.NoStroke");

    /// <summary>What the angles rest on.</summary>
    public string OfReach => _say.Text("Stroke.OfReach");

    /// <summary>Where common rules of thumb are wrong, a sentence each.</summary>
    public IEnumerable<string> Rules => [_say.Text("Stroke.Rule.Spread"), _say.Text("Stroke.Rule.Lever"), _say.Text("Stroke.Rule.Finish")];

    /// <summary>That what is wanted lies outside what can be set.</summary>
    public string Unreachable(StrokeWish wish, (double Least, double Most)? range)
    {
        string wanted = Value(wish.Figure, wish.Value);
        return range is { } known
            ? _say.Text("Stroke.Unreachable.Range", Figure(wish.Figure), wanted, Value(wish.Figure, known.Least), Value(wish.Figure, known.Most))
            : _say.Text("Stroke.Unreachable.Together");
    }

    /// <summary>That no change within what may be set comes nearer to a wish.</summary>
    public string NothingNearer => _say.Text("Stroke.NothingNearer");

    /// <summary>What keeps a wish from being met: "What stops it: inboard, not above 118 cm."</summary>
    public string Stopped(IReadOnlyList<StoppingBound> bounds)
    {
        ArgumentNullException.ThrowIfNull(bounds);
        return bounds.Count == 0 ? _say.Text("Stroke.Contradict") : _say.Text("Stroke.Stopped", string.Join("; ", bounds.Select(b => _say.Text(
            b.IsMost ? "Stroke.NotAbove" : "Stroke.NotBelow", _say.Rig.Measure(b.Measure), _say.Figures.Brief(b.Bound.Centimetres)))));
    }

    /// <summary>From where to where a measure may be set: "spread from 83 to 89 cm".</summary>
    public string Allowed(AllowedStep allowed)
    {
        ArgumentNullException.ThrowIfNull(allowed);
        return _say.Text(
            "Stroke.Allowed",
            _say.Rig.Measure(allowed.Measure),
            _say.Figures.Brief(allowed.Least.Centimetres),
            _say.Figures.Brief(allowed.Most.Centimetres),
            allowed.Minutes);
    }

    /// <summary>Where the outward view of a figure's sign needs saying: a finish is told past abeam.</summary>
    public string Told(StrokeFigure figure, double value) => figure == StrokeFigure.Finish
        ? _say.Text("Stroke.PastAbeam", _say.Figures.Degrees(-value))
        : Value(figure, value);

    /// <summary>How a seat is rowed: "sweep" or "sculling".</summary>
    public string Of(Rowing rowing) => _say.Text($"Stroke.Rowing.{rowing}");

    private string Signed(double value, int decimals = 2)
    {
        string figure = _say.Figures.Degrees(value, decimals);
        return figure.StartsWith(_say.Language.Numbers.NegativeSign, StringComparison.Ordinal) ? figure : "+" + figure;
    }

    private static int Digits(StrokeFigure figure) => figure.IsRatio() ? 3 : 1;

    private static string Behind(StrokeFigure figure) => figure switch
    {
        StrokeFigure.Overlap => " cm",
        _ when figure.IsRatio() => string.Empty,
        _ => "°",
    };
}
