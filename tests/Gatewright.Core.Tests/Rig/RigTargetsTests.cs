using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Rig;

public class RigTargetsTests
{
    public static TheoryData<string, Crew> Every =>
        [.. BoatClass.All.SelectMany(c => Crews.All.Select(crew => new TheoryDataRow<string, Crew>(c.Name, crew)))];

    // Évry-Courcouronnes club guide: scull span 154–162, inboard 83–89, cleaver-shaped blades 281–293; sweep 83–89, 112–118, 366–378.
    [Theory]
    [InlineData("1x", RigMeasure.Span, 154, 162)]
    [InlineData("1x", RigMeasure.Inboard, 83, 89)]
    [InlineData("1x", RigMeasure.OarLength, 281, 293)]
    [InlineData("8+", RigMeasure.Spread, 83, 89)]
    [InlineData("8+", RigMeasure.Inboard, 112, 118)]
    [InlineData("8+", RigMeasure.OarLength, 366, 378)]
    public void Novices_start_from_a_club_s_guide(string boatClass, RigMeasure measure, double lowest, double highest)
    {
        RigTarget target = RigTargets.Starting(BoatClass.Parse(boatClass), Crew.Novice).Find(measure, RigAspect.Value, new(1, Side.Port))!;

        Assert.Equal((lowest, highest, RigSource.ClubGuides), (target.Lowest, target.Highest, target.Source));
    }

    // World Championships 2017 survey, medians of the light double sculls.
    [Theory]
    [InlineData(Crew.LightMen, 159.5, 88, 288, 16.5, 17.5)]
    [InlineData(Crew.LightWomen, 159, 87.65, 286, 15, 16.35)]
    public void Light_doubles_start_from_the_survey(Crew crew, double span, double inboard, double length, double port, double starboard)
    {
        RigTargets targets = RigTargets.Starting(BoatClass.Parse("2x"), crew);

        Assert.Equal(
            [span, inboard, length, port, starboard],
            new[]
            {
                (RigMeasure.Span, Side.Port), (RigMeasure.Inboard, Side.Port), (RigMeasure.OarLength, Side.Port),
                (RigMeasure.Height, Side.Port), (RigMeasure.Height, Side.Starboard),
            }.Select(m => targets.Find(m.Item1, RigAspect.Value, new(1, m.Item2))!.Value));
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void Every_class_and_crew_has_targets_that_can_be_meant(string boatClass, Crew crew)
    {
        RigTargets targets = RigTargets.Starting(BoatClass.Parse(boatClass), crew);

        foreach (RigMeasure measure in RigMeasures.All.Where(m => m != RigMeasure.TrackPosition))
        {
            RigTarget? target = targets.Find(measure, RigAspect.Value, new(1, Side.Port));
            Assert.Equal(measure.IsOf(targets.Class.Rowing), target is not null);
            if (target is not null)
            {
                (double least, double most) = measure.Plausible();
                Assert.InRange(target.Lowest, least, most);
                Assert.InRange(target.Highest, least, most);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void Where_nobody_says_who_rows_it_women_and_men_are_both_within(string boatClass, Crew crew)
    {
        RigTargets open = RigTargets.Starting(BoatClass.Parse(boatClass), null);
        if (crew is Crew.Women or Crew.Men)
        {
            Assert.All(RigTargets.Starting(open.Class, crew).All, target =>
            {
                RigTarget wide = open.Find(target.Measure, target.Aspect, new(target.Seat ?? 1, target.Side))!;
                Assert.True(wide.Lowest <= target.Lowest + 1e-9 && wide.Highest >= target.Highest - 1e-9, $"{target}: {wide}");
            });
        }
    }

    [Fact]
    public void The_boat_s_own_stands_before_the_club_s_and_that_before_the_starting_one()
    {
        RigTargets start = RigTargets.Starting(BoatClass.Parse("2x"), Crew.Men);
        RigTargets club = start.With(new(RigMeasure.Height, RigAspect.Value, 17, 1, RigSource.Club));
        RigTargets own = club.With(new(RigMeasure.Height, RigAspect.Value, 18, 1, RigSource.Boat, Seat: 2));

        Assert.Equal(18.25, Height(start, 2).Value);
        Assert.Equal(17, Height(club, 2).Value);
        Assert.Equal((18, 17), (Height(own, 2).Value, Height(own, 1).Value));
    }

    private static RigTarget Height(RigTargets targets, int seat) =>
        targets.Find(RigMeasure.Height, RigAspect.Value, new(seat, Side.Port))!;
}
