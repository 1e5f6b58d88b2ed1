using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>A boat's name and class at the head of a page.</summary>
internal static class BoatHead
{
    /// <summary>Draws them; a name too long for its line becomes smaller, then takes more lines: here it is never cut.</summary>
    public static void Draw(Flow flow, string boat, string? boatClass)
    {
        Leaf leaf = flow.Leaf;
        double forClass = boatClass is null ? 0 : leaf.Width(boatClass, Lettering.Name) + 6;
        double width = Frame.Width - forClass;
        Lettering name = leaf.Fitting(boat, width, Lettering.Name, least: 16);
        if (leaf.Wrap(boat, width, name).Count > 2)
        {
            name = Lettering.WorkBold;
        }

        double first = flow.Y + Lettering.Name.CapitalMm;
        IReadOnlyList<string> lines = leaf.Wrap(boat, width, name);
        for (int i = 0; i < lines.Count; i++)
        {
            leaf.Text(lines[i], Frame.Left, first + (i * name.LineMm), name);
        }

        if (boatClass is not null)
        {
            leaf.Text(boatClass, Frame.Right, first, Lettering.Name, Align.Right);
        }

        flow.Y = first + ((lines.Count - 1) * name.LineMm) + 2;
    }
}
