using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Tests.Rounds;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Views;

/// <summary>A report is open until its gate is mended or read.</summary>
public sealed class OpenReportsTests
{
    private static readonly DateOnly Next = RoundClubs.Day.AddDays(1);
    private readonly RoundClubs _clubs = RoundClubs.Of("1x");

    public OpenReportsTests() => _clubs.ReadAll(4, RoundClubs.Day);

    [Fact]
    public void Where_nothing_was_told_nothing_is_open() => Assert.Empty(OpenReports.Of(_clubs.View));

    [Fact]
    public void What_was_told_after_the_reading_is_open_newest_first()
    {
        Tell(Side.Port, Next);
        Tell(Side.Starboard, Next.AddDays(1));

        Assert.Equal([Next.AddDays(1), Next], OpenReports.Of(_clubs.View).Select(r => r.Day));
    }

    [Fact]
    public void What_was_told_before_the_reading_is_not()
    {
        Tell(Side.Port, RoundClubs.Day.AddDays(-1));

        Assert.Empty(OpenReports.Of(_clubs.View));
    }

    [Fact]
    public void A_mending_closes_it_at_its_gate_alone()
    {
        Tell(Side.Port, Next);
        Tell(Side.Starboard, Next);
        _clubs.Add(new GateMended(RoundClubs.Boat, 1, Side.Port, Next.AddDays(1)));

        Assert.Equal(Side.Starboard, ((Reported)Assert.Single(OpenReports.Of(_clubs.View)).Record.Fact).Side);
    }

    [Fact]
    public void A_reading_closes_it()
    {
        Tell(Side.Port, Next);
        _clubs.ReadAll(4, Next.AddDays(1));

        Assert.Empty(OpenReports.Of(_clubs.View));
    }

    private void Tell(Side side, DateOnly day) => _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.Knock, 1, side, Date: day));
}
