using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.OarsFiles;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;

namespace Gatewright.Cli.Oars;

/// <summary>The oars asked for, or everything that is wrong.</summary>
/// <param name="Club">The club, or what a file makes of one.</param>
/// <param name="View">Its oars.</param>
/// <param name="Sets">The sets asked for.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="Beyond">How many more errors there are.</param>
/// <param name="Warnings">What is odd.</param>
internal sealed record OarsSource(
    Club Club,
    OarsView View,
    IReadOnlyList<OarSetView> Sets,
    IReadOnlyList<InputProblem> Errors,
    int Beyond,
    IReadOnlyList<InputProblem> Warnings)
{
    private const string Nobody = "file";

    public static OarsSource Read(OarsRequest request, Terminal terminal)
    {
        var errors = new List<InputProblem>();
        var warnings = new List<InputProblem>();
        int beyond = 0;
        Club club = request.Place is { } place
            ? ClubChoice.Open(place, errors)?.Club ?? Club.Empty(Nobody)
            : OfFiles(request.Files, terminal, errors, warnings, ref beyond);
        if (errors.Count > 0)
        {
            club = Club.Empty(Nobody);
        }

        var view = new OarsView(club);
        IReadOnlyList<OarSetView> sets = errors.Count > 0 ? [] : Named(view.Sets, request.Sets, errors);
        return new(club, view, sets, errors, beyond, warnings);
    }

    /// <summary>Files given together are one club's.</summary>
    private static Club OfFiles(
        IReadOnlyList<string> files, Terminal terminal, List<InputProblem> errors, List<InputProblem> warnings, ref int beyond)
    {
        using OpenSources sources = OpenSources.Of(files, "gatewright oars", terminal);
        errors.AddRange(sources.Errors);
        Club club = Club.Empty(Nobody);
        DateTimeOffset now = DateTimeOffset.UtcNow;
        foreach (ReadingsSource source in sources.Readable)
        {
            OarsInput input = OarsCsv.Read(source.Name, source.Content);
            errors.AddRange(input.Errors);
            warnings.AddRange(input.Warnings);
            beyond += input.ErrorsBeyond;
            if (input.Errors.Count == 0)
            {
                var stamp = new RecordingStamp(Nobody, Nobody, default, now, () => Guid.CreateVersion7(now));
                club = club.With(OarsRecording.Entries(input, club, stamp).Entries.Select(Recorded.Of));
            }
        }

        return club;
    }

    private static IReadOnlyList<OarSetView> Named(IReadOnlyList<OarSetView> sets, IReadOnlyList<string> names, List<InputProblem> errors)
    {
        foreach (string name in names.Where(n => !sets.Any(s => IsNamed(s, n))))
        {
            errors.Add(new("--set", null, null, name, $"is none of the sets: {string.Join(", ", sets.Select(s => s.Title))}."));
        }

        return names.Count == 0 ? sets : [.. sets.Where(s => names.Any(n => IsNamed(s, n)))];
    }

    private static bool IsNamed(OarSetView set, string name) => set.Title.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
}
