using Gatewright.Core;
using Gatewright.Core.Mending;
using Gatewright.Core.Mending.Options;
using Gatewright.Words.ToMend;

namespace Gatewright.Words.Tests.ToMend;

/// <summary>What to do, amount by amount and way by way.</summary>
public class WorkWordsTests
{
    private static readonly GatePlace Gate = new(3, Side.Port);

    /// <summary>Each thing that can be done, both ways where it has two, with words that only that one may have in each language.</summary>
    public static TheoryData<Work, string, string> Every => new()
    {
        { new Work.FitInsert(4), "gives 4°. Look", "mit 4° einbauen. Den" },
        { new Work.FitInsert(4, 1.26), "about 1.3° more than", "etwa 1,3° mehr" },
        { new Work.FitInsert(4, -2), "about 2.0° less than", "etwa 2,0° weniger" },
        { Pack(TiltWay.FootToStern, 0.5), "Put a shim of 0.5 mm under the bow edge", "Ein Passblech von 0,5 mm unter die Bugkante" },
        { Pack(TiltWay.FootToBow, 2, 1), "Put shims of 2 + 1 mm under the stern edge", "Passbleche von 2 + 1 mm unter die Heckkante" },
        { Pack(TiltWay.FootOut, 0.5), "2.9° away from the hull (over a base of 60 mm", "2,9° vom Rumpf weg (über eine Grundlänge von 60 mm" },
        { Pack(TiltWay.FootIn, 0.5), "outer edge", "äußere" },
        { Pack(TiltWay.PlateOut, 0.5), "Put a washer of 0.5 mm behind the upper bolt", "Eine Scheibe von 0,5 mm hinter die obere Schraube" },
        { Pack(TiltWay.PlateIn, 2, 1), "Put washers of 2 + 1 mm behind the lower bolt", "Scheiben von 2 + 1 mm" },
        { Pack(TiltWay.FootIn, 0.5) with { LeftDegrees = 2.2 }, " That leaves about 2.2°.", " Damit bleiben etwa 2,2° übrig." },
        { new Work.SetStay(4.5, 1.7, 150), "4.5 mm towards the stern: its top goes 1.7° (with the stay 150 mm", "4,5 mm zum Heck hin" },
        { new Work.SetStay(-4.5, -1.7, 150), "4.5 mm towards the bow: its top goes 1.7°", "4,5 mm zum Bug hin" },
        { new Work.SetStay(4.5, 1.7, 150, true), " never by force.", " nie mit Gewalt." },
        { new Work.StraightenPin(new(8.2, -3.1)), "back by 8.2 mm towards the stern and 3.1 mm towards the hull.", "8,2 mm zum Heck hin und 3,1 mm zum Rumpf hin." },
        { new Work.StraightenPin(new(-8.2, 0)), "back by 8.2 mm towards the bow.", "8,2 mm zum Bug hin." },
        { new Work.FitPin(), "Fit a new pin.", "Einen neuen Dollenstift" },
        { new Work.RefitRigger(new(0, 3.1)), "come back by 3.1 mm away from the hull.", "3,1 mm vom Rumpf weg." },
        { new Work.RefitRigger(new(0, 0)), "come back by less than a gauge shows.", "weniger, als ein Anlagemesser zeigt." },
        { new Work.RepairRigger(), "have it set or replaced", "richten oder ersetzen lassen" },
        { new Work.ExchangeRiggers(Gate, new(4, Side.Starboard)), "seat 3 port and seat 4 starboard", "Platz 3 Backbord und Platz 4 Steuerbord" },
        { new Work.ExchangeRiggers(Gate, null), "seat 3 port stands end for end", "Platz 3 Backbord ist verkehrt herum" },
        { new Work.TurnSleeve(Gate, 2.5, 1, 46), "2.5° towards the bow, 1.0 mm round a shaft of 46 mm", "2,5° zum Bug hin" },
        { new Work.TurnSleeve(Gate, -2.5, 1, 46), "2.5° towards the stern", "2,5° zum Heck hin" },
        { new Work.ReadLevel(), "Read the boat's level", "Die Lage des Bootes" },
        { new Work.ReverseGauge(), "turn the gauge end for end", "umschlagen" },
    };

    [Theory]
    [MemberData(nameof(Every))]
    public void Each_is_told_in_both_languages(Work work, string english, string german)
    {
        Assert.Contains(english, Wording.English.Work.Instruction([work]), StringComparison.Ordinal);
        Assert.Contains(german, Wording.German.Work.Instruction([work]), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_that_can_be_done_stands_above()
    {
        Assert.Equal(
            typeof(Work).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(Work))).Select(type => type.Name).Order(),
            Every.Select(row => row.Data.Item1.GetType().Name).Distinct().Order());
        Assert.Equal(TiltWays.All, Every.Select(row => row.Data.Item1).OfType<Work.Pack>().Select(pack => pack.Way).Distinct().Order());
    }

    [Fact]
    public void No_step_needs_a_sign() => Assert.All(
        Every.Select(row => row.Data.Item1).SelectMany(work => new[] { Wording.English, Wording.German }.Select(say => say.Work.Instruction([work]))),
        instruction => Assert.DoesNotMatch(@"(?i)[-−][0-9]|\b(plus|minus|positive?|negative?)\b", instruction));

    [Fact]
    public void Steps_follow_one_another()
    {
        Work[] steps = [new Work.FitPin(), new Work.FitInsert(4)];

        Assert.Equal(2, Wording.English.Work.Steps(steps).Count);
        Assert.Contains(" Then: Fit an insert", Wording.English.Work.Instruction(steps), StringComparison.Ordinal);
        Assert.Contains(" Danach: Einen Einsatz", Wording.German.Work.Instruction(steps), StringComparison.Ordinal);
        Assert.Empty(Wording.English.Work.Instruction([]));
    }

    [Fact]
    public void Every_caution_stands_once_and_what_is_said_anyway_is_left_out_of_the_rest()
    {
        CautionWords cautions = Wording.English.Cautions;
        Caution[] twice = [Caution.Bolts, Caution.Defer, Caution.Bolts];

        Assert.Equal([cautions.Of(Caution.Bolts), cautions.Of(Caution.Defer)], cautions.Each(twice));
        Assert.Equal(cautions.Of(Caution.Bolts), cautions.Mind(twice));
    }

    [Theory]
    [InlineData("en", "maker", "safety code", "qualified person")]
    [InlineData("de", "hersteller", "Sicherheitsregeln", "ausgebildet")]
    public void Under_everything_it_is_said_whose_word_comes_first(string tag, params string[] whose) => Assert.All(
        whose, words => Assert.Contains(words, Wording.In(Language.Of(tag)).Cautions.Precedence, StringComparison.Ordinal));

    private static Work.Pack Pack(TiltWay way, params double[] sizes) =>
        new(way, new(sizes), 2.86, 60);
}
