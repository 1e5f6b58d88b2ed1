using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.App.Shed;

/// <summary>A boat as the shed shows it.</summary>
/// <param name="View">The boat.</param>
/// <param name="Rack">Where it lies; null for nowhere that is known.</param>
/// <param name="Standing">How it stands; null until that is worked out.</param>
public sealed record ShedRow(BoatView View, string? Rack, BoatStanding? Standing)
{
    /// <summary>The verdict as it is shown; null while it is not known, where nothing was read, and where the boat is to be read again.</summary>
    public Verdict? Verdict => Standing?.Shown;

    /// <summary>Whether somebody holds it ashore.</summary>
    public bool IsHeld => View.Holds.Count > 0;

    /// <summary>The last that holds it; null where nobody does.</summary>
    public Held? Hold => View.Holds is [.., { Fact: Held held }] ? held : null;

    /// <summary>Whether it is to stay ashore, by a hold or by what was read.</summary>
    public bool StaysAshore => IsHeld || Standing?.StaysAshore == true;

    /// <summary>How many jobs on it are open.</summary>
    public int OpenJobs { get; } = View.Jobs.Count(j => j.IsOpen);

    /// <summary>What was told of it last and is not seen to; null for nothing.</summary>
    public Incident? Told { get; } = OpenReports.Of(View) is [{ } newest, ..] ? newest : null;

    /// <summary>Whether it is shown under a choice.</summary>
    public bool IsIn(ShedChoice choice) => choice switch
    {
        ShedChoice.ToSeeTo => StaysAshore || OpenJobs > 0 || Told is not null || Standing?.Changed is { Gates.Count: > 0 } || Verdict is { } v && v != Core.Judging.Verdict.Good,
        ShedChoice.NotRead => Standing is { Check: null },
        ShedChoice.Ashore => StaysAshore,
        _ => true,
    };
}

/// <summary>Which boats the shed shows.</summary>
public enum ShedChoice
{
    /// <summary>All in use.</summary>
    All,

    /// <summary>Those with something to be done.</summary>
    ToSeeTo,

    /// <summary>Those without a reading.</summary>
    NotRead,

    /// <summary>Those to stay ashore.</summary>
    Ashore,
}
