using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.Gearings;

/// <summary>The seat asked for, or what is wrong.</summary>
/// <param name="Boat">The boat's name; null where figures were given.</param>
/// <param name="Seat">Its rig as it is known; null where something is wrong.</param>
/// <param name="Errors">What is wrong.</param>
/// <param name="Beyond">How many more errors there are.</param>
internal sealed record GearingInput(string? Boat, MeasuredSeat? Seat, IReadOnlyList<InputProblem> Errors, int Beyond)
{
    public static GearingInput Read(GearingRequest request, Terminal terminal)
    {
        var errors = new List<InputProblem>();
        int beyond = 0;
        IReadOnlyList<Known> boats = request.Place is not null ? OfClub(request, errors)
            : request.Files.Count > 0 ? OfFiles(request, terminal, errors, out beyond)
            : Alone(request) is { } alone ? [alone]
            : [];
        if (errors.Count > 0)
        {
            return new(null, null, errors, beyond);
        }

        Known? chosen = request.Boat is { } name
            ? boats.FirstOrDefault(b => b.Name is not null && b.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase))
            : boats.Count == 1 ? boats[0] : null;
        if (chosen is null)
        {
            errors.Add(boats.Count == 0 && request.Boat is null
                ? new("gearing", null, null, null, "expected --class, or --spread or --span with --inboard and --oar-length, or a file with measures of a rig.")
                : new("--boat", null, null, request.Boat, $"say which boat: {string.Join(", ", boats.Select(b => b.Name))}."));
            return new(null, null, errors, 0);
        }

        if (Wrong(request, chosen) is { } wrong)
        {
            return new(null, null, [wrong], 0);
        }

        return new(chosen.Name, SeatOf(request, chosen), [], 0);
    }

    private static InputProblem? Wrong(GearingRequest request, Known boat)
    {
        BoatClass of = boat.Targets.Class;
        if (request.Seat < 1 || request.Seat > of.Seats)
        {
            return new("--seat", null, null, Drawing.Figures.Degrees(request.Seat, 0), $"is no seat of a {of}: expected 1 to {Drawing.Figures.Degrees(of.Seats, 0)}.");
        }

        foreach (RigMeasure measure in request.Given.Keys.Concat(request.Steps.Select(s => s.Measure)))
        {
            if (!measure.IsOf(of.Rowing))
            {
                return new("gearing", null, null, measure.Word(), $"is no measure of a {of}.");
            }
        }

        double inboard = request.Given.GetValueOrDefault(RigMeasure.Inboard, 0);
        return request.Given.TryGetValue(RigMeasure.OarLength, out double length) && length <= inboard
            ? new("--oar-length", null, null, Drawing.Figures.Degrees(length, 1), "must be more than the inboard.")
            : null;
    }

    private static MeasuredSeat SeatOf(GearingRequest request, Known boat)
    {
        IEnumerable<RigReading> kept = boat.Readings.Where(r => !request.Given.ContainsKey(r.Measure));
        IEnumerable<RigReading> given = request.Given.SelectMany(g => Places(g.Key, request.Seat, boat.Targets.Class.Rowing)
            .Select(place => new RigReading(g.Key, place, g.Value)));
        return MeasuredSeat.Of(RigFigures.Of([.. kept, .. given]), boat.Targets, request.Seat);
    }

    private static RigPlace[] Places(RigMeasure measure, int seat, Rowing rowing) => !measure.HasSide()
        ? [new(seat, null)]
        : rowing == Rowing.Scull ? [new(seat, Side.Port), new(seat, Side.Starboard)] : [new(seat, Side.Port)];

    /// <summary>Figures alone: what is missing comes from the class, and without a class nothing but the work-through may be.</summary>
    private static Known? Alone(GearingRequest request)
    {
        bool isScull = request.Given.ContainsKey(RigMeasure.Span);
        bool isWhole = (isScull || request.Given.ContainsKey(RigMeasure.Spread))
            && request.Given.ContainsKey(RigMeasure.Inboard) && request.Given.ContainsKey(RigMeasure.OarLength);
        BoatClass? of = request.Class ?? (isWhole ? BoatClass.Parse(isScull ? "1x" : "2-") : null);
        return of is null ? null : new(null, RigTargets.Starting(of, request.Crew), []);
    }

    private static IReadOnlyList<Known> OfFiles(GearingRequest request, Terminal terminal, List<InputProblem> errors, out int beyond)
    {
        using OpenSources sources = OpenSources.Of(request.Files, "gatewright gearing", terminal);
        ReadingsInput readings = ReadingsCsv.Read(sources.Readable, MeasuringSettings.Default);
        errors.AddRange([.. sources.Errors, .. readings.Errors]);
        beyond = readings.ErrorsBeyond;
        return [.. readings.Measures.Select(b => new Known(b.Boat, RigTargets.Starting(b.Class, request.Crew), b.Readings))];
    }

    private static IReadOnlyList<Known> OfClub(GearingRequest request, List<InputProblem> errors)
    {
        if (ClubChoice.Open(request.Place!, errors) is not { } opened)
        {
            return [];
        }

        Club club = opened.Club;
        var titles = new ThingTitles(club, Things.Boat);
        return [.. BoatView.All(club)
            .Select(b => (Boat: b, View: request.Crew is { } crew ? new RigView(club, b, crew) : new RigView(club, b)))
            .Where(b => b.View.Targets is not null)
            .Select(b => new Known(titles[b.Boat.Key], b.View.Targets!, b.View.Readings))];
    }

    /// <summary>What is known of a boat's rig.</summary>
    private sealed record Known(string? Name, RigTargets Targets, IReadOnlyList<RigReading> Readings);
}
