namespace Gatewright.Core.Changing;

/// <summary>What has to be read again when something was set: itself, and all that stands on it.</summary>
internal static class ReadAgainAfter
{
    private static IReadOnlyList<RigItem> Pitches { get; } = [RigItem.PitchCatch, RigItem.PitchAbeam, RigItem.PitchFinish];

    public static IReadOnlyList<RigItem> Of(RigItem item) => ChangePhases.Of(item) switch
    {
        ChangePhase.Width => [item, RigItem.Height, .. Pitches],
        ChangePhase.Height or ChangePhase.Pin => [RigItem.Height, .. Pitches],
        ChangePhase.Insert => Pitches,
        _ => [item],
    };

    /// <summary>After a rigger was put on: all that stands on it.</summary>
    public static IReadOnlyList<RigItem> OfRigger(Rowing rowing) =>
        [rowing == Rowing.Sweep ? RigItem.Spread : RigItem.Span, RigItem.Height, .. Pitches];
}
