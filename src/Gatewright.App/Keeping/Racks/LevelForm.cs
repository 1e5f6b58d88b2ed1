using System.Globalization;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Keeping.Racks;

/// <summary>A reading of a rack's level as somebody is typing it.</summary>
public sealed class LevelForm
{
    private const decimal Most = 10;

    /// <summary>Degrees the bow end is high; null while no number was typed.</summary>
    public decimal? BowHigh { get; set; }

    /// <summary>Degrees the port side is low; null while no number was typed.</summary>
    public decimal? PortLow { get; set; }

    /// <summary>The day, as a date field has it; empty for today.</summary>
    public string? Date { get; set; }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    public IReadOnlyDictionary<string, string> Problems(DateOnly today)
    {
        var problems = new Dictionary<string, string>();
        if (!(BowHigh >= -Most && BowHigh <= Most))
        {
            problems[nameof(BowHigh)] = "WrongLevel";
        }

        if (!(PortLow >= -Most && PortLow <= Most))
        {
            problems[nameof(PortLow)] = "WrongLevel";
        }

        if (!string.IsNullOrEmpty(Date) && !(Day <= today))
        {
            problems[nameof(Date)] = "WrongDate";
        }

        return problems;
    }

    /// <summary>What is to be recorded. Only without problems.</summary>
    public RackLevelRead Fact(string rack, DateOnly today) => new(rack, BowHigh!.Value, PortLow!.Value, Day == today ? null : Day);

    private DateOnly? Day => DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
}
