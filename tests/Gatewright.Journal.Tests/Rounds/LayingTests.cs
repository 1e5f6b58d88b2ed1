using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;

namespace Gatewright.Journal.Tests.Rounds;

public sealed class LayingTests
{
    private readonly RoundClubs _clubs = RoundClubs.Of("4-");

    [Fact]
    public void A_boat_nobody_has_laid_lies_upright_by_eye() => Assert.Equal(new(Lie.Upright, LevelBasis.ByEye), Usual);

    [Fact]
    public void On_a_rack_whose_level_was_read_it_lies_inverted_at_that_level()
    {
        Rack(read: true);
        Assert.Equal(new(Lie.Inverted, LevelBasis.Rack, Rack: "A"), Usual);
    }

    [Fact]
    public void On_a_rack_that_nobody_read_there_is_only_the_eye()
    {
        Rack(read: false);
        Assert.Equal(new(Lie.Inverted, LevelBasis.ByEye), Usual);
    }

    [Theory]
    [InlineData(LevelBasis.ByEye, LevelBasis.ByEye)]
    [InlineData(LevelBasis.BubbleCentred, LevelBasis.BubbleCentred)]
    [InlineData(LevelBasis.Read, LevelBasis.Rack)]
    public void As_last_time_but_for_a_level_that_was_read_then(LevelBasis last, LevelBasis expected)
    {
        Rack(read: true);
        _clubs.Add(new BoatLaid("l0", RoundClubs.Boat, Lie.Upright, last, 1, 1));
        Assert.Equal((Lie.Upright, expected, null), (Usual.Lie, Usual.Level, Usual.BowHigh));
    }

    [Fact]
    public void Within_the_round_the_level_that_was_read_stands()
    {
        _clubs.Add(new BoatLaid("l1", RoundClubs.Boat, Lie.Inverted, LevelBasis.Read, 0.4m, -0.2m, Round: RoundClubs.Round));
        Assert.Equal(new(Lie.Inverted, LevelBasis.Read, 0.4m, -0.2m), Usual);
        Assert.True(Usual.Is(_clubs.InRound.Laid!));
    }

    [Theory]
    [InlineData("firm", 0.180278)] // √(0.1² + 0.15²)
    [InlineData("soft", 0.707107)] // √(0.1² + 0.7²)
    public void Each_way_to_know_the_level_has_its_cost(string bed, double ofRack)
    {
        Rack(read: true, bed);
        IReadOnlyList<LevelWay> ways = LevelWays.Of(_clubs.Club, "A", RoundClubs.Day, MeasuringSettings.Default);

        Assert.Equal([LevelBasis.Rack, LevelBasis.Read, LevelBasis.BubbleCentred, LevelBasis.ByEye], ways.Select(w => w.Basis));
        Assert.Equal([ofRack, 0.1, 0.2, 0.7], ways.Select(w => Math.Round(w.U.Degrees, 6)));
    }

    [Fact]
    public void A_rack_that_nobody_read_is_no_way() => Assert.DoesNotContain(
        LevelWays.Of(_clubs.Club, "A", RoundClubs.Day, MeasuringSettings.Default), w => w.Basis == LevelBasis.Rack);

    private Laying Usual => Laying.Usual(_clubs.Club, _clubs.InRound);

    private void Rack(bool read, string bed = "firm")
    {
        _clubs.Add(
            new ThingSet(Things.Boat, RoundClubs.Boat, new Dictionary<string, string?> { ["rack"] = "A" }),
            new ThingSet(Things.Rack, "A", new Dictionary<string, string?> { ["bed"] = bed }));
        if (read)
        {
            _clubs.Add(new RackLevelRead("A", 0.3m, 0.1m));
        }
    }
}
