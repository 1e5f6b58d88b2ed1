using System.Globalization;
using Gatewright.Printing.Drawn;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Labels;

/// <summary>Labels with codes on sheets of labels.</summary>
public static class LabelPrint
{
    /// <summary>Points under which a title is larger in two lines than in one.</summary>
    private const double LeastInOneLine = 14;

    /// <summary>The labels, in their order.</summary>
    /// <param name="labels">What they say.</param>
    /// <param name="format">The grid.</param>
    /// <param name="skip">Labels of the first sheet that are gone already.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(IReadOnlyList<Label> labels, LabelFormat format, int skip, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(format);
        ArgumentNullException.ThrowIfNull(imprint);
        return Press.Print(imprint, imprint.Texts["Title.Labels"], book =>
        {
            Leaf? leaf = null;
            for (int i = 0; i < labels.Count; i++)
            {
                int index = (i + skip) % format.Count;
                leaf = leaf is null || index == 0 ? book.Add(PageFormat.A4) : leaf;
                Draw(leaf, labels[i], format.Place(index));
            }

            if (labels.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Labels");
                Frame.Finish(book);
            }
        });
    }

    /// <summary>Why codes would not be read off labels of this format; null where they are.</summary>
    public static string? Fault(IReadOnlyList<Label> labels, LabelFormat format)
    {
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(format);
        int modules = labels.Select(l => CodeSquare.Of(l.Code).Modules).DefaultIfEmpty().Max();
        return modules * CodeSquare.LeastModule <= Side(format.Place(0))
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"the longest code needs a square of {Math.Ceiling(modules * CodeSquare.LeastModule)} mm, and a label of {format.Name} has room for {Math.Floor(Side(format.Place(0)))}: choose a larger one, or a shorter address.");
    }

    private static double Side((double X, double Y, double Width, double Height) place) =>
        Math.Min(place.Height, 0.46 * place.Width);

    private static void Draw(Leaf leaf, Label label, (double X, double Y, double Width, double Height) place)
    {
        double side = Side(place);
        CodeSquare.Of(label.Code).Draw(leaf, place.X, place.Y + ((place.Height - side) / 2), side);
        double left = place.X + side + 0.5;
        double width = place.X + place.Width - left;
        Lettering title = Title(leaf, label.Title, width, place.Height);
        IReadOnlyList<string> lines = leaf.Wrap(label.Title, width, title);
        int shown = Math.Max(1, Math.Min(lines.Count, (int)((place.Height - (2 * Lettering.Small.LineMm)) / title.LineMm)));
        double y = place.Y + title.AscentMm;
        for (int i = 0; i < shown; i++)
        {
            bool isCut = i == shown - 1 && shown < lines.Count;
            leaf.Text(isCut ? leaf.Head(lines[i] + "…", width, title) : lines[i], left, y, title);
            y += title.LineMm;
        }

        double typed = place.Y + place.Height - 0.8;
        leaf.Fit(label.Line, left, Math.Min(y, typed - Lettering.Note.LineMm), width, Lettering.Note, Lettering.LeastOnCards);
        leaf.Fit(label.Typed, left, typed, width, Lettering.Small, 6);
    }

    /// <summary>As large as the label allows, in one line if that is not small: a boat is found by its label from where one stands.</summary>
    private static Lettering Title(Leaf leaf, string title, double width, double height)
    {
        double room = height - (2.6 * Lettering.Note.LineMm);
        foreach (int lines in (ReadOnlySpan<int>)[1, int.MaxValue])
        {
            foreach (double points in (ReadOnlySpan<double>)[28, 24, 20, 17, 14, 12, 10, 9])
            {
                var lettering = new Lettering(points, IsBold: true);
                bool isWhole = title.Split(' ').All(word => leaf.Width(word, lettering) <= width);
                int taken = leaf.Wrap(title, width, lettering).Count;
                if (isWhole && taken <= lines && taken * lettering.LineMm <= room && (taken > 1 || lines > 1 || points >= LeastInOneLine))
                {
                    return lettering;
                }
            }
        }

        return new(Lettering.LeastOnCards, IsBold: true);
    }
}
