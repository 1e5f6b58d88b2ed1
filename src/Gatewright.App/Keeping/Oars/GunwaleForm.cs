using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Oars;

/// <summary>How sleeves are about to be read: on which boat, how it lies, which way round the oars are laid, with what.</summary>
public sealed class GunwaleForm
{
    private const int MostOfALevel = 30;

    /// <summary>The key of the boat; empty for one that is not said.</summary>
    public string? Boat { get; set; }

    /// <summary>How it lies.</summary>
    public Lie Lie { get; set; } = Lie.Upright;

    /// <summary>Which way round the oars are laid.</summary>
    public OarLaid Laid { get; set; } = OarLaid.HandleOut;

    /// <summary>How the level is known.</summary>
    public LevelBasis Level { get; set; } = LevelBasis.ByEye;

    /// <summary>How high the bow lies, where it was read, as it was typed.</summary>
    public string? BowHigh { get; set; }

    /// <summary>The key of the gauge; empty for one of which nothing is known.</summary>
    public string? Gauge { get; set; }

    /// <summary>As they were last read: the gauge, and the boat that most of the set is rowed in.</summary>
    public static GunwaleForm Of(Club club, OarSetView? set)
    {
        ArgumentNullException.ThrowIfNull(club);
        var form = new GunwaleForm();
        foreach (OarView oar in set?.Oars ?? [])
        {
            if (oar.Last(OarItem.Sleeve)?.Fact is OarRead read)
            {
                (form.Gauge, form.Laid) = (read.Gauge, read.Laid ?? OarLaid.HandleOut);
            }
        }

        return form;
    }

    /// <summary>The ways to know the level of the boat as it lies.</summary>
    public IReadOnlyList<LevelWay> Ways(Club club, DateOnly today) => LevelWays.Of(club, Rack(club), today, MeasuringSettings.Default);

    /// <summary>Whether what was typed is whole.</summary>
    public bool IsWhole => Level != LevelBasis.Read || TypedDegrees.Parse(BowHigh) is { } level && Math.Abs(level) <= MostOfALevel;

    /// <summary>A reading of an oar's sleeve so.</summary>
    public OarRead Fact(string oar, decimal value, string session, Club club) => new(
        oar, OarItem.Sleeve, value,
        Session: session,
        Boat: string.IsNullOrEmpty(Boat) ? null : Boat,
        Lie: Lie,
        Level: Level,
        BowHigh: Level == LevelBasis.Read ? TypedDegrees.Parse(BowHigh) : null,
        Rack: Level == LevelBasis.Rack ? Rack(club) : null,
        Laid: Laid,
        Gauge: string.IsNullOrEmpty(Gauge) ? null : Gauge);

    private string? Rack(Club club) => string.IsNullOrEmpty(Boat) ? null : BoatBerth.Of(new(club, Boat)).Rack;
}
