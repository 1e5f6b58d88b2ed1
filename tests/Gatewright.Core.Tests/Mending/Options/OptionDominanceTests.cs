using FsCheck.Xunit;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;

namespace Gatewright.Core.Tests.Mending.Options;

/// <summary>That no best plan of a shed is lost by it is tested with the plans.</summary>
public class OptionDominanceTests
{
    [Property(MaxTest = 25)]
    public void What_is_left_out_has_something_kept_in_its_place_and_nothing_kept_is_needless(int seed, bool isRace)
    {
        Standard standard = isRace ? Standard.Race : Standard.Club;
        (BoatCheck drawn, GatePlace gate) = Sheds.Drawn(seed);
        BoatCheck check = BoatCheck.Of(drawn.Readings, drawn.Context, drawn.Settings with { Standard = standard });
        var dominance = new OptionDominance(standard);
        IReadOnlyList<GateOption> all = GateOptions.Worthwhile(check, gate, Sheds.Usual);

        IReadOnlyList<GateOption> kept = dominance.Undominated(all);

        Assert.All(all.Except(kept), o => Assert.Contains(kept, k => dominance.MakesNeedless(k, o)));
        Assert.All(kept, o => Assert.DoesNotContain(kept, k => k != o && dominance.MakesNeedless(k, o)));
        Assert.True(kept[0].IsLeft);
    }

    [Fact]
    public void Of_hundreds_of_options_few_are_needed()
    {
        IReadOnlyList<GateOption> all = GateOptions.All(Sheds.Pair(6.5, 6, 6), new(2, Side.Port), Sheds.Usual);
        IReadOnlyList<GateOption> needed = GateOptions.For(Sheds.Pair(6.5, 6, 6), new(2, Side.Port), Sheds.Usual);

        Assert.True(all.Count > 500, $"{all.Count}");
        Assert.InRange(needed.Count, 2, 150);
    }

    [Fact]
    public void A_part_more_is_needed_only_where_it_does_more()
    {
        var dominance = new OptionDominance(Standard.Club);
        IReadOnlyList<GateOption> options = GateOptions.All(Sheds.Pair(6.5, 6, 6), new(2, Side.Port), Sheds.Usual);
        GateOption one = options.With(RemedyKind.PinFootShim, "stern edge", new Part(PartKind.Shim, 2));
        GateOption more = options.With(RemedyKind.PinFootShim, "stern edge", new(PartKind.Shim, 2), new(PartKind.Shim, 2), new(PartKind.Shim, 2));

        // 1.9° less is about right, and 5.7° less far too little.
        Assert.True(dominance.MakesNeedless(one, more));
        Assert.False(dominance.MakesNeedless(more, one));
    }
}
