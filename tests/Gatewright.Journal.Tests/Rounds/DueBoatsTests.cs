using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class DueBoatsTests
{
    private readonly RoundClubs _clubs = RoundClubs.Of("1x");

    [Fact]
    public void Never_read() => Assert.Equal(DueReason.Never, Reason());

    [Fact]
    public void Good_and_read_of_late_is_not_due_until_it_was_long_ago()
    {
        _clubs.ReadAll(4, RoundClubs.Day);

        Assert.Null(Reason());
        Assert.Null(Reason(DueBoats.LongestDays));
        Assert.Equal(DueReason.LongAgo, Reason(DueBoats.LongestDays + 1));
    }

    [Theory]
    [InlineData(7, DueReason.Adjust)]
    [InlineData(0.5, DueReason.Ashore)]
    [InlineData(5.2, DueReason.Doubt)]
    public void Out_of_limits_or_near_them(double value, DueReason expected)
    {
        _clubs.ReadAll((decimal)value, RoundClubs.Day);
        Assert.Equal(expected, Reason());
    }

    [Fact]
    public void Told_of_since()
    {
        _clubs.ReadAll(4, RoundClubs.Day);
        _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.DownToOneSide, Side: Side.Port, Date: RoundClubs.Day.AddDays(1)));
        Assert.Equal(DueReason.Told, Reason());
    }

    [Fact]
    public void Told_of_before_it_was_read_it_is_not_due_for_that()
    {
        _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.DownToOneSide, Side: Side.Port, Date: RoundClubs.Day.AddDays(-1)));
        _clubs.ReadAll(4, RoundClubs.Day);
        Assert.Null(Reason());
    }

    [Fact]
    public void Told_of_a_gate_that_was_not_read_when_another_was_it_is_due_as_long_as_the_mark_says_so()
    {
        _clubs.ReadAll(4, RoundClubs.Day);
        _clubs.Add(
            new Reported(RoundClubs.Boat, ReportKind.Knock, 1, Side.Port, Date: RoundClubs.Day.AddDays(1)),
            new BoatLaid("next", RoundClubs.Boat, Lie.Upright, LevelBasis.Read, 0, 0, Date: RoundClubs.Day.AddDays(2)),
            new ReadingTaken("next", RoundClubs.Boat, ReadItem.Gate, 1, Side.Starboard, 4, Station.Abeam));
        Assert.NotEmpty(OpenReports.Of(_clubs.View));
        Assert.Equal(DueReason.Told, Reason());
    }

    [Fact]
    public void Told_of_and_read_on_one_day_the_journals_order_decides()
    {
        _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.DownToOneSide, Side: Side.Port, Date: RoundClubs.Day));
        _clubs.ReadAll(4, RoundClubs.Day);
        Assert.Null(Reason());

        _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.DownToOneSide, Side: Side.Port, Date: RoundClubs.Day));
        Assert.Equal(DueReason.Told, Reason());
    }

    [Fact]
    public void Mended_at_every_gate_and_not_read_since()
    {
        _clubs.ReadAll(4, RoundClubs.Day);
        _clubs.Add(_clubs.Gates.Select(g => new GateMended(RoundClubs.Boat, g.Seat, g.Side, RoundClubs.Day.AddDays(1))));
        Assert.Equal(DueReason.Changed, Reason());
    }

    [Theory]
    [InlineData("out-of-use", "yes")]
    [InlineData("class", null)]
    public void What_cannot_or_need_not_be_read_is_never_due(string field, string? value)
    {
        _clubs.Add(new ThingSet(Things.Boat, RoundClubs.Boat, new Dictionary<string, string?> { [field] = value }));
        Assert.Null(Reason());
    }

    private DueReason? Reason(int after = 1)
    {
        BoatRecord? record = _clubs.View.Record(CheckSettings.Default.Diagnosing.Measuring) is { Current.Readings.Count: > 0 } read ? read : null;
        return DueBoats.Reason(new BoatStanding(_clubs.View, record?.Check(CheckSettings.Default)), RoundClubs.Day.AddDays(after));
    }
}
