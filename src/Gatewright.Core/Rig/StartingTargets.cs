namespace Gatewright.Core.Rig;

/// <summary>
/// What boats are set to before a club says otherwise: docs/method-rig.md has the same table with its reasons. Centimetres
/// and degrees.
/// </summary>
/// <remarks>
/// Values of women and men are medians of the rigging survey of the World Championships 2017, those of novices the middle of
/// clubs' guides. The survey has no novices, juniors, coxed fours or coxed pairs, and of light crews the double scull alone:
/// what stands for those is ours, with its reason beside it. Tolerances are ours and wider than the survey's 10th to 90th
/// percentile, since a club's boat serves more than one crew.
/// </remarks>
internal static class StartingTargets
{
    public static RigTarget[] Of(BoatClass boatClass, Crew crew)
    {
        bool isScull = boatClass.Rowing == Rowing.Scull;
        (Row row, RigSource source) = RowOf(boatClass, crew);
        double wider = crew switch { Crew.Novice => 2, Crew.Junior => 1.5, _ => 1 };
        RigMeasure width = isScull ? RigMeasure.Span : RigMeasure.Spread;
        double overlap = isScull ? Overlap.OfScull(2 * row.Inboard, row.Width) : Overlap.OfSweep(row.Inboard, row.Width);
        var targets = new List<RigTarget>
        {
            new(width, RigAspect.Value, row.Width, (isScull ? 2 : 1.5) * wider, source),
            new(RigMeasure.Inboard, RigAspect.Value, row.Inboard, 1.5 * wider, source),
            new(RigMeasure.OarLength, RigAspect.Value, row.Length, 3 * wider, source),
            new(RigMeasure.Overlap, RigAspect.Value, overlap, isScull ? 3 : 2.5, RigSource.Computed),

            // The survey's medians by class lie from 42 to 42.75, its percentiles within 39 and 46.
            new(RigMeasure.StretcherAngle, RigAspect.Value, 42, 4, RigSource.Survey),

            // By class 15 to 19.5: legs differ more than boats do.
            new(RigMeasure.HeelDepth, RigAspect.Value, 17.5, 4, RigSource.Survey),
            new(RigMeasure.WorkThrough, RigAspect.Value, isScull ? 15 : 16, 6, RigSource.Survey),
            new(width, RigAspect.Seats, 0, 1, RigSource.Ours),
            new(RigMeasure.Inboard, RigAspect.Seats, 0, 1, RigSource.Ours),
            new(RigMeasure.OarLength, RigAspect.Seats, 0, 1, RigSource.Ours),

            // In nine of ten crews of the survey within 2.5: people of one crew differ in build.
            new(RigMeasure.Height, RigAspect.Seats, 0, 2.5, RigSource.Survey),
            new(RigMeasure.Overlap, RigAspect.Seats, 0, 2, RigSource.Survey),
        };
        if (isScull)
        {
            targets.Add(new(RigMeasure.Height, RigAspect.Value, row.Starboard, 2.5, source, Side: Side.Starboard));
            targets.Add(new(RigMeasure.Height, RigAspect.Value, row.Port, 2.5, source, Side: Side.Port));

            // The starboard gate is the higher one: in nine of ten of the survey's sculling seats by 0.5 to 2.
            targets.Add(new(RigMeasure.Height, RigAspect.Sides, 1, 1, RigSource.Survey));
            targets.Add(new(RigMeasure.Inboard, RigAspect.Sides, 0, 0.5, RigSource.Ours));
            targets.Add(new(RigMeasure.OarLength, RigAspect.Sides, 0, 0.5, RigSource.Ours));
        }
        else
        {
            targets.Add(new(RigMeasure.Height, RigAspect.Value, row.Port, 2.5, source));
        }

        return [.. targets];
    }

    private static (Row Row, RigSource Source) RowOf(BoatClass boatClass, Crew crew)
    {
        bool isScull = boatClass.Rowing == Rowing.Scull;
        switch (crew)
        {
            case Crew.Novice:
                // One club guide's ranges, their middle: scull span 154 to 162, inboard 83 to 89, length 281 to 293, height 15 to
                // 16; sweep 83 to 89, 112 to 118, 366 to 378, 14 to 18.
                return (isScull ? new(158, 86, 287, 15, 16) : new(86, 115, 372, 16, 16), RigSource.ClubGuides);
            case Crew.Junior:
                // Between novices and women: the hull and its riggers are the same, the oars a little shorter.
                Row women = Survey(boatClass, isWomen: true).Row;
                return (women with { Length = women.Length - 1, Port = women.Port - 0.5, Starboard = women.Starboard - 0.5 }, RigSource.Ours);
            case Crew.Women or Crew.Men:
                return Survey(boatClass, crew == Crew.Women);
            default:
                return Light(boatClass, crew == Crew.LightWomen);
        }
    }

    /// <summary>The survey has light crews in the double alone; what they differ by there is taken for the other classes.</summary>
    private static (Row Row, RigSource Source) Light(BoatClass boatClass, bool isWomen)
    {
        Row own = isWomen ? new(159, 87.65, 286, 15, 16.35) : new(159.5, 88, 288, 16.5, 17.5);
        if (boatClass.Name == "2x")
        {
            return (own, RigSource.Survey);
        }

        Row open = Survey(BoatClass.Parse("2x"), isWomen).Row;
        Row row = Survey(boatClass, isWomen).Row;
        return (row with
        {
            Length = row.Length + own.Length - open.Length,
            Port = row.Port + own.Port - open.Port,
            Starboard = row.Starboard + own.Starboard - open.Starboard,
        }, RigSource.Ours);
    }

    /// <summary>Medians of the survey; of the classes it does not have, those of the nearest that it has.</summary>
    private static (Row Row, RigSource Source) Survey(BoatClass boatClass, bool isWomen) => (boatClass.Name, isWomen) switch
    {
        ("1x", false) => (new(160, 88.5, 288.5, 16.6, 17.85), RigSource.Survey),
        ("1x", true) => (new(160, 88, 286.5, 15.5, 16.5), RigSource.Survey),
        ("2x", false) => (new(159, 88.5, 289, 18.25, 19.5), RigSource.Survey),
        ("2x", true) => (new(159.3, 87.5, 287.5, 15.5, 17), RigSource.Survey),
        ("4x", false) => (new(159, 88, 289.5, 18.5, 19.85), RigSource.Survey),
        ("4x", true) => (new(159, 88, 288, 16, 17), RigSource.Survey),
        ("2-", false) => (new(86, 116, 375.5, 17, 17), RigSource.Survey),
        ("2-", true) => (new(86.4, 116.25, 373, 16.5, 16.5), RigSource.Survey),
        ("4-", false) => (new(85, 115, 376, 18, 18), RigSource.Survey),
        ("4-", true) => (new(85, 115.25, 373, 16.5, 16.5), RigSource.Survey),
        ("8+", false) => (new(83.5, 113.75, 377, 19, 19), RigSource.Survey),
        ("8+", true) => (new(84, 114, 373, 17, 17), RigSource.Survey),

        // A cox makes a boat slower, and what is slower is rigged a little wider.
        ("2+", _) => (Wider(Survey(BoatClass.Parse("2-"), isWomen).Row, 0.5), RigSource.Ours),
        ("4+", _) => (Wider(Survey(BoatClass.Parse("4-"), isWomen).Row, 0.5), RigSource.Ours),

        // A coxed quad is a club's and a school's boat, an eight of scullers more so: as the quad.
        _ => (Survey(BoatClass.Parse("4x"), isWomen).Row, RigSource.Ours),
    };

    private static Row Wider(Row row, double by) => row with { Width = row.Width + by, Inboard = row.Inboard + by };

    /// <summary>One class and crew: span or spread, inboard, oar length, height of the port gate and of the starboard one.</summary>
    private readonly record struct Row(double Width, double Inboard, double Length, double Port, double Starboard);
}
