using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Drawn;

/// <summary>That a boat is not to go out: in a heavy frame, black and white, seen from across the bay.</summary>
internal static class HeldBox
{
    /// <summary>Draws it.</summary>
    /// <param name="flow">Where.</param>
    /// <param name="title">"Held ashore", beside the tag; null for a caution, without it.</param>
    /// <param name="text">Why.</param>
    public static void Draw(Flow flow, string? title, string text)
    {
        const double Inset = 3;
        const double TagRoom = 12;
        double left = Frame.Left + Inset + (title is null ? 0 : TagRoom);
        double width = Frame.Right - Inset - left;
        Lettering lettering = title is null ? Lettering.Work : Lettering.WorkBold;
        double height = flow.Leaf.Height(text, width, lettering) + (title is null ? 0 : Lettering.Verdict.LineMm) + 3;
        flow.Room(height + 2);
        Leaf leaf = flow.Leaf;
        leaf.Box(Frame.Left + 0.5, flow.Y + 1, Frame.Width - 1, height, title is null ? 0.4 : 1);
        double y = flow.Y + (title is null ? 2.6 : 1.6);
        if (title is not null)
        {
            VerdictShape.Tag(leaf, Frame.Left + Inset + 4.5, flow.Y + 1 + (height / 2), 9);
            leaf.Text(title, left, y + Lettering.Verdict.CapitalMm + 1.6, Lettering.Verdict);
            y += Lettering.Verdict.LineMm;
        }

        leaf.Paragraph(text, left, y + lettering.CapitalMm + 0.8, width, lettering);
        flow.Y += height + 3;
    }
}
