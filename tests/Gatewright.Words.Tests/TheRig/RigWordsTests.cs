using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Words.TheRig;

namespace Gatewright.Words.Tests.TheRig;

public class RigWordsTests
{
    private static readonly RigTarget Span = new(RigMeasure.Span, RigAspect.Value, 159.3, 2, RigSource.Survey);

    public static TheoryData<RigReason, string> Every => new()
    {
        {
            new(Verdict.Adjust, RigReasonKind.AboveLimit, RigMeasure.Span, new(2, null), new(161.7, 0.206), 161.3, 0.97, Span),
            "Seat 2: span 161.7 ± 0.2 cm, above 161.3 cm (target 159.3 cm, from 157.3 to 161.3; chance that it is outside: 97 %)."
        },
        {
            new(Verdict.Unsure, RigReasonKind.BelowLimit, RigMeasure.Span, new(2, null), new(157.28, 0.206), 157.3, 0.54, Span),
            "Seat 2: span 157.28 ± 0.21 cm, below 157.3 cm (target 159.3 cm, from 157.3 to 161.3; chance that it is outside: 54 %). Too close to tell: read again, or better."
        },
        {
            new(Verdict.Adjust, RigReasonKind.Sides, RigMeasure.Height, new(1, Side.Port), new(-1.3, 0.54), 0, 0.99, new(RigMeasure.Height, RigAspect.Sides, 1, 1, RigSource.Survey), new(1, Side.Starboard)),
            "Seat 1: height, starboard less port, is -1.3 ± 0.5 cm; the target is 1 cm, from 0 to 2 (chance that it is outside: 99 %)."
        },
        {
            new(Verdict.Adjust, RigReasonKind.Seats, RigMeasure.StretcherAngle, new(3, null), new(6.5, 1), 4, 0.99, new(RigMeasure.StretcherAngle, RigAspect.Seats, 0, 4, RigSource.Ours), new(1, null)),
            "Seat 1 and seat 3: stretcher angle differs by 6.5 ± 1.0°; from seat to seat at most 4° is the target (chance that it is more: 99 %)."
        },
        {
            new(Verdict.Unsure, RigReasonKind.Repeats, RigMeasure.Inboard, new(1, Side.Port), new(1.2, 0.14), 0.28, 0.99, null),
            "Seat 1 port: readings of inboard lie 1.2 ± 0.1 cm apart, more than the 0.3 cm by which they may differ. Measure again, or take back the one that no longer holds."
        },
        {
            new(Verdict.Unsure, RigReasonKind.NotTakenSince, RigMeasure.Height, new(1, Side.Port), new(16, 0.36), 16, 0.01, null),
            "Seat 1 port: height set to 16.0 ± 0.4 cm, not measured since. Measure it: a setting proves nothing."
        },
    };

    [Theory]
    [MemberData(nameof(Every))]
    public void Each_kind_of_reason_has_its_sentence(RigReason reason, string sentence) =>
        Assert.Equal(sentence, Wording.English.Rig.Of(reason));

    [Fact]
    public void Every_kind_was_told() =>
        Assert.Equal(Enum.GetValues<RigReasonKind>().Order(), Every.Select(row => row.Data.Item1.Kind).Order());

    [Fact]
    public void A_figure_says_where_it_comes_from()
    {
        var day = new DateOnly(2026, 5, 4);

        Assert.Equal("set on 2026-05-04, not measured since", Wording.English.Rig.FromSetting(day));
        Assert.Equal("from oar 3 of the set Blue, read on 2026-05-04", Wording.English.Rig.FromOar("3", "Blue", day));
        Assert.Equal("von Ruder 3, gemessen am 04.05.2026", Wording.German.Rig.FromOar("3", null, day));
    }

    [Fact]
    public void Lengths_are_told_in_inches_on_request() => Assert.Equal(
        "Seat 2: span 63.66 ± 0.08 in, above 63.5 in (target 62.72 in, from 61.93 to 63.5; chance that it is outside: 97 %).",
        Wording.English.Rig.Of(Every.First().Data.Item1, inInches: true));

    [Fact]
    public void German_has_its_decimal_comma() => Assert.Equal(
        "Platz 2: Dollenabstand 161,7 ± 0,2 cm, über 161,3 cm (Ziel 159,3 cm, von 157,3 bis 161,3; Wahrscheinlichkeit, außerhalb zu liegen: 97 %).",
        Wording.German.Rig.Of(Every.First().Data.Item1));

    [Fact]
    public void In_a_column_that_says_the_unit_a_target_is_its_range() =>
        Assert.Equal("157,3–161,3", Wording.German.Rig.Range(Span));

    [Fact]
    public void A_boat_is_set_to_the_targets_of_a_crew_and_not_to_the_crew()
    {
        Assert.Equal("the targets for women", Wording.English.Rig.TargetsFor(Crew.Women));
        Assert.Equal("die Ziele für Frauen", Wording.German.Rig.TargetsFor(Crew.Women));
    }

    [Fact]
    public void Every_measure_says_how_it_is_taken_and_how_sure_that_is() => Assert.All(RigMeasures.All, measure =>
    {
        Assert.EndsWith(".", Wording.English.Rig.How(measure), StringComparison.Ordinal);
        Assert.Contains("±", Wording.English.Rig.Usual(measure), StringComparison.Ordinal);
        Assert.NotEmpty(Wording.German.Rig.Measure(measure));
    });

    [Theory]
    [InlineData("en", "World Championships 2017, rigging survey; follows from the other targets; tolerance, and targets without a source, by Gatewright's judgement; set by the club for this boat")]
    [InlineData("de", "Weltmeisterschaften 2017, Erhebung der Bootsmaße; folgt aus den anderen Zielen; Spielraum und Ziele ohne Quelle nach Ermessen von Gatewright; vom Verein für dieses Boot gesetzt")]
    public void Where_targets_come_from_says_once_what_is_judgement(string tag, string expected) => Assert.Equal(
        expected,
        Wording.In(Language.Of(tag)).Rig.Sources([RigSource.Ours, RigSource.Boat, RigSource.Survey, RigSource.Computed, RigSource.Survey]));

    [Fact]
    public void A_source_by_itself_says_what_of_it_is_judgement()
    {
        RigWords rig = Wording.English.Rig;
        Assert.Equal("follows from the other targets; tolerance by Gatewright's judgement", rig.Source(RigSource.Computed));
        Assert.Equal("Gatewright's judgement: no source was found", rig.Source(RigSource.Ours));
        Assert.Empty(rig.Sources([]));
    }

    [Fact]
    public void Every_crew_and_source_has_words() =>
        Assert.Equal(12, Crews.All.Select(c => Wording.English.Rig.Crew(c)).Concat(Enum.GetValues<RigSource>().Select(s => Wording.English.Rig.Source(s))).Distinct().Count());
}
