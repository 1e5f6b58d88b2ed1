using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Oars;

/// <summary>The oars of a set, each against the others.</summary>
public class OarSetJudgeTests
{
    private static readonly Gauge s_gauge = MeasuringSettings.Default.GaugeNamed("club gauge");

    /// <summary>By hand: of 0 0.5 0 0.5 0 0.5 0 3 the last lies 3 above the middle of the others, 0; eight oars' test marks it.</summary>
    [Fact]
    public void One_slipped_sleeve_of_eight_stands_out()
    {
        JudgedItem item = OarSetJudge.Of(Set(0, 0.5, 0, 0.5, 0, 0.5, 0, 3), OarItem.Sleeve);

        Assert.Equal((SetWorth.Fair, 0.25, 3.0), (item.Worth, Math.Round(item.Median, 9), Math.Round(item.Range, 9)));
        Assert.Equal([false, false, false, false, false, false, false, true], item.Oars.Select(o => o.IsOutlier));
        JudgedOar last = item.Oars[7];
        Close.To(3, last.Off, 1e-12);
        Assert.Equal(Verdict.Adjust, last.Verdict);
        Assert.Equal(Verdict.Adjust, item.Verdict);
        Assert.All(item.Oars.SkipLast(1), o => Assert.Equal(Verdict.Good, o.Verdict));

        // The others' median is the fourth of seven, one oar's own error: √2 · √(0.3² + 0.2² + 0.5²/12).
        Close.To(Math.Sqrt(2 * (0.09 + 0.04 + (0.25 / 12))), last.OffU, 1e-12);
    }

    [Theory]
    [InlineData(1, SetWorth.Alone)]
    [InlineData(2, SetWorth.Pair)]
    [InlineData(3, SetWorth.Few)]
    [InlineData(6, SetWorth.Few)]
    [InlineData(7, SetWorth.Fair)]
    [InlineData(14, SetWorth.Fair)]
    [InlineData(15, SetWorth.Full)]
    public void What_a_set_of_a_size_is_worth(int count, SetWorth worth)
    {
        JudgedItem item = OarSetJudge.Of(Set([.. Enumerable.Range(0, count).Select(i => i % 2 * 0.5)]), OarItem.Sleeve);

        Assert.Equal(worth, item.Worth);
        Assert.Equal(worth is SetWorth.Fair or SetWorth.Full, item.Oars.All(o => o.IsOutlier is not null));
        Assert.Equal(worth == SetWorth.Alone, item.Verdict is null);
    }

    /// <summary>Of two nobody can tell which is off: both are as far from the other.</summary>
    [Fact]
    public void Two_are_off_alike()
    {
        JudgedItem item = OarSetJudge.Of(Set(0, 2.5), OarItem.Sleeve);

        Assert.Equal([-2.5, 2.5], item.Oars.Select(o => Math.Round(o.Off, 9)));
        Assert.Equal(item.Oars[0].Verdict, item.Oars[1].Verdict);
    }

    /// <summary>One slipped sleeve of three must not make the two sound ones look off.</summary>
    [Fact]
    public void Of_three_the_one_that_has_slipped_is_told()
    {
        JudgedItem item = OarSetJudge.Of(Set(0, 3.5, 0), OarItem.Sleeve);

        Assert.Equal([0, 3.5, 0], item.Oars.Select(o => o.Off));
        Assert.Equal([Verdict.Good, Verdict.Adjust, Verdict.Good], item.Oars.Select(o => o.Verdict));
    }

    [Property]
    public void A_level_error_common_to_the_session_changes_no_verdict(sbyte[] halves, sbyte rise, bool isInverted, bool isAcross)
    {
        double[] shown = [.. halves.Take(16).Select(h => h / 16.0)];
        (Lie lie, OarLaid laid) = (isInverted ? Lie.Inverted : Lie.Upright, isAcross ? OarLaid.Across : OarLaid.HandleOut);
        HullLevel.Read level = new(HullAttitude.Level);
        HullLevel.Read other = new(HullAttitude.FromDegrees(rise / 60.0, 0));

        JudgedItem one = OarSetJudge.Of(Set(shown, level, lie, laid), OarItem.Sleeve);
        JudgedItem two = OarSetJudge.Of(Set(shown, other, lie, laid), OarItem.Sleeve);

        foreach ((JudgedOar a, JudgedOar b) in one.Oars.Zip(two.Oars))
        {
            // Without roll the level comes off as it is, but for rounding.
            Close.To(a.Off, b.Off, 1e-9);
            Close.To(a.OffU, b.OffU, 1e-12);
            if (Math.Abs(Math.Abs(a.Off) - one.Tolerance) > 1e-6)
            {
                Assert.Equal(a.Verdict, b.Verdict);
            }
        }
    }

    /// <summary>Laid one this way round and one that, the level counts twice instead: it is carried, not forgotten.</summary>
    [Fact]
    public void A_level_met_from_both_sides_does_not_drop_out()
    {
        var session = new GunwaleSession("s", new(Lie.Upright, new HullLevel.ByEye()));
        OarFigure Figure(OarLaid laid) => OarFigures.Default.Sleeve([new(Angle.Zero, session, s_gauge, laid)], "cleaver");
        Oar[] same = [new("a", "A", Sleeve: Figure(OarLaid.HandleOut)), new("b", "B", Sleeve: Figure(OarLaid.HandleOut))];
        Oar[] mixed = [new("a", "A", Sleeve: Figure(OarLaid.HandleOut)), new("b", "B", Sleeve: Figure(OarLaid.Across))];

        double alike = OarSetJudge.Of(same, OarItem.Sleeve).Oars[0].OffU;
        double both = OarSetJudge.Of(mixed, OarItem.Sleeve).Oars[0].OffU;

        // By eye 0.7°: met twice over, 1.4°.
        Close.To(Math.Sqrt((alike * alike) + (1.4 * 1.4)), both, 1e-12);
    }

    [Property]
    public void Turned_as_advised_an_oar_lies_at_the_median(sbyte[] halves, byte which)
    {
        double[] values = [.. halves.Take(12).Select(h => h / 10.0)];
        if (values.Length < 2)
        {
            return;
        }

        int at = which % values.Length;
        JudgedOar oar = OarSetJudge.Of(Set(values), OarItem.Sleeve).Oars[at];
        SleeveTurn turn = SleeveTurn.InLine(oar, RigDimensions.Default);

        // The top of the blade to the bow takes from ε, which leans it to the stern.
        values[at] -= turn.ToBowDegrees;
        JudgedItem after = OarSetJudge.Of(Set(values), OarItem.Sleeve);

        Close.To(0, after.Oars[at].Off, 1e-9);
        Close.To(after.Median, after.Oars[at].Figure.Value, 1e-9);
    }

    /// <summary>π · 46 mm · 3/360, worked apart: 1.2043 mm.</summary>
    [Fact]
    public void The_turn_is_told_round_the_shaft()
    {
        SleeveTurn turn = SleeveTurn.Of(-3, 46);

        Close.To(1.2043, turn.RoundMm, 5e-5);
        Assert.Equal(-3, turn.ToBowDegrees);
    }

    [Fact]
    public void An_oar_that_was_not_read_is_left_out_and_does_not_disturb()
    {
        Oar[] set = [.. Set(0, 0, 1), new("z", "Z")];
        JudgedItem item = OarSetJudge.Of(set, OarItem.Sleeve);

        Assert.Equal(3, item.Oars.Count);
        Assert.Null(item.Find("z"));
        Assert.Null(OarSetJudge.Of(set, OarItem.Weight).Verdict);
    }

    private static Oar[] Set(params double[] sleeves) => Set(sleeves, new HullLevel.ByEye(), Lie.Upright, OarLaid.HandleOut);

    private static Oar[] Set(double[] sleeves, HullLevel level, Lie lie, OarLaid laid)
    {
        var session = new GunwaleSession("s", new(lie, level));
        return [.. sleeves.Select((e, i) => new Oar(
            $"o{i}", $"{i}", Sleeve: OarFigures.Default.Sleeve([new(Angle.FromDegrees(e), session, s_gauge, laid)], "cleaver")))];
    }
}
