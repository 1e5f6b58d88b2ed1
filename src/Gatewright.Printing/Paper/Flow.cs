using Gatewright.Printing.Drawn;

namespace Gatewright.Printing.Paper;

/// <summary>Fills pages from top to bottom, and goes on on another where one is full: nothing is cut off.</summary>
internal sealed class Flow
{
    private readonly Book _book;
    private readonly Action<Flow>? _onEachPage;
    private double _narrowUntil;
    private double _narrowBy;

    /// <summary>A first page.</summary>
    /// <param name="book">The document.</param>
    /// <param name="onEachPage">Draws what is said again at the head of each further page.</param>
    public Flow(Book book, Action<Flow>? onEachPage = null)
    {
        (_book, _onEachPage) = (book, onEachPage);
        Leaf = Frame.Begin(book);
        Y = Frame.Top + 7;
    }

    /// <summary>The page that is filled now.</summary>
    public Leaf Leaf { get; private set; }

    /// <summary>How far it is filled.</summary>
    public double Y { get; set; }

    /// <summary>What is left of it, millimetres.</summary>
    public double Left => Frame.Bottom(Leaf) - Y;

    /// <summary>How wide text may be here.</summary>
    private double Width => Y < _narrowUntil ? Frame.Width - _narrowBy : Frame.Width;

    /// <summary>Makes sure that so much is left; another page is begun where it is not.</summary>
    public void Room(double mm)
    {
        if (mm > Left)
        {
            NewPage();
        }
    }

    /// <summary>Begins another page.</summary>
    public void NewPage()
    {
        Leaf = Frame.Begin(_book);
        Y = Frame.Top + 7;
        _narrowUntil = 0;
        _onEachPage?.Invoke(this);
    }

    /// <summary>Leaves something at the right alone: text keeps clear of it until it is past a height.</summary>
    public void Narrow(double until, double by) => (_narrowUntil, _narrowBy) = (until, by);

    /// <summary>Goes on under whatever stands at the right.</summary>
    public void Widen()
    {
        Y = Math.Max(Y, _narrowUntil);
        _narrowUntil = 0;
    }

    /// <summary>How high a heading is, millimetres.</summary>
    public static double HeadingHeight => Lettering.Heading.LineMm + 1.5;

    /// <summary>A heading, and room for at least a line under it.</summary>
    public void Heading(string text)
    {
        Room((2 * Lettering.Heading.LineMm) + 3);
        Y += Lettering.Heading.LineMm;
        Leaf.Text(text, Frame.Left, Y, Lettering.Heading);
        Y += 1.5;
    }

    /// <summary>Text over the whole width.</summary>
    public void Paragraph(string text, Lettering lettering, double indent = 0, double after = 1)
    {
        foreach (string line in Leaf.Wrap(text, Width - indent, lettering))
        {
            Line(line, lettering, indent);
        }

        Y += after;
    }

    /// <summary>A point in a list, its mark a short stroke of the plumb line.</summary>
    public void Point(string text, Lettering lettering)
    {
        Room(Math.Min(PointHeight(text, lettering), 40));
        Leaf.Line(Frame.Left + 1, Y + 1.2, Frame.Left + 1, Y + lettering.LineMm, 0.5);
        Paragraph(text, lettering, indent: 3.5);
    }

    /// <summary>How high such a point is, millimetres.</summary>
    public double PointHeight(string text, Lettering lettering) => Leaf.Height(text, Frame.Width - 3.5, lettering) + 1;

    /// <summary>Something to tick off.</summary>
    public void ToTick(string text, Lettering lettering, bool isTicked = false)
    {
        double height = Leaf.Height(text, Width - 9, lettering);
        Room(Math.Min(height, 40));
        TickBox.Draw(Leaf, Frame.Left, Y + lettering.LineMm, isTicked);
        Paragraph(text, lettering, indent: 9, after: 2.2);
    }

    private void Line(string line, Lettering lettering, double indent)
    {
        Room(lettering.LineMm);
        Y += lettering.LineMm;
        Leaf.Text(line, Frame.Left + indent, Y, lettering);
    }
}
