namespace Gatewright.Journal.Learning;

/// <summary>One number of the table of chances.</summary>
/// <param name="Key">Where it stands in a file: "chances.gatePitch", "reports.crabEarly.width".</param>
/// <param name="Meaning">What it says, in a sentence without its end.</param>
/// <param name="Range">What it may be.</param>
/// <param name="Get">The number as a table starts with it.</param>
/// <param name="With">A table that starts with another number.</param>
public sealed record ChanceNumber(
    string Key, string Meaning, NumberRange Range, Func<ClubChances, double> Get, Func<ClubChances, double, ClubChances> With)
{
    /// <summary>The number before anybody set it or anything was learnt.</summary>
    public double Default => Get(ClubChances.Default);

    /// <summary>What the number is now, with the jobs counted.</summary>
    public double Now(ClubChances table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return Get(table with { Before = table.Now });
    }
}
