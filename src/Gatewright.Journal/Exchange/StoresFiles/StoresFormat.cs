using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>The format of stores as CSV: what its columns are called, and what they take.</summary>
public static class StoresFormat
{
    internal static WordTable<PartKind> Parts { get; } = new([.. PartKinds.All.Select(kind => (kind.Word(), kind))]);

    /// <summary>The columns, in the order in which people think of them.</summary>
    public static IReadOnlyList<ReadingsColumn> Columns { get; } =
    [
        new("part", true, Parts.Words),
        new("size", true, []),
        new("count", true, []),
        new("note", false, []),
    ];

    internal const int PartColumn = 0;
    internal const int SizeColumn = 1;
    internal const int CountColumn = 2;
    internal const int NoteColumn = 3;

    internal static TableFormat Table { get; } = new("stores", "each part and size", Columns);

    /// <summary>Degrees that an insert may give at most; at least it gives 0.</summary>
    public static int MostDegrees => 15;

    /// <summary>Millimetres that a shim or washer may be thick at most.</summary>
    public static int MostMillimetres => 20;

    /// <summary>How many of one part a club may have at most.</summary>
    public static int MostOfAPart => 100_000;
}
