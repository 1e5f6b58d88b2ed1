using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Oars;

namespace Gatewright.Words.Tests.TheOars;

public class OarWordsTests
{
    [Theory]
    [InlineData(OarItem.Sleeve, 2.5, "Blue 5: its sleeve leans the top of the blade 2.5 ± 0.5° further to the stern than the middle of the set (within 0.5° is good; chance that it is outside: 97 %).")]
    [InlineData(OarItem.Sleeve, -2.5, "Blue 5: its sleeve leans the top of the blade 2.5 ± 0.5° further to the bow than the middle of the set (within 0.5° is good; chance that it is outside: 97 %).")]
    [InlineData(OarItem.Length, -2.5, "Blue 5 is 2.5 ± 0.5 cm shorter than the middle of the set (within 0.5 cm is good; chance that it is outside: 97 %).")]
    [InlineData(OarItem.Inboard, 2.5, "Blue 5: its inboard is 2.5 ± 0.5 cm longer than the middle of the set (within 0.5 cm is good; chance that it is outside: 97 %).")]
    [InlineData(OarItem.Weight, -2.5, "Blue 5 is 2.50 ± 0.50 kg lighter than the middle of the set (within 0.15 kg is good; chance that it is outside: 97 %).")]
    public void How_far_an_oar_is_off_is_said_without_a_sign(OarItem item, double off, string sentence)
    {
        JudgedOar oar = Judged(off, Verdict.Adjust, null);

        Assert.Equal(sentence, Wording.English.Oars.Off(Of(item, SetWorth.Few, oar), oar));
    }

    [Fact]
    public void What_is_too_close_and_what_the_test_marks_is_added()
    {
        JudgedOar close = Judged(0.7, Verdict.Unsure, false);
        JudgedOar marked = Judged(2.5, Verdict.Adjust, true);

        Assert.EndsWith("Too close to tell: read again, or better.", Wording.English.Oars.Off(Of(OarItem.Sleeve, SetWorth.Fair, close), close), StringComparison.Ordinal);
        Assert.EndsWith("The test of outliers marks it.", Wording.English.Oars.Off(Of(OarItem.Sleeve, SetWorth.Fair, marked), marked), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, null, "The two most alike: Blue 1, Blue 2, apart by 0.4 of the tolerance.")]
    [InlineData(2, 5, "The two most alike: Blue 1, Blue 2, apart by 0.4 of the tolerance.")]
    [InlineData(2, 2, "Blue 1 and Blue 2: apart by 0.4 of the tolerance.")]
    [InlineData(3, 3, "All 3: the two that differ most are apart by 0.4 of the tolerance.")]
    [InlineData(3, 5, "The 3 most alike: Blue 1, Blue 2, Blue 3. The two that differ most are apart by 0.4 of the tolerance.")]
    public void Of_all_the_oars_there_are_none_were_chosen(int count, int? pool, string said)
    {
        Oar[] oars = [.. Enumerable.Range(1, count).Select(i => new Oar($"b{i}", $"Blue {i}", null, null, null, null, null, null))];

        Assert.Equal(said, Wording.English.Oars.Matched(new(oars, 0.4), count, pool));
    }

    [Fact]
    public void Of_two_it_is_the_other()
    {
        JudgedOar oar = Judged(2.5, Verdict.Adjust, null);

        Assert.Contains("zum Heck als das andere (bis 0,5° ist gut", Wording.German.Oars.Off(Of(OarItem.Sleeve, SetWorth.Pair, oar), oar), StringComparison.Ordinal);
    }

    [Fact]
    public void A_turn_says_where_to_how_far_and_what_to_mind()
    {
        string turn = Wording.English.Oars.Turn("Blue 5", SleeveTurn.Of(-2.5, 46));

        Assert.StartsWith("To bring Blue 5 in line, turn its sleeve on the shaft: with the sleeve's flat in the gate, the top of the blade has to come 2.5° towards the stern, 1.0 mm round a shaft of 46 mm.", turn, StringComparison.Ordinal);
        Assert.Contains("safety code", turn, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Lie.Upright, OarLaid.HandleOut, "bow")]
    [InlineData(Lie.Upright, OarLaid.Across, "stern")]
    [InlineData(Lie.Inverted, OarLaid.HandleOut, "stern")]
    [InlineData(Lie.Inverted, OarLaid.Across, "bow")]
    public void Which_way_is_plus_is_said_of_each_way_to_lie(Lie lie, OarLaid laid, string end) =>
        Assert.Contains($"nearer the {end}", Wording.English.Oars.Positive(lie, laid), StringComparison.Ordinal);

    private static JudgedOar Judged(double off, Verdict verdict, bool? isOutlier) =>
        new(new("o5", "Blue 5"), new(off, 0.4, []), off, 0.5, verdict, 0.97, isOutlier);

    private static JudgedItem Of(OarItem item, SetWorth worth, JudgedOar oar) => new(item, worth, [oar], 0, 0, OarTolerances.Default[item]);
}
