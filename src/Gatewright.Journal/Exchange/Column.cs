namespace Gatewright.Journal.Exchange;

/// <summary>The columns of a file of readings, in the order in which they are written.</summary>
internal enum Column
{
    Boat,
    Class,
    Seat,
    Side,
    Item,
    At,
    Reading,
    Lie,
    BowHigh,
    PortLow,
    Gauge,
    Date,
    Note,
    Rack,
    Bed,
    Unit,
    Lying,
}

/// <summary>A column's name in the header.</summary>
internal static class ColumnExtensions
{
    public static string Name(this Column column) => ReadingsFormat.Columns[(int)column].Name;
}
