namespace Gatewright.Core.Advising;

/// <summary>How long each kind of reading takes one person, in seconds. Ours, from judgement; each is a setting.</summary>
public sealed record ReadingTimes
{
    /// <summary>The defaults.</summary>
    public static ReadingTimes Default { get; } = new();

    /// <summary>A gate's face, the oar held at its station: 15 s.</summary>
    public double Gate { get; init; } = 15;

    /// <summary>A pin, from one direction: 20 s.</summary>
    public double Pin { get; init; } = 20;

    /// <summary>A face against its pin: 30 s.</summary>
    public double GatePitch { get; init; } = 30;

    /// <summary>The level, both ways: 45 s.</summary>
    public double Level { get; init; } = 45;

    /// <summary>The gauge reversed: 30 s.</summary>
    public double GaugeReversed { get; init; } = 30;

    /// <summary>An oar fetched and laid on the boat: 90 s.</summary>
    public double Sleeve { get; init; } = 90;

    /// <summary>The time for a kind.</summary>
    public double Of(NextItem item) => item switch
    {
        NextItem.Gate => Gate,
        NextItem.PinAft or NextItem.PinOut => Pin,
        NextItem.GatePitch => GatePitch,
        NextItem.Level => Level,
        NextItem.GaugeReversed => GaugeReversed,
        _ => Sleeve,
    };
}
