namespace Gatewright.Printing.Labels;

/// <summary>What labels are for.</summary>
public enum LabelKind
{
    /// <summary>Boats.</summary>
    Boats,

    /// <summary>Seats of boats.</summary>
    Seats,

    /// <summary>Racks.</summary>
    Racks,

    /// <summary>Oars.</summary>
    Oars,
}

/// <summary>The kinds and their words.</summary>
public static class LabelKinds
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<LabelKind> All { get; } = [.. Enum.GetValues<LabelKind>()];

    /// <summary>"boats", "seats", "racks", "oars".</summary>
    public static string Word(this LabelKind kind) => kind switch
    {
        LabelKind.Boats => "boats",
        LabelKind.Seats => "seats",
        LabelKind.Racks => "racks",
        _ => "oars",
    };

    /// <summary>The kind of a word; null for none.</summary>
    public static LabelKind? Of(string word)
    {
        foreach (LabelKind kind in All)
        {
            if (kind.Word() == word)
            {
                return kind;
            }
        }

        return null;
    }
}
