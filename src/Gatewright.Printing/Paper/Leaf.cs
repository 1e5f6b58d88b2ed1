using PdfSharp.Drawing;

namespace Gatewright.Printing.Paper;

/// <summary>A page to draw on, in millimetres from its top left corner. Black on white; greys only where nothing hangs on them.</summary>
internal sealed class Leaf : IDisposable
{
    /// <summary>Millimetres in a point of 1/72 inch.</summary>
    public const double MmAPoint = 25.4 / 72;

    /// <summary>The one thickness of line, millimetres: thin enough for a drawing, thick enough for a copier.</summary>
    public const double Stroke = 0.25;

    private readonly Book _book;
    private readonly XGraphics _on;

    public Leaf(Book book, XGraphics on, PageFormat format) => (_book, _on, Format) = (book, on, format);

    /// <summary>Its size.</summary>
    public PageFormat Format { get; }

    /// <summary>The document it is of.</summary>
    public Book Book => _book;

    /// <summary>How wide a text is, millimetres.</summary>
    public double Width(string text, Lettering lettering) =>
        _on.MeasureString(PlainText.Of(text), _book.Font(lettering)).Width * MmAPoint;

    /// <summary>A line of text whose letters stand on <paramref name="y"/>.</summary>
    public void Text(string text, double x, double y, Lettering lettering, Align align = Align.Left, bool isWhite = false)
    {
        string plain = PlainText.Of(text);
        if (plain.Length == 0)
        {
            return;
        }

        double left = align switch
        {
            Align.Middle => x - (Width(plain, lettering) / 2),
            Align.Right => x - Width(plain, lettering),
            _ => x,
        };
        _on.DrawString(plain, _book.Font(lettering), isWhite ? XBrushes.White : XBrushes.Black, Pt(left), Pt(y), XStringFormats.BaseLineLeft);
    }

    /// <summary>A straight line.</summary>
    public void Line(double fromX, double fromY, double toX, double toY, double thickness = Stroke, bool isDashed = false)
    {
        XPen pen = Pen(thickness);
        if (isDashed)
        {
            pen.DashPattern = [6, 4];
        }

        _on.DrawLine(pen, Pt(fromX), Pt(fromY), Pt(toX), Pt(toY));
    }

    /// <summary>The edge of a rectangle.</summary>
    public void Box(double x, double y, double width, double height, double thickness = Stroke) =>
        _on.DrawRectangle(Pen(thickness), Pt(x), Pt(y), Pt(width), Pt(height));

    /// <summary>A filled rectangle.</summary>
    public void Bar(double x, double y, double width, double height) =>
        _on.DrawRectangle(XBrushes.Black, Pt(x), Pt(y), Pt(width), Pt(height));

    /// <summary>A rectangle left white in something black.</summary>
    public void WhiteBar(double x, double y, double width, double height) =>
        _on.DrawRectangle(XBrushes.White, Pt(x), Pt(y), Pt(width), Pt(height));

    /// <summary>A circle, filled or not.</summary>
    public void Circle(double x, double y, double radius, bool isFilled, double thickness = Stroke)
    {
        (double left, double top, double across) = (Pt(x - radius), Pt(y - radius), Pt(2 * radius));
        if (isFilled)
        {
            _on.DrawEllipse(XBrushes.Black, left, top, across, across);
        }
        else
        {
            _on.DrawEllipse(Pen(thickness), XBrushes.White, left, top, across, across);
        }
    }

    /// <summary>A shape through places, closed, filled or not.</summary>
    public void Shape(IEnumerable<(double X, double Y)> corners, bool isFilled, double thickness = Stroke)
    {
        XPoint[] points = [.. corners.Select(c => new XPoint(Pt(c.X), Pt(c.Y)))];
        if (isFilled)
        {
            _on.DrawPolygon(XBrushes.Black, points, XFillMode.Winding);
        }
        else
        {
            _on.DrawPolygon(Pen(thickness), XBrushes.White, points, XFillMode.Winding);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _on.Dispose();

    private static XPen Pen(double thickness) => new(XColors.Black, Pt(thickness)) { LineJoin = XLineJoin.Round, LineCap = XLineCap.Round };

    private static double Pt(double mm) => mm / MmAPoint;
}
