using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Standing;
using Gatewright.Printing;
using Gatewright.Printing.Cards;
using Gatewright.Printing.JobSheets;
using Gatewright.Printing.Labels;
using Gatewright.Printing.RigSheets;
using Gatewright.Printing.RoundSheets;
using Gatewright.Printing.Sheds;
using Gatewright.Server.Boats;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Pdf = Microsoft.AspNetCore.Http.HttpResults.Results<Microsoft.AspNetCore.Http.HttpResults.FileContentHttpResult, Microsoft.AspNetCore.Http.HttpResults.ProblemHttpResult>;

namespace Gatewright.Server.Printing;

/// <summary>Documents to be printed. Whoever may see a boat may have its sheet; what speaks of the whole club is for its members.</summary>
internal static class PrintEndpoints
{
    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapPrint(this RouteGroupBuilder club)
    {
        RouteGroupBuilder print = club.MapGroup("/print");
        print.MapGet("/sheets", SheetsAsync).Needs(ClubRight.SeeBoats).IsPdf().WithSummary("Rig sheets, A4: of one boat by its key, or of all that whoever asks may see. The query's language is en or de.");
        print.MapGet("/cards", CardsAsync).Needs(ClubRight.SeeBoats).IsPdf().WithSummary("Pocket cards, eight an A4 sheet: of one boat, or of all that whoever asks may see.");
        print.MapGet("/shed", ShedAsync).Needs(ClubRight.SeeBoats).IsPdf().WithSummary("The shed rack by rack, of the boats whoever asks may see.");
        print.MapGet("/jobs", JobsAsync).Needs(ClubRight.ReadJournal).IsPdf().WithSummary("Job sheets: of one job or change of the rig by its key, or of all that are open.");
        print.MapGet("/round", RoundAsync).Needs(ClubRight.ReadJournal).IsPdf().WithSummary("A blank round to be filled in: of one boat or all; stations are catch, abeam, finish, or all three.");
        print.MapGet("/labels", LabelsAsync).Needs(ClubRight.ReadJournal).IsPdf().WithSummary("Labels with codes: of boats, seats, racks or oars; the format is width by height in millimetres, such as 70x37.");
    }

    private static RouteHandlerBuilder IsPdf(this RouteHandlerBuilder route) =>
        route.Produces<byte[]>(StatusCodes.Status200OK, "application/pdf").ProducesProblem(StatusCodes.Status503ServiceUnavailable);

    private static Task<Pdf> SheetsAsync(HttpContext context, ShedToPrint shed, PrintRoom room, string? boat = null, string? language = null) =>
        OfBoatsAsync(context, shed, room, boat, language, "rig-sheets", (open, boats, imprint) => RigSheetPrint.Of(open.Club, boats, imprint));

    private static Task<Pdf> CardsAsync(HttpContext context, ShedToPrint shed, PrintRoom room, string? boat = null, string? language = null) =>
        OfBoatsAsync(context, shed, room, boat, language, "cards", (open, boats, imprint) => PocketCardPrint.Of(open.Club, boats, imprint));

    private static Task<Pdf> ShedAsync(HttpContext context, ShedToPrint shed, PrintRoom room, string? language = null) =>
        OfBoatsAsync(context, shed, room, null, language, "shed", (open, boats, imprint) => ShedSummaryPrint.Of(open.Club, boats, imprint));

    private static async Task<Pdf> JobsAsync(HttpContext context, ShedToPrint shed, PrintRoom room, string? job = null, string? language = null)
    {
        OpenClub open = await shed.OpenAsync(context).ConfigureAwait(false);
        var all = ClubJobs.Of(open.Club);
        IReadOnlyList<IWork> jobs = job is null
            ? [.. all.Open, .. RigChanges.Of(open.Club).Where(c => c.IsOpen(MeasuringSettings.Default))]
            : ((IWork?)all.Find(job) ?? RigChanges.Find(open.Club, job)) is { } one ? [one] : [];
        if (job is not null && jobs.Count == 0)
        {
            return Problem.NotFound("job");
        }

        var withBoats = new List<(IWork Job, BoatStanding? Boat)>();
        foreach (IWork work in jobs)
        {
            withBoats.Add((work, await open.Shed.BoatAsync(work.Boat).ConfigureAwait(false)));
        }

        Imprint imprint = await shed.ImprintAsync(context, open, language).ConfigureAwait(false);
        return await room.AnswerAsync(
            context, "jobs", () => JobSheetPrint.Of(open.Club, [.. UrgentJob.InOrder(withBoats.Select(j => new UrgentJob(j.Job, j.Boat))).Select(j => (j.Job, j.Boat))], imprint)).ConfigureAwait(false);
    }

    private static Task<Pdf> RoundAsync(
        HttpContext context, ShedToPrint shed, PrintRoom room, string? boat = null, string? stations = null, string? language = null)
    {
        string[] words = stations?.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [];
        List<Station> chosen = [.. Stations.All.Where(s => words.Length == 0 || words.Contains(s.Word()))];
        return chosen.Count == 0 || words.Any(w => Stations.All.All(s => s.Word() != w))
            ? Task.FromResult<Pdf>(Problem.Fields(new Dictionary<string, string[]> { ["stations"] = ["catch, abeam, finish, with commas between."] }))
            : OfBoatsAsync(context, shed, room, boat, language, "round", (open, boats, imprint) => RoundSheetPrint.Of(open.Club, boats, chosen, imprint));
    }

    private static async Task<Pdf> LabelsAsync(
        HttpContext context, ShedToPrint shed, PrintRoom room, PublicAddress address, string? of = null, string? format = null, string? boat = null, int skip = 0, string? language = null)
    {
        var wrong = new Dictionary<string, string[]>();
        LabelKind? kind = LabelKinds.Of(of ?? LabelKind.Boats.Word());
        LabelFormat? grid = LabelFormat.Of(format ?? LabelFormat.All[0].Name);
        Add(kind is null, "of", $"One of {string.Join(", ", LabelKinds.All.Select(k => k.Word()))}.");
        Add(grid is null, "format", $"One of {string.Join(", ", LabelFormat.All.Select(f => f.Name))}.");
        Add(skip < 0 || skip >= (grid?.Count ?? 1), "skip", $"0 to {(grid?.Count ?? 1) - 1}: labels of the first sheet that are gone.");
        if (wrong.Count > 0)
        {
            return Problem.Fields(wrong);
        }

        (OpenClub open, IReadOnlyList<BoatStanding>? boats) = await shed.BoatsAsync(context, boat).ConfigureAwait(false);
        if (boats is null)
        {
            return Problem.NotFound("boat");
        }

        Imprint imprint = await shed.ImprintAsync(context, open, language).ConfigureAwait(false);
        IReadOnlyList<Label> labels = new ClubLabels(open.Club, imprint, address.Of(context.Request)).Of(kind!.Value, boats);
        if (LabelPrint.Fault(labels, grid!) is { } fault)
        {
            Add(true, "format", Words.Sentence.Capital(fault));
            return Problem.Fields(wrong);
        }

        return await room.AnswerAsync(context, "labels", () => LabelPrint.Of(labels, grid!, skip, imprint)).ConfigureAwait(false);

        void Add(bool isWrong, string field, string takes)
        {
            if (isWrong)
            {
                wrong[field] = [takes];
            }
        }
    }

    private static async Task<Pdf> OfBoatsAsync(
        HttpContext context,
        ShedToPrint shed,
        PrintRoom room,
        string? boat,
        string? language,
        string name,
        Func<OpenClub, IReadOnlyList<BoatStanding>, Imprint, byte[]> print)
    {
        (OpenClub open, IReadOnlyList<BoatStanding>? boats) = await shed.BoatsAsync(context, boat).ConfigureAwait(false);
        if (boats is null)
        {
            return Problem.NotFound("boat");
        }

        Imprint imprint = await shed.ImprintAsync(context, open, language).ConfigureAwait(false);
        return await room.AnswerAsync(context, name, () => print(open, boats, imprint)).ConfigureAwait(false);
    }
}
