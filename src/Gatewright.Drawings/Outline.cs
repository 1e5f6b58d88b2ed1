using System.Text;

namespace Gatewright.Drawings;

/// <summary>Writes the outline of a shape as SVG's path does.</summary>
internal sealed class Outline
{
    private readonly StringBuilder _text = new();

    /// <summary>Lifts the pen to a place.</summary>
    public Outline Move(Spot to) => Add('M', to);

    /// <summary>A straight line.</summary>
    public Outline Line(Spot to) => Add('L', to);

    /// <summary>A part of a circle, as a clock turns or against it; the shorter way round.</summary>
    public Outline Round(double radius, bool clockwise, Spot to)
    {
        _text.Append('A').Append(Svg.N(radius)).Append(' ').Append(Svg.N(radius)).Append(clockwise ? " 0 0 1 " : " 0 0 0 ");
        return Put(to);
    }

    /// <summary>Back to where the pen was last set down.</summary>
    public Outline Close()
    {
        _text.Append('Z');
        return this;
    }

    /// <summary>Straight lines through places, one after another.</summary>
    public static Outline Through(IEnumerable<Spot> spots)
    {
        var outline = new Outline();
        foreach (Spot spot in spots)
        {
            outline.Add(outline._text.Length == 0 ? 'M' : 'L', spot);
        }

        return outline;
    }

    /// <summary>The path's text.</summary>
    public override string ToString() => _text.ToString();

    private Outline Add(char command, params ReadOnlySpan<Spot> spots)
    {
        _text.Append(command);
        for (int i = 0; i < spots.Length; i++)
        {
            _text.Append(i > 0 ? " " : "");
            Put(spots[i]);
        }

        return this;
    }

    private Outline Put(Spot spot)
    {
        _text.Append(Svg.N(spot.X)).Append(' ').Append(Svg.N(spot.Y));
        return this;
    }
}
