using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests.ToRead;

/// <summary>A gate that somebody told of and nobody has read since comes before whatever else would tell most.</summary>
public class ToldUnreadTests
{
    private static readonly GatePlace Bow = new(1, Side.Starboard);
    private static readonly GatePlace Two = new(2, Side.Port);

    [Theory]
    [InlineData(ReportKind.Knock, "First read seat 2 port: nothing was read there since somebody told of it.")]
    [InlineData(ReportKind.CrabEarly, null)]
    public void What_was_knocked_is_read_first(ReportKind kind, string? expected) =>
        Assert.Equal(expected, Wording.English.Next.Told(Check(kind, 3)));

    [Fact]
    public void What_was_read_since_is_not() => Assert.Null(Wording.English.Next.Told(Check(ReportKind.Knock, 5)));

    private static BoatCheck Check(ReportKind kind, int readOn) => BoatRecord
        .ByDate(new("Teal", BoatClass.Parse("2-"), [At(Bow, 3), At(Two, readOn)]), [new(kind, Two, null, new(2026, 5, 4))], [])
        .Check(CheckSettings.Default);

    private static Reading At(GatePlace gate, int day)
    {
        MeasuringSettings settings = MeasuringSettings.Default;
        var lie = new BoatLie(Lie.Upright, new HullLevel.BubbleCentred()) { Date = new(2026, 5, day) };
        return new(ReadItem.Gate, gate, settings.Sweep.Point(Station.Abeam), Angle.FromDegrees(4), lie, settings.GaugeNamed("gauge"));
    }
}
