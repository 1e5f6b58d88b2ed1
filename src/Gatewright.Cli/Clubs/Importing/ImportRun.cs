using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Archive;
using Gatewright.Store;
using Gatewright.Store.Opening;

namespace Gatewright.Cli.Clubs.Importing;

/// <summary>Takes a club's file into a store.</summary>
internal static class ImportRun
{
    private const string So = "Nothing was taken.";

    public static async Task<Answer> RunAsync(StorePlace place, string file, bool anyway, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        FileStream? from = InputFile.TryOpen(file, errors);
        if (from is null)
        {
            return new Answer.Refused(errors, 0, So);
        }

        await using (from.ConfigureAwait(false))
        {
            ArchiveReading reading = await ClubArchive.ReadAsync(from, ArchiveLimits.Default, cancellation).ConfigureAwait(false);
            string? club = reading.Head?.Club ?? await FirstClubAsync(reading, anyway, cancellation).ConfigureAwait(false);
            if (club is null || (reading.Problems.Count > 0 && !anyway))
            {
                errors.AddRange(reading.Problems.Select(p => new InputProblem(file, null, null, null, p.ToString())));
                return new Answer.Refused(errors, (int)Math.Min(reading.ProblemsBeyond, int.MaxValue), Remedied(club));
            }

            StoreLocation location = StoreFinder.KeptOrNew(place);
            await StoreOpening.OpenAsync(location, cancellation).ConfigureAwait(false);
            var intake = new Intake(location, club);
            await intake.TakeAsync(reading, cancellation).ConfigureAwait(false);
            return await DoneAsync(intake, reading, location, file, cancellation).ConfigureAwait(false);
        }
    }

    private static string Remedied(string? club) =>
        club is null ? So : $"{So} Export the club again, or take what can be read with --anyway.";

    private static async Task<string?> FirstClubAsync(ArchiveReading reading, bool anyway, CancellationToken cancellation)
    {
        if (anyway)
        {
            await foreach (Journal.Entries.Entry entry in reading.EntriesAsync(evenIfBroken: true, cancellation).ConfigureAwait(false))
            {
                return entry.Club;
            }
        }

        return null;
    }

    private static async Task<Answer> DoneAsync(
        Intake intake, ArchiveReading reading, StoreLocation location, string file, CancellationToken cancellation)
    {
        OpenedClub club = await OpenedClub.OfAsync(location, new(intake.Club, 0, []), cancellation).ConfigureAwait(false);
        List<string> problems = [.. reading.Problems.Select(p => p.ToString()), .. intake.Refusals];
        string entries = intake.NewEntries == 0 ? "no new entry" : Counted.Of(intake.NewEntries, "new entry", "new entries");
        string known = intake.Entries == intake.NewEntries ? string.Empty : $", {intake.Entries - intake.NewEntries} that it had";
        string photos = intake.Photos == 0 ? "no photos" : $"{Counted.Of(intake.NewPhotos, "new photo")} of {intake.Photos}";
        List<string> sentences =
        [
            $"{club.Title}, from {file}: {entries}{known}; {photos}.",
            .. problems.Select(p => $"Not as it should be: {p}"),
        ];
        if (reading.ProblemsBeyond > 0)
        {
            sentences.Add($"And {Counted.Of(reading.ProblemsBeyond, "more problem")}.");
        }

        return new Answer.Done(
            problems.Count == 0 ? ExitStatus.Good : ExitStatus.Attention,
            sentences,
            new ImportedDocument(club.Id, club.Name, file, intake.Entries, intake.NewEntries, intake.Photos, intake.NewPhotos, problems));
    }
}
