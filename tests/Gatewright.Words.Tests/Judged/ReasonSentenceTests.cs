using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests.Judged;

public class ReasonSentenceTests
{
    public static TheoryData<ReasonKind, Verdict, bool, string> Every => new()
    {
        {
            ReasonKind.BelowLimit, Verdict.Adjust, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, below the 3° that club allows (chance that it is outside: 96 %)."
        },
        {
            ReasonKind.BelowLimit, Verdict.Unsure, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, below the 3° that club allows (chance that it is outside: 96 %). Too close to tell: read again, or better."
        },
        {
            ReasonKind.AboveLimit, Verdict.Adjust, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, above the 3° that club allows (chance that it is outside: 96 %)."
        },
        {
            ReasonKind.AboveLimit, Verdict.Unsure, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, above the 3° that club allows (chance that it is outside: 96 %). Too close to tell: read again, or better."
        },
        {
            ReasonKind.Floor, Verdict.Stop, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, under the floor of 3° (chance that it is below: 96 %): the blade may dive. Not out on the water until mended and read again."
        },
        {
            ReasonKind.Floor, Verdict.Unsure, true,
            "Seat 3 port reads 2.4° ± 0.3 at the catch, which does not show that it lies above the floor of 3° (chance that it is below: 96 %). Treat as stop until read again."
        },
        {
            ReasonKind.Floor, Verdict.Stop, false,
            "Seat 3 port was not read at the catch and is expected at 2.4° ± 0.3 there, under the floor of 3° (chance that it is below: 96 %): the blade may dive. Not out on the water until mended and read again."
        },
        {
            ReasonKind.Floor, Verdict.Unsure, false,
            "Seat 3 port was not read at the catch and is expected at 2.4° ± 0.3 there, which does not show that it lies above the floor of 3° (chance that it is below: 96 %). Treat as stop until read there."
        },
        {
            ReasonKind.Drop, Verdict.Adjust, true,
            "Seat 3 port loses 2.4° ± 0.3 from catch to finish; club allows 3° (chance that it loses more: 96 %)."
        },
        {
            ReasonKind.Drop, Verdict.Unsure, true,
            "Seat 3 port loses 2.4° ± 0.3 from catch to finish; club allows 3° (chance that it loses more: 96 %). Too close to tell: read again, or better."
        },
        {
            ReasonKind.Repeats, Verdict.Unsure, true,
            "Seat 3 port was read more than once at the catch, and two of the readings are 2.4° ± 0.3 apart: more than the 3.0° by which readings of one gate may differ. Read it again."
        },
        {
            ReasonKind.Changed, Verdict.Unsure, true,
            "Seat 3 port reads 2.4° ± 0.3 higher at the catch than up to 2026-05-04: more than the 3.0° by which readings of one gate may differ, and nothing is on record as done to it. What was read until then no longer counts. Read it again, to be sure."
        },
        {
            ReasonKind.Range, Verdict.Adjust, true,
            "Seat 3 port and seat 6 starboard are 2.4° ± 0.3 apart at the catch; club allows 3° from gate to gate (chance that they are further apart: 96 %)."
        },
        {
            ReasonKind.Range, Verdict.Unsure, true,
            "Seat 3 port and seat 6 starboard are 2.4° ± 0.3 apart at the catch; club allows 3° from gate to gate (chance that they are further apart: 96 %). Too close to tell: read again, or better."
        },
    };

    [Theory]
    [MemberData(nameof(Every))]
    public void Each_reason_has_its_sentence(ReasonKind kind, Verdict verdict, bool read, string sentence) =>
        Assert.Equal(sentence, Sentence(kind, verdict, read));

    public static TheoryData<ReasonKind, Verdict, bool, string> EveryInGerman => new()
    {
        {
            ReasonKind.BelowLimit, Verdict.Adjust, true,
            "Platz 3 Backbord zeigt in der Auslage 2,4° ± 0,3, weniger als die 3°, die „club“ zulässt (Wahrscheinlichkeit, außerhalb zu liegen: 96 %)."
        },
        {
            ReasonKind.AboveLimit, Verdict.Unsure, true,
            "Platz 3 Backbord zeigt in der Auslage 2,4° ± 0,3, mehr als die 3°, die „club“ zulässt (Wahrscheinlichkeit, außerhalb zu liegen: 96 %). Zu knapp für ein Urteil: noch einmal messen, oder genauer."
        },
        {
            ReasonKind.Floor, Verdict.Stop, true,
            "Platz 3 Backbord zeigt in der Auslage 2,4° ± 0,3, unter der Gefahrengrenze von 3° (Wahrscheinlichkeit, darunter zu liegen: 96 %): Das Blatt kann unterschneiden. Nicht aufs Wasser, bis es gerichtet und neu gemessen ist."
        },
        {
            ReasonKind.Floor, Verdict.Unsure, true,
            "Platz 3 Backbord zeigt in der Auslage 2,4° ± 0,3; das weist nicht nach, dass es über der Gefahrengrenze von 3° liegt (Wahrscheinlichkeit, darunter zu liegen: 96 %). Wie gesperrt behandeln, bis es neu gemessen ist."
        },
        {
            ReasonKind.Floor, Verdict.Stop, false,
            "Platz 3 Backbord ist in der Auslage nicht gemessen; zu erwarten sind dort 2,4° ± 0,3, unter der Gefahrengrenze von 3° (Wahrscheinlichkeit, darunter zu liegen: 96 %): Das Blatt kann unterschneiden. Nicht aufs Wasser, bis es gerichtet und neu gemessen ist."
        },
        {
            ReasonKind.Floor, Verdict.Unsure, false,
            "Platz 3 Backbord ist in der Auslage nicht gemessen; zu erwarten sind dort 2,4° ± 0,3, und das weist nicht nach, dass es über der Gefahrengrenze von 3° liegt (Wahrscheinlichkeit, darunter zu liegen: 96 %). Wie gesperrt behandeln, bis es dort gemessen ist."
        },
        {
            ReasonKind.Drop, Verdict.Adjust, true,
            "Platz 3 Backbord verliert von der Auslage zum Endzug 2,4° ± 0,3; „club“ erlaubt 3° (Wahrscheinlichkeit, mehr zu verlieren: 96 %)."
        },
        {
            ReasonKind.Repeats, Verdict.Unsure, true,
            "Platz 3 Backbord ist in der Auslage mehrmals gemessen, und zwei der Messungen liegen 2,4° ± 0,3 auseinander: mehr als die 3,0°, um die sich Messungen einer Dolle unterscheiden dürfen. Noch einmal messen."
        },
        {
            ReasonKind.Changed, Verdict.Unsure, true,
            "Platz 3 Backbord zeigt in der Auslage 2,4° ± 0,3 mehr als bis 04.05.2026: mehr als die 3,0°, um die sich Messungen einer Dolle unterscheiden dürfen, und dass etwas mit ihr geschah, steht nirgends. Was bis dahin gemessen wurde, zählt nicht mehr. Zur Sicherheit noch einmal messen."
        },
        {
            ReasonKind.Range, Verdict.Adjust, true,
            "Platz 3 Backbord und Platz 6 Steuerbord liegen in der Auslage 2,4° ± 0,3 auseinander; „club“ erlaubt von Dolle zu Dolle 3° (Wahrscheinlichkeit, weiter auseinander zu liegen: 96 %)."
        },
    };

    [Theory]
    [MemberData(nameof(EveryInGerman))]
    public void Each_has_one_in_German(ReasonKind kind, Verdict verdict, bool read, string sentence) =>
        Assert.Equal(sentence, Wording.German.Reasons.Of(new GatePlace(3, Side.Port), Reason(kind, verdict, read), Standard.Club));

    /// <summary>Higher of a pin is further to the stern, or away from the hull: the sentences say which, and no sign.</summary>
    [Theory]
    [InlineData(ReadItem.PinAft, 1, "The pin of seat 3 port leans 2.4° ± 0.3 further to the stern than up to 2026-05-04: ", "Der Dollenstift von Platz 3 Backbord ist 2,4° ± 0,3 weiter zum Heck geneigt als bis 04.05.2026: ")]
    [InlineData(ReadItem.PinAft, -1, "The pin of seat 3 port leans 2.4° ± 0.3 further to the bow than", "Der Dollenstift von Platz 3 Backbord ist 2,4° ± 0,3 weiter zum Bug geneigt als")]
    [InlineData(ReadItem.PinOut, 1, "The pin of seat 3 port leans 2.4° ± 0.3 further away from the hull than", "Der Dollenstift von Platz 3 Backbord ist 2,4° ± 0,3 weiter vom Rumpf weg geneigt als")]
    [InlineData(ReadItem.PinOut, -1, "The pin of seat 3 port leans 2.4° ± 0.3 further towards the hull than", "Der Dollenstift von Platz 3 Backbord ist 2,4° ± 0,3 weiter zum Rumpf hin geneigt als")]
    [InlineData(ReadItem.GatePitch, 1, "The face of seat 3 port reads 2.4° ± 0.3 more against its pin than", "Die Anlagefläche von Platz 3 Backbord zeigt gegen ihren Dollenstift 2,4° ± 0,3 mehr als")]
    [InlineData(ReadItem.GatePitch, -1, "The face of seat 3 port reads 2.4° ± 0.3 less against its pin than", "Die Anlagefläche von Platz 3 Backbord zeigt gegen ihren Dollenstift 2,4° ± 0,3 weniger als")]
    public void What_reads_otherwise_is_named_with_the_way_it_went(ReadItem item, int way, string english, string german)
    {
        Reason reason = Reason(ReasonKind.Changed, Verdict.Unsure, read: true);
        reason = reason with { Item = item, Value = way > 0 ? reason.Value : reason.Value with { Value = -reason.Value.Value } };

        Assert.StartsWith(english, Wording.English.Reasons.Of(new GatePlace(3, Side.Port), reason, Standard.Club), StringComparison.Ordinal);
        Assert.StartsWith(german, Wording.German.Reasons.Of(new GatePlace(3, Side.Port), reason, Standard.Club), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_reason_stands_above()
    {
        Assert.Equal(Enum.GetValues<ReasonKind>(), Every.Select(row => row.Data.Item1).Distinct());
        Assert.Equal(Enum.GetValues<ReasonKind>(), EveryInGerman.Select(row => row.Data.Item1).Distinct());
    }

    [Fact]
    public void No_sentence_says_that_anything_is_safe() =>
        Assert.DoesNotContain(Every, row => row.Data.Item4.Contains("safe", StringComparison.OrdinalIgnoreCase));

    [Theory]
    [InlineData(Station.Catch, "at the catch, ")]
    [InlineData(Station.Abeam, "abeam, ")]
    [InlineData(Station.Finish, "at the finish, ")]
    public void It_names_the_station(Station station, string words) =>
        Assert.Contains(words, Sentence(ReasonKind.BelowLimit, Verdict.Adjust, station: station), StringComparison.Ordinal);

    // Never 0 or 100: a probability from a model is no certainty.
    [Theory]
    [InlineData(0, "under 1 %")]
    [InlineData(0.009, "under 1 %")]
    [InlineData(0.01, "1 %")]
    [InlineData(0.5, "50 %")]
    [InlineData(0.99, "99 %")]
    [InlineData(0.991, "over 99 %")]
    [InlineData(1, "over 99 %")]
    public void Chances_are_whole_and_never_certain(double probability, string words) =>
        Assert.Contains(
            $"(chance that it is outside: {words})",
            Sentence(ReasonKind.BelowLimit, Verdict.Adjust, probability: probability),
            StringComparison.Ordinal);

    // One decimal, unless that would put the value on its limit or make the uncertainty nothing.
    [Theory]
    [InlineData(2.4, 0.335, "2.4° ± 0.3")]
    [InlineData(2.949, 0.335, "2.9° ± 0.3")]
    [InlineData(2.96, 0.335, "2.96° ± 0.34")]
    [InlineData(2.996, 0.335, "2.996° ± 0.335")]
    [InlineData(2.9999999999999996, 0.335, "3.0° ± 0.3")]
    [InlineData(2.4, 0.03, "2.40° ± 0.03")]
    [InlineData(2.4, 0, "2.4° ± 0.0")]
    [InlineData(-0.25, 0.335, "-0.3° ± 0.3")]
    public void Numbers_are_as_short_as_they_can_be_without_misleading(double value, double u, string words) =>
        Assert.Contains($"reads {words} at", Sentence(ReasonKind.BelowLimit, Verdict.Adjust, value: value, u: u), StringComparison.Ordinal);

    [Fact]
    public void It_reads_the_same_in_every_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(Every.First().Data.Item4, Sentence(ReasonKind.BelowLimit, Verdict.Adjust));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        Assert.Throws<ArgumentNullException>(() => Wording.English.Reasons.Of(new GatePlace(1, Side.Port), null!, Standard.Club));
        Assert.Throws<ArgumentNullException>(() => Wording.English.Reasons.Of(new GatePlace(1, Side.Port), Reason(ReasonKind.Drop, Verdict.Adjust), null!));
    }

    private static string Sentence(
        ReasonKind kind,
        Verdict verdict,
        bool read = true,
        Station station = Station.Catch,
        double value = 2.4,
        double u = 0.3,
        double probability = 0.96) =>
        Wording.English.Reasons.Of(new GatePlace(3, Side.Port), Reason(kind, verdict, read, station, value, u, probability), Standard.Club);

    private static Reason Reason(
        ReasonKind kind,
        Verdict verdict,
        bool read = true,
        Station station = Station.Catch,
        double value = 2.4,
        double u = 0.3,
        double probability = 0.96) => new(
            verdict,
            kind,
            station,
            Estimate.FromDegrees(value, u),
            Angle.FromDegrees(3),
            probability,
            read,
            kind == ReasonKind.Range ? new GatePlace(6, Side.Starboard) : null) { Before = new(2026, 5, 4) };
}
