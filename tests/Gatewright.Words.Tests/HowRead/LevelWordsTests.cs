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

    /// <remarks>The u of each way as docs/method.md has them; a rack's is that of a reading and of the bed together.</remarks>
    [Theory]
    [InlineData(0, "leaves ± 0.1° each way")]
    [InlineData(1, "leaves ± 0.2° each way")]
    [InlineData(3, "leaves ± 0.7° each way")]
    public void The_cost_is_the_uncertainty_that_is_reckoned_with(int level, string words) =>
        Assert.Contains(words, Wording.English.Levels.Cost(Levels[level], MeasuringSettings.Default), StringComparison.Ordinal);
}
