using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests.HowRead;

/// <summary>How a level was come by, and what that costs.</summary>
public class LevelWordsTests
{
    private static readonly HullLevel[] Levels =
    [
        new HullLevel.Read(HullAttitude.FromDegrees(0.3, -0.2)),
        new HullLevel.BubbleCentred(),
        new HullLevel.OfRack(new("A", HullAttitude.Level, Bedding.Firm)),
        new HullLevel.ByEye(),
    ];

    [Fact]
    public void As_it_was_found()
    {
        Assert.Equal(
            ["level read: 0.3° bow high, 0.2° starboard low", "bubble centred", "on rack A", "levelled by eye"],
            Levels.Select(Wording.English.Levels.Of));
        Assert.Equal(
            ["Lage gemessen: Bug 0,3° hoch, Steuerbord 0,2° tief", "Libelle eingespielt", "auf Lager A", "nach Augenmaß ausgerichtet"],
            Levels.Select(Wording.German.Levels.Of));
        Assert.Equal(
            "level read: 0.3° bow low, 0.2° port low",
            Wording.English.Levels.Of(new HullLevel.Read(HullAttitude.FromDegrees(-0.3, 0.2))));
    }

    [Fact]
    public void Every_way_there_is_has_a_name_and_a_cost()
    {
        Assert.Equal(
            typeof(HullLevel).GetNestedTypes().Where(type => type.IsSubclassOf(typeof(HullLevel))).Select(type => type.Name).Order(),
            Levels.Select(level => level.GetType().Name).Order());
        foreach (Wording say in (Wording[])[Wording.English, Wording.German])
        {
            Assert.Equal(4, Levels.Select(say.Levels.Name).Distinct().Count());
            Assert.Equal(4, Levels.Select(level => say.Levels.Cost(level, MeasuringSettings.Default)).Distinct().Count());
        }
    }

    [Theory]
    [InlineData(true, false, 1, "5.0° entered; 4.6° with the boat's level taken out")]
    [InlineData(false, true, 1, "5.0° entered; 4.6° with the gauge's zero taken out")]
    [InlineData(true, true, 1, "5.0° entered; 4.6° with the boat's level and the gauge's zero taken out")]
    [InlineData(false, false, 2, "5.0° entered; 4.6° as the mean of 2 readings")]
    [InlineData(true, false, 3, "5.0° entered; 4.6° as the mean of 3 readings, with the boat's level taken out")]
    [InlineData(false, false, 1, null)]
    public void A_figure_that_was_not_entered_says_what_became_of_the_one_that_was(bool level, bool zero, int readings, string? said) =>
        Assert.Equal(said, Wording.English.Levels.Entered(5, 4.6, level, zero, readings));

    [Fact]
    public void Of_a_figure_that_shows_as_it_was_entered_nothing_is_said() =>
        Assert.Null(Wording.English.Levels.Entered(5, 5.04, isLevelOut: true, isZeroOut: true, readings: 2));

    /// <remarks>The u of each way as docs/method.md has them; a rack's is that of a reading and of the bed together.</remarks>
    [Theory]
    [InlineData(0, "leaves ± 0.1° each way")]
    [InlineData(1, "leaves ± 0.2° each way")]
    [InlineData(3, "leaves ± 0.7° each way")]
    public void The_cost_is_the_uncertainty_that_is_reckoned_with(int level, string words) =>
        Assert.Contains(words, Wording.English.Levels.Cost(Levels[level], MeasuringSettings.Default), StringComparison.Ordinal);
}
