using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Clubs.Exporting;

/// <summary>Writes a club as a file, or as tables.</summary>
internal static class ExportRun
{
    private const string So = "Nothing was written.";

    public static async Task<Answer> FileAsync(StorePlace place, string file, bool replace, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        NewFile? whole = NewFile.TryAt(file, replace, errors);
        OpenedClub? club = await ClubChoice.OpenAsync(place, errors, cancellation).ConfigureAwait(false);
        if (club is null || whole is null)
        {
            return new Answer.Refused(errors, 0, So);
        }

        (long entries, long photos) = (0, 0);
        bool isWritten = await whole.TryWriteAsync(
            async to => (entries, photos) = await ClubFile.WriteAsync(club, to, cancellation).ConfigureAwait(false), errors).ConfigureAwait(false);
        return isWritten
            ? new Answer.Done(
                ExitStatus.Good,
                [$"{club.Title} is in {file}: {Counted.Of(entries, "entry", "entries")}, {Counted.Of(photos, "photo")}. Accounts are not in it: those are in a backup."],
                new ExportedDocument(club.Id, club.Name, [file], entries, photos))
            : new Answer.Refused(errors, 0, So);
    }

    public static async Task<Answer> TablesAsync(StorePlace place, string folder, bool replace, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        OpenedClub? club = await ClubChoice.OpenAsync(place, errors, cancellation).ConfigureAwait(false);
        if (club is null || TableFolder.TryWrite(club.Club, folder, replace, errors) is not { } files)
        {
            return new Answer.Refused(errors, 0, So);
        }

        return new Answer.Done(
            ExitStatus.Good,
            [$"{club.Title} is in {folder}: {string.Join(", ", files.Select(Path.GetFileName))}."],
            new ExportedDocument(club.Id, club.Name, files, club.Club.Count, 0));
    }
}
