using Gatewright.App.Frame;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange.StoresFiles;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Keeping.Stores;

/// <summary>A part that somebody is about to put on the shelf, as they typed it.</summary>
public sealed class PartForm
{
    /// <summary>The kind's word.</summary>
    public string Part { get; set; } = PartKind.Insert.Word();

    /// <summary>Degrees or millimetres, as typed.</summary>
    public string? Size { get; set; }

    /// <summary>How many, as typed.</summary>
    public string? Count { get; set; }

    /// <summary>Whether the size is in degrees.</summary>
    public bool IsInDegrees => Part == PartKind.Insert.Word();

    /// <summary>Whether it has a size at all.</summary>
    public bool HasSize => Part != PartKind.Pin.Word();

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    public IReadOnlyDictionary<string, string> Problems()
    {
        var problems = new Dictionary<string, string>();
        if (HasSize && !IsSize(Figures.Read(Size)))
        {
            problems[nameof(Size)] = IsInDegrees ? "WrongDegrees" : "WrongMillimetres";
        }

        if (!IsCount(Count))
        {
            problems[nameof(Count)] = "WrongCount";
        }

        return problems;
    }

    /// <summary>The count as it is recorded. Only without problems.</summary>
    public StockCounted Fact() => new(Part, HasSize ? Figures.Read(Size)!.Value : 0, Figures.Count(Count)!.Value);

    /// <summary>Whether what was typed is a count that a shelf can have.</summary>
    public static bool IsCount(string? typed) => Figures.Count(typed) <= StoresFormat.MostOfAPart;

    private bool IsSize(decimal? size) => IsInDegrees
        ? size >= 0 && size <= StoresFormat.MostDegrees
        : size > 0 && size <= StoresFormat.MostMillimetres;
}
