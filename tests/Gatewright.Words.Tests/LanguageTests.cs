using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests;

public class LanguageTests
{
    [Theory]
    [InlineData("de", "de")]
    [InlineData("de-AT", "de")]
    [InlineData("DE-ch", "de")]
    [InlineData("en-GB", "en")]
    [InlineData("fr", "en")]
    [InlineData("den", "en")]
    [InlineData("", "en")]
    [InlineData(null, "en")]
    public void A_browsers_tag_finds_the_language_and_English_stands_in(string? tag, string language) =>
        Assert.Equal(language, Language.Of(tag).Tag);

    [Fact]
    public void Every_language_has_a_wording_of_its_own() =>
        Assert.Equal(Language.All, Language.All.Select(language => Wording.In(language).Language));

    [Theory]
    [InlineData("en", "2026-03-04", "4.0° ± 0.4", "-0.5", "0.25", "71 %")]
    [InlineData("de", "04.03.2026", "4,0° ± 0,4", "-0,5", "0,25", "71 %")]
    public void Numbers_and_days_are_written_as_the_language_does(
        string tag, string day, string loose, string negative, string brief, string percent)
    {
        Wording say = Wording.In(Language.Of(tag));

        Assert.Equal(day, say.Language.Day(new(2026, 3, 4)));
        Assert.Equal(loose, say.Figures.Loose(Estimate.FromDegrees(4, 0.4)));
        Assert.Equal(negative, say.Figures.Degrees(-0.45));
        Assert.Equal(brief, say.Figures.Brief(Angle.FromDegrees(0.25)));
        Assert.Equal(percent, say.Figures.Percent(0.714));
    }

    /// <summary>A screen has the minus that people read, whether the number stands in a figure or in a sentence; terminals and files keep a hyphen.</summary>
    [Theory]
    [InlineData("en", "−0.5", "−3.1 ± 1.2 N", "−1.0 cm")]
    [InlineData("de", "−0,5", "−3,1 ± 1,2 N", "−1,0 cm")]
    public void On_a_screen_a_negative_number_has_a_true_minus(string tag, string negative, string force, string step)
    {
        Wording say = Wording.OnScreen(Language.Of(tag));

        Assert.Equal(negative, say.Figures.Degrees(-0.45));
        Assert.Equal(force, say.Load.Force(new(-3.1, 1.2)));
        Assert.Contains(" " + step, say.Stroke.Step(new(Core.Rig.RigMeasure.Spread, Core.Rig.Length.FromCentimetres(-1))), StringComparison.Ordinal);
        Assert.Equal(Wording.In(Language.Of(tag)).Shed.WhatNow(Core.Judging.Verdict.Stop), say.Shed.WhatNow(Core.Judging.Verdict.Stop));
    }

    [Theory]
    [InlineData("en", "over 99 %", "under 1 %")]
    [InlineData("de", "über 99 %", "unter 1 %")]
    public void No_probability_is_a_certainty(string tag, string most, string least)
    {
        Wording say = Wording.In(Language.Of(tag));

        Assert.Equal(most, say.Figures.Percent(1));
        Assert.Equal(least, say.Figures.Percent(0));
    }

    /// <summary>The other language's culture on the thread, for texts and for numbers: nothing may listen to it.</summary>
    [Theory]
    [InlineData("en-US")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void The_culture_of_the_thread_says_nothing(string culture)
    {
        (CultureInfo numbers, CultureInfo texts) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo(culture);
            Assert.Equal("at 22.5° from abeam", Wording.English.Names.AtPoint(new(OarAngle.FromDegrees(22.5), null)));
            Assert.Equal("bei 22,5° vom Mittelzug aus", Wording.German.Names.AtPoint(new(OarAngle.FromDegrees(22.5), null)));
            Assert.Equal("2026-03-04", Language.English.Day(new(2026, 3, 4)));
            Assert.Equal("04.03.2026", Language.German.Day(new(2026, 3, 4)));
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (numbers, texts);
        }
    }

    [Fact]
    public void A_text_that_is_not_there_is_an_error() =>
        Assert.Throws<System.Resources.MissingManifestResourceException>(() => Language.German.Text("Boat.Sinks"));

    [Theory]
    [InlineData("", "")]
    [InlineData("seat 3 port", "Seat 3 port")]
    [InlineData("übrig", "Übrig")]
    public void Sentences_begin_with_a_capital(string text, string capital) => Assert.Equal(capital, Sentence.Capital(text));
}
