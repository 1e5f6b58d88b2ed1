using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;

namespace Gatewright.Journal.Tests.Jobs;

/// <summary>What a job takes from the shelf, counted.</summary>
public sealed class JobPartTests
{
    private const string Washer = "washer";

    [Fact]
    public void Parts_that_are_there_are_taken_and_put_back()
    {
        Telling club = Shelf(3);
        club.Tell(Plan("j1", 2));
        JobPart part = Assert.Single(Parts(club, "j1"));
        Assert.Equal((3, 2, 0, false), (part.OnShelf, part.StillNeeded, part.ShortBy, part.IsContested));

        Guid taken = club.Tell(part.Take("j1")!);
        part = Assert.Single(Parts(club, "j1"));
        Assert.Equal((1, 0, 2), (part.OnShelf, part.StillNeeded, part.Count));
        Assert.Null(part.Take("j1"));
        Assert.Equal([taken], part.Taken.Select(r => r.Entry.Id));

        club.Tell([.. part.Taken.Select(r => new Retracted(r.Entry.Id))]);
        part = Assert.Single(Parts(club, "j1"));
        Assert.Equal((3, 2), (part.OnShelf, part.StillNeeded));
    }

    [Fact]
    public void A_shelf_with_too_few_is_short_by_what_is_missing_and_nothing_is_taken_from_it()
    {
        Telling club = Shelf(1);
        club.Tell(Plan("j1", 3));

        JobPart part = Assert.Single(Parts(club, "j1"));

        Assert.Equal((1, 2), (part.OnShelf, part.ShortBy));
        Assert.Null(part.Take("j1"));
    }

    [Fact]
    public void A_shelf_below_nothing_counts_as_bare()
    {
        Telling club = Shelf(0);
        club.Tell(new StockChanged(Washer, 1, -2), Plan("j1", 1));

        Assert.Equal((0, 1), (Assert.Single(Parts(club, "j1")).OnShelf, Assert.Single(Parts(club, "j1")).ShortBy));
    }

    [Fact]
    public void What_other_open_jobs_still_wait_for_is_promised()
    {
        Telling club = Shelf(4);
        club.Tell(Plan("j1", 2), Plan("j2", 2), Plan("j3", 1), new JobDropped("j3"), Plan("j4", 1));
        Assert.Equal((3, true), (Assert.Single(Parts(club, "j1")).Promised, Assert.Single(Parts(club, "j1")).IsContested));

        // What the others have taken is gone from the shelf and no longer promised.
        club.Tell(Assert.Single(Parts(club, "j2")).Take("j2")!, new JobDone("j4"));

        JobPart part = Assert.Single(Parts(club, "j1"));
        Assert.Equal((0, false, 2, 0), (part.Promised, part.IsContested, part.OnShelf, part.ShortBy));
    }

    [Fact]
    public void Parts_are_seen_against_the_shelf_before_anything_is_planned()
    {
        Telling club = Shelf(2);
        club.Tell(Plan("j1", 1));

        JobPart part = Assert.Single(JobPart.Of(club.Club, [new(Washer, 1, 2)]));

        Assert.Equal((2, 1, true), (part.OnShelf, part.Promised, part.IsContested));
        Assert.Equal(new Part(PartKind.Washer, 1), part.Part);
    }

    [Fact]
    public void Another_size_is_another_part()
    {
        Telling club = Shelf(5);
        club.Tell(new JobPlanned("j1", "teal", Cause.PinOut, "plate-washer", [], [new(Washer, 2, 1)], [], 1, Side.Port));

        Assert.Equal(1, Assert.Single(Parts(club, "j1")).ShortBy);
    }

    private static Telling Shelf(int washers)
    {
        var club = new Telling();
        club.Tell(new StockCounted(Washer, 1, washers));
        return club;
    }

    private static JobPlanned Plan(string job, int washers) =>
        new(job, "teal", Cause.PinOut, "plate-washer", ["Put a washer behind the bolt."], [new(Washer, 1, washers)], [], 1, Side.Port);

    private static IReadOnlyList<JobPart> Parts(Telling club, string job) => JobPart.Of(club.Club, ClubJobs.Of(club.Club).Find(job)!);
}
