using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.Rigs;

/// <summary>The rigs asked for, or everything that is wrong.</summary>
/// <param name="Rigs">The rigs.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="Beyond">How many more errors there are.</param>
/// <param name="Warnings">What is odd.</param>
internal sealed record RigInput(
    IReadOnlyList<ShedRig> Rigs, IReadOnlyList<InputProblem> Errors, int Beyond, IReadOnlyList<InputProblem> Warnings)
{
    public static RigInput Read(RigRequest request, Terminal terminal)
    {
        var errors = new List<InputProblem>();
        if (request.Place is { } place)
        {
            OpenedClub? opened = ClubChoice.Open(place, errors);
            IReadOnlyList<ShedRig> ofClub = opened is null ? [] : Named(OfClub(opened.Club, request.Crew), request.Boats, errors);
            return new(ofClub, errors, 0, []);
        }

        using OpenSources sources = OpenSources.Of(request.Files, "gatewright rig", terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, MeasuringSettings.Default);
        errors.AddRange([.. sources.Errors, .. readings.Errors]);
        IReadOnlyList<ShedRig> rigs = errors.Count > 0 ? [] : Named([.. ShedRig.Of(readings, request.Crew)], request.Boats, errors);
        if (errors.Count == 0 && rigs.Count == 0)
        {
            errors.Add(new("readings", null, "item", null, "nothing of a rig was measured: expected rows whose item is one of "
                + $"{string.Join(", ", RigMeasures.All.Select(m => m.Word()))}."));
        }

        return new(rigs, errors, readings.ErrorsBeyond, readings.Warnings);
    }

    /// <summary>The boats of a club that are in use and have a class, by name.</summary>
    public static IReadOnlyList<ShedRig> OfClub(Club club, Crew? crew)
    {
        var titles = new ThingTitles(club, Things.Boat);
        return [.. BoatView.All(club)
            .Where(b => !b.IsOutOfUse)
            .Select(b => ShedRig.Of(titles[b.Key], Judged(club, b, crew)))
            .OfType<ShedRig>()
            .OrderBy(r => r.Boat, StringComparer.OrdinalIgnoreCase)];
    }

    private static BoatRig Judged(Club club, BoatView boat, Crew? crew) => crew is null
        ? BoatRig.Of(club, boat)
        : BoatRig.Of(club, boat, crew.Value);

    private static IReadOnlyList<ShedRig> Named(IReadOnlyList<ShedRig> rigs, IReadOnlyList<string> names, List<InputProblem> errors)
    {
        foreach (string name in names.Where(n => !rigs.Any(r => IsNamed(r, n))))
        {
            errors.Add(new("--boat", null, null, name, $"is none of the boats whose rig is known: {string.Join(", ", rigs.Select(r => r.Boat))}."));
        }

        return names.Count == 0 ? rigs : [.. rigs.Where(r => names.Any(n => IsNamed(r, n)))];
    }

    private static bool IsNamed(ShedRig rig, string name) => rig.Boat.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);
}
