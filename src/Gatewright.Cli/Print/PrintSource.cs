using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Print;

/// <summary>The shed that is printed: a club in a store, or files of readings read as if a club had recorded them today.</summary>
internal static class PrintSource
{
    private const string FromFiles = "file";

    /// <summary>Opens it, or says all that is wrong.</summary>
    public static async Task<PrintedShed?> OpenAsync(
        PrintRequest request, Terminal terminal, DateTimeOffset now, List<InputProblem> errors, CancellationToken cancellation)
    {
        (Club Club, string Title, Func<string, string> NameOf)? opened = request.Place is { } place
            ? await OfClubAsync(place, errors, cancellation).ConfigureAwait(false)
            : OfFiles(request.Files, terminal, now, errors);
        Standard? standard = opened is { Club: var club } ? StandardOf(request, club, errors) : null;
        if (opened is not { } shed || errors.Count > 0)
        {
            return null;
        }

        ShedVerdicts verdicts = standard is null ? ShedVerdicts.Of(shed.Club) : ShedVerdicts.By(standard, shed.Club);
        IReadOnlyList<BoatStanding> all = await verdicts.AllAsync().ConfigureAwait(false);
        IReadOnlyList<BoatStanding> boats = Chosen(shed.Club, all, request.Boats, errors);
        return errors.Count > 0
            ? null
            : new(
                shed.Club,
                boats,
                new(shed.Title, DateOnly.FromDateTime(now.UtcDateTime), Wording.In(request.Language)) { NameOf = shed.NameOf });
    }

    /// <summary>The standard that was asked for; null for none.</summary>
    private static Standard? StandardOf(PrintRequest request, Club club, List<InputProblem> errors)
    {
        if (request.Standard is not { } name)
        {
            return null;
        }

        (Standard? chosen, IReadOnlyList<InputProblem> wrong, _) = Inputs.StandardChoice.Read(
            name, request.Place is null ? Standard.BuiltIn : [.. StandardsView.Of(club).Values]);
        errors.AddRange(wrong);
        return chosen;
    }

    private static async Task<(Club, string, Func<string, string>)?> OfClubAsync(
        Inputs.StorePlace place, List<InputProblem> errors, CancellationToken cancellation) =>
        await ClubChoice.OpenAsync(place, errors, cancellation).ConfigureAwait(false) is { } club
            ? (club.Club, club.Name ?? club.Id, member => member)
            : null;

    private static (Club, string, Func<string, string>) OfFiles(
        IReadOnlyList<string> files, Terminal terminal, DateTimeOffset now, List<InputProblem> errors)
    {
        using OpenSources sources = OpenSources.Of(files, "gatewright print", terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, CheckSettings.Default.Diagnosing.Measuring);
        errors.AddRange([.. sources.Errors, .. readings.Errors]);
        string title = files.Count == 0 ? "standard input" : string.Join(", ", files.Select(Path.GetFileName));
        Club club = Club.Empty(FromFiles);
        if (errors.Count == 0)
        {
            var stamp = new RecordingStamp(FromFiles, FromFiles, default, now, () => Guid.CreateVersion7(now));
            club = club.With(ReadingsRecording.Entries(readings, club, stamp).Entries.Select(Recorded.Of));
        }

        return (club, title, _ => title);
    }

    /// <summary>The boats of these names, in any case; all of them where none is named. A name of no boat is an error.</summary>
    private static IReadOnlyList<BoatStanding> Chosen(
        Club club, IReadOnlyList<BoatStanding> all, IReadOnlyList<string> names, List<InputProblem> errors)
    {
        var titles = new ThingTitles(club, Things.Boat);
        IReadOnlyList<BoatStanding> boats = [.. all.OrderBy(b => titles[b.View.Key], StringComparer.OrdinalIgnoreCase)];
        foreach (string name in names.Where(name => !boats.Any(boat => IsNamed(boat, name))))
        {
            errors.Add(new("--boat", null, null, name, $"is none of the boats of this shed: {string.Join(", ", boats.Select(b => titles[b.View.Key]))}."));
        }

        return names.Count == 0 ? boats : [.. boats.Where(boat => names.Any(name => IsNamed(boat, name)))];

        bool IsNamed(BoatStanding boat, string name) => titles[boat.View.Key].Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
    }
}
