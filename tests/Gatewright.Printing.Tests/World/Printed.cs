using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Printing.Cards;
using Gatewright.Printing.JobSheets;
using Gatewright.Printing.Labels;
using Gatewright.Printing.RigSheets;
using Gatewright.Printing.RoundSheets;
using Gatewright.Printing.Sheds;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.World;

/// <summary>Every document of a club.</summary>
internal static class Printed
{
    public const string LongName = "Freiherrliche Gedächtnisrudergemeinschaftsvorsitzende Annegret von und zu Hohenschwanstein-Überlingen";

    public static IReadOnlyList<string> Kinds { get; } = ["sheet", "card", "shed", "job", "round", "labels-boats", "labels-seats", "labels-racks", "labels-oars"];

    /// <summary>The example shed with all that can be said of a boat said of some: holds, reports, jobs, long names, oars, codes.</summary>
    public static ExampleClub Full => Made.Value;

    private static readonly Lazy<ExampleClub> Made = new(Make);

    /// <summary>The same once more, to be changed.</summary>
    public static ExampleClub Afresh() => Make();

    private static ExampleClub Make()
    {
        ExampleClub club = ExampleClub.Shed();
        string eight = club.Boats().First(b => b.View.Class?.Name == "8+").View.Key;
        string quad = club.Key("Nuthatch");
        club.With(
            new ThingSet(Things.Boat, eight, new Dictionary<string, string?> { ["name"] = LongName }),
            new Held(eight, "Crack in the shoulder at seat 5, to be looked at by the boatbuilder before anybody rows it again"),
            new Reported(eight, ReportKind.Knock, 3, Side.Port, "hit the pontoon while landing in the dark"),
            new Reported(eight, ReportKind.WashesOut, 6, Side.Starboard),
            new ThingSet(Things.Boat, quad, new Dictionary<string, string?> { ["code"] = "N-17" }),
            new ThingSet(Things.Oar, "oar-1", new Dictionary<string, string?> { ["name"] = "1 port", ["set"] = "blue", ["boat"] = quad, ["seat"] = "1", ["side"] = "port", ["length"] = "288.5" }),
            new ThingSet(Things.Oar, "oar-2", new Dictionary<string, string?> { ["name"] = "2 starboard", ["set"] = "blue" }),
            new ThingSet(Things.OarSet, "blue", new Dictionary<string, string?> { ["name"] = "The blue ones" }));
        club.With(
            [.. from seat in Enumerable.Range(1, 8)
                from taken in ((string, decimal)[])[("spread", 84.5m + (0.1m * seat)), ("height", 16m + (0.2m * seat))]
                select new MeasureTaken(eight, taken.Item1, seat, taken.Item2, "cm")]);
        club.With(
            [.. from seat in Enumerable.Range(1, 4)
                from fact in (MeasureTaken[])[
                    new(quad, "span", seat, 159.5m, "cm"), new(quad, "height", seat, 17m, "cm", Side.Port),
                    new(quad, "height", seat, 16.2m, "cm", Side.Starboard), new(quad, "inboard", seat, 88.5m, "cm", Side.Port),
                    new(quad, "oar-length", seat, 288.5m, "cm", Side.Port)]
                select fact]);
        Plan(club);
        return club.With(Change(quad));
    }

    public static byte[] Of(string kind, ExampleClub club, Language language)
    {
        Imprint imprint = ExampleClub.Imprint(language);
        IReadOnlyList<BoatStanding> boats = club.Boats();
        return kind switch
        {
            "sheet" => RigSheetPrint.Of(club.Club, boats, imprint),
            "card" => PocketCardPrint.Of(club.Club, boats, imprint),
            "shed" => ShedSummaryPrint.Of(club.Club, boats, imprint),
            "job" => JobSheetPrint.Of(club.Club, [.. Jobs(club).Concat<IWork>(RigChanges.Of(club.Club)).Select(j => (j, boats.FirstOrDefault(b => b.View.Key == j.Boat)))], imprint),
            "round" => RoundSheetPrint.Of(club.Club, boats, Stations.All, imprint),
            "labels-boats" => LabelPrint.Of(Labels(club, LabelKind.Boats, imprint), LabelFormat.Of("70x37")!, 2, imprint),
            "labels-seats" => LabelPrint.Of(Labels(club, LabelKind.Seats, imprint), LabelFormat.Of("63x38")!, 0, imprint),
            "labels-racks" => LabelPrint.Of(Labels(club, LabelKind.Racks, imprint), LabelFormat.Of("99x68")!, 0, imprint),
            _ => LabelPrint.Of(Labels(club, LabelKind.Oars, imprint), LabelFormat.Of("105x74")!, 0, imprint),
        };
    }

    public static IReadOnlyList<Label> Labels(ExampleClub club, LabelKind kind, Imprint imprint, string? address = "https://gates.example") =>
        new ClubLabels(club.Club, imprint, address).Of(kind, club.Boats());

    public static IReadOnlyList<JobView> Jobs(ExampleClub club) => [.. ClubJobs.Of(club.Club).Open];

    /// <summary>A change of the quad's rig, its first step set, its second a part, the rest to be read.</summary>
    public static ChangePlanned Change(string boat) => new(
        "change-1",
        boat,
        "Regatta",
        [
            new("Seat 2: set span from 159.5 cm to 160.5 cm.", 2, [], null, "span", 160.5m, 0.3m, Refits: true),
            new("Seat 3 port: fit the insert of 5 degrees.", 3, [new("insert", 5, 1)], Side.Port, Insert: 5),
        ],
        [new("span", 2, [0], null, 160, 161), new("pitch-catch", 3, [1], Side.Port)]);

    /// <summary>The first job that is offered at each of the worst gates of three boats.</summary>
    private static void Plan(ExampleClub club)
    {
        int job = 0;
        foreach (BoatStanding boat in club.Boats().Where(b => b.Check is { } c && c.Verdict.Gates.Any(g => g.Verdict != Core.Judging.Verdict.Good)).Take(5).ToList())
        {
            GatePlace gate = boat.Check!.Verdict.Gates.MaxBy(g => g.Verdict)!.Gate;
            Core.Mending.Remedy? remedy = JobChoice.Of(boat.Check, gate, Wording.English).Causes.SelectMany(c => c.Remedies).FirstOrDefault();
            if (remedy is not null)
            {
                club.With(JobPlan.Of($"job-{++job}", boat.View.Key, remedy, gate, Wording.English));
            }
        }

        Assert.True(job >= 3, $"{job} jobs");
    }
}
