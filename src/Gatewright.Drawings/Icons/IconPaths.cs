namespace Gatewright.Drawings.Icons;

/// <summary>The strokes of each icon on a square of 24, in one weight, drawn for this project.</summary>
public static class IconPaths
{
    /// <summary>The strokes of an icon.</summary>
    public static string Of(IconKind kind) => kind switch
    {
        // A rack from its end, and the way along it.
        IconKind.Round => "M4 3v18M4 6h9M4 12h9M4 18h9M18.5 4v15M15 15.5l3.5 4 3.5-4",
        IconKind.Boat => "M12 1.5C14.9 7 14.9 17 12 22.5 9.1 17 9.1 7 12 1.5ZM9.9 11 4.8 8.6M14.1 15.4l5.1-2.4" + Ring(3.4, 8, 1.4) + Ring(20.6, 12.4, 1.4),
        // A ring spanner on its nut.
        IconKind.Jobs => "M5.2 4h5.6l2.8 4.8-2.8 4.8H5.2L2.4 8.8ZM12.6 10.6 21 18.2a1.9 1.9 0 0 1-2.7 2.7L10.9 13.5" + Ring(8, 8.8, 2.1),
        // The coach's megaphone.
        IconKind.Report => "M2.5 9.8 17 5v14L2.5 14.2ZM6.5 15.6V20h4v-3M20 9.5v5",
        IconKind.Stores => "M3 3.5v17.5M21 3.5v17.5M3 11.5h18M3 19.5h18M6 11.5v-5h5v5M13.5 19.5v-4.5h4.5v4.5" + Ring(8.5, 16.4, 1.9) + Ring(16, 8.9, 1.4),
        IconKind.Gauge => "M4 4h16v16H4ZM7.2 14a6 6 0 0 1 9.6 0M12 17l1.8-8.5M4 20v2M20 20v2",
        IconKind.Shed => "M2.5 11 12 4l9.5 7M5 9.4v11h14v-11M8.5 13h7M8.5 16.7h7",
        IconKind.Undo => "M8.5 4.5 4 9l4.5 4.5M4 9h10.2a5.4 5.4 0 0 1 0 10.8H9",
        // Over one gate to the next.
        IconKind.Skip => "M3.5 14.5C5 6 15 5 18.6 12.4M20 6.6l-1.2 6-5.8-1.6" + Ring(11, 17.5, 1.8),
        IconKind.Repeat => "M19.2 13.4A7.4 7.4 0 1 1 17.4 7M18 2.6v4.8h-4.8",
        IconKind.Note => "M5.5 3.5h13v13l-4 4h-9ZM18.5 16.5h-4v4M9 8.5h6M9 12.5h4",
        IconKind.Photo => "M3 8h4.2l1.9-2.8h5.8L16.8 8H21v11.5H3Z" + Ring(12, 13.4, 3.4),
        IconKind.Next => "M4.5 12h15M13.5 5.8l6 6.2-6 6.2",
        IconKind.Back => "M19.5 12h-15M10.5 5.8l-6 6.2 6 6.2",
        // Two ends of a line: tied, loose, running, cut.
        IconKind.Shared => "M7.5 12h9" + Ring(5, 12, 2.5) + Ring(19, 12, 2.5),
        IconKind.Unshared => "M7.5 12h2M12 12h.1M14.5 12h.1" + Ring(5, 12, 2.5) + Ring(19, 12, 2.5),
        IconKind.Sharing => "M7 8.5h10l-3.2-3.2M17 15.5H7l3.2 3.2" + Ring(3.5, 12, 1.2) + Ring(20.5, 12, 1.2),
        IconKind.Offline => "M7.5 12h2M14.5 12h2M14.4 6.5l-4.8 11" + Ring(5, 12, 2.5) + Ring(19, 12, 2.5),
        IconKind.Search => "M15 15l5.8 5.8" + Ring(10.2, 10.2, 6.6),
        IconKind.Filter => "M3.5 6.5h17M7 12h10M10.3 17.5h3.4",
        IconKind.People => "M2.5 20c0-4.2 2.4-6.6 6-6.6s6 2.4 6 6.6M16.4 13.2c3 .1 5.1 2.2 5.1 5.8" + Ring(8.5, 7.8, 3.2) + Ring(16.8, 8.4, 2.5),
        IconKind.Settings => "M3.5 7h9.2M17.3 7h3.2M3.5 17h3.2M11.3 17h9.2" + Ring(15, 7, 2.3) + Ring(9, 17, 2.3),
        IconKind.Explain => "M9.2 9.4a2.9 2.9 0 1 1 4.3 2.5c-1 .6-1.5 1.1-1.5 2.1M12 17.2h.1" + Ring(12, 12, 9.2),
        IconKind.Level => "M2 8.5h20v7H2ZM8.2 8.5v7M15.8 8.5v7" + Ring(12.6, 12, 1.7),
        IconKind.Oar => "M2.5 21.5 13.4 10.6M13.4 10.6 14.4 6.8 18.4 2.8 21.2 5.6 17.2 9.6ZM7.4 13.8l2.8 2.8",
        // A tag on its cord.
        IconKind.Hold => "M12 6.5 17.5 10.5V21h-11V10.5ZM12 10V6.5C12 4 10 3.5 10 1.8M9.8 14.2h4.4M9.8 17.6h4.4",
        IconKind.Add => "M12 4.5v15M4.5 12h15",
        IconKind.Close => "M6 6l12 12M18 6 6 18",
        IconKind.Scan => "M3.5 8V3.5H8M16 3.5h4.5V8M20.5 16v4.5H16M8 20.5H3.5V16M8 8h3.2v3.2H8ZM13.5 13.5h.1M16 16h.1M8.5 15.5h2.5M15.5 8v3",
        // An upright with its arms, their ends turned up.
        IconKind.Rack => "M5.5 2.5v19M5.5 7.5h11.3q2.2 0 2.7-2.2M5.5 14h11.3q2.2 0 2.7-2.2M5.5 20.5h11.3q2.2 0 2.7-2.2",

        // Between two limits, over a floor.
        IconKind.Standard => "M3.5 5.5h17M3.5 14.5h17M3.5 20.5h2.6M8.7 20.5h2.6M13.9 20.5h2.6M19 20.5h1.5" + Ring(12, 10, 2),
        IconKind.History => "M3.5 3.5v17h17M6.5 15.5l4-4 3.5 2.5 5.5-7.5",
        _ => "M5.5 9l6.5 6.5L18.5 9",
    };

    private static string Ring(double x, double y, double radius)
    {
        var left = new Spot(x - radius, y);
        var right = new Spot(x + radius, y);
        return new Outline().Move(left).Round(radius, true, right).Round(radius, true, left).Close().ToString();
    }
}
