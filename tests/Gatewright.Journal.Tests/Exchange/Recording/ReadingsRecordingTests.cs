using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Recording;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Exchange.Recording;

public sealed class ReadingsRecordingTests
{
    /// <summary>After every day that files here have.</summary>
    private static readonly DateTimeOffset Now = new(2026, 12, 1, 9, 0, 0, TimeSpan.Zero);

    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 200)]
    public void A_club_made_of_a_file_has_its_boats_as_the_file_has_them(AShed shed, int seed)
    {
        ReadingsInput file = Told(shed, new Random(seed));
        Club club = Record(Club.Empty(Journals.Club), file);

        Assert.Equal(file.Told.Select(t => t.Boat).Order(), club.Subjects.Where(s => s.Thing == "boat").Select(s => new BoatView(club, s.Key).Name).Order());
        foreach (BoatRecord expected in file.Records)
        {
            BoatRecord actual = Boat(club, expected.Current.Boat).Record(MeasuringSettings.Default)!;
            Assert.Equal(expected.Current.Class, actual.Current.Class);
            Assert.Equal(expected.Current.Readings.Select(Text), actual.Current.Readings.Select(Text));
            Assert.Equal(expected.Old.Select(Text), actual.Old.Select(Text));
            Assert.Equal(expected.Reports.Select(r => r with { Date = null }), actual.Reports.Select(r => r with { Date = null }));
        }
    }

    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 100)]
    public void Recording_a_file_again_adds_nothing(AShed shed, int seed)
    {
        ReadingsInput file = Told(shed, new Random(seed));
        Club club = Record(Club.Empty(Journals.Club), file);
        Assert.Empty(ReadingsRecording.Entries(file, club, Stamp(Now.AddDays(3))).Entries);
    }

    [Property(Arbitrary = [typeof(AnyShed)], MaxTest = 100)]
    public void What_is_recorded_may_enter(AShed shed, int seed)
    {
        RecordedFile recorded = ReadingsRecording.Entries(Told(shed, new Random(seed)), Club.Empty(Journals.Club), Stamp(Now));
        Assert.Equal("", string.Join("; ", recorded.Entries.SelectMany(EntryRules.Problems)));
        Assert.All(recorded.Entries, e => Assert.NotNull(EntryJson.Read(EntryJson.ToLine(e), out _)));
        Assert.Equal(recorded.Entries.Count, recorded.Entries.Select(e => e.Id).Distinct().Count());
        Assert.Equal(recorded.After.Last, recorded.Entries[^1].Time);
    }

    [Fact]
    public void The_example_shed_as_a_club_has_the_verdicts_of_its_page()
    {
        Club club = Record(Club.Empty(Journals.Club), Examples.Read("shed.csv"));
        Dictionary<string, string> expected = Examples.Verdicts();

        Dictionary<string, string> actual = club.Subjects.Where(s => s.Thing == "boat")
            .Select(s => new BoatView(club, s.Key))
            .ToDictionary(b => b.Name, b => b.Record(MeasuringSettings.Default)!.Check(CheckSettings.Default).Verdict.Verdict.Word());

        Assert.Equal(26, actual.Count);
        Assert.Equal(actual.ToDictionary(b => b.Key, b => expected[b.Key]), actual);
    }

    [Fact]
    public void The_example_stores_are_counted_once()
    {
        using FileStream file = File.OpenRead(Path.Combine(Repository.Folder("examples"), "stores.csv"));
        Core.Mending.Stores stores = Journal.Exchange.StoresFiles.StoresCsv.Read("stores.csv", file).Stores;
        RecordedFile recorded = ReadingsRecording.Entries(stores, Club.Empty(Journals.Club), Stamp(Now));
        Club club = Club.Empty(Journals.Club).With(recorded.Entries.Select(Recorded.Of));

        Assert.Equal(stores.Parts.Count, StoresView.Of(club).Count);
        Assert.Equal(3, StoresView.Of(club)[("shim", 0.5m)]);
        Assert.Empty(ReadingsRecording.Entries(stores, club, Stamp(Now)).Entries);
    }

    [Fact]
    public void A_rack_that_was_read_again_serves_each_boat_as_it_was_on_its_day()
    {
        ReadingsInput file = Csv.Read(Csv.RackRows(
            ",,,,level,,,,0.3,-0.1,,2026-04-01,,A2,",
            ",,,,level,,,,0.9,-0.1,,2026-06-01,,A2,",
            ",,,,level,,,,0.1,-0.1,,,,A2,",
            "Teal,1x,1,port,gate,catch,4,inverted,,,,2026-05-04,,A2,",
            "Grebe,1x,1,port,gate,catch,4,inverted,,,,2026-06-04,,A2,",
            "Heron,1x,1,port,gate,catch,4,inverted,,,,2026-03-04,,A2,"));
        Club club = Record(Club.Empty(Journals.Club), file);

        foreach (BoatReadings boat in Csv.Boats(file))
        {
            Assert.Equal(Text(boat.Readings[0]), Text(Assert.Single(Boat(club, boat.Boat).Record(MeasuringSettings.Default)!.Current.Readings)));
        }
    }

    [Fact]
    public void A_boat_the_club_has_is_found_by_its_name_whatever_its_key()
    {
        Club club = Club.Empty(Journals.Club).With(Journals.Entry(1, Journals.Set("b-17", "name", "Grey Heron"), 10));
        club = Record(club, Csv.Read(Csv.Rows("GREY  HERON,1x,1,port,gate,catch,4,,,,,,")));

        Assert.Equal(["b-17"], club.Subjects.Where(s => s.Thing == "boat").Select(s => s.Key));
        Assert.Equal("1x", Boat(club, "GREY HERON").Class?.Name);
    }

    [Fact]
    public void A_reading_that_stands_twice_in_a_file_was_taken_twice()
    {
        Club club = Record(Club.Empty(Journals.Club), Csv.Read(Csv.Rows("Teal,1x,1,port,gate,catch,4,,,,,,", "Teal,1x,1,port,gate,catch,4,,,,,,")));
        Assert.Equal(2, Boat(club, "Teal").Record(MeasuringSettings.Default)!.Current.Readings.Count);
    }

    [Fact]
    public void Notes_come_along_and_a_mending_without_a_day_is_one()
    {
        Club club = Record(Club.Empty(Journals.Club), Csv.Read(Csv.Rows(
            "Teal,1x,1,port,gate,catch,4,,,,,,stiff", "Teal,1x,1,port,mended,,,,,,,,")));
        Assert.Equal(
            ["seat 1 port: mended, the day was not told", "seat 1 port: stiff"],
            Boat(club, "Teal").Records.Select(r => r.Fact).OfType<Journal.Facts.Noted>().Select(n => n.Text));
    }

    /// <summary>A spread belongs to its seat; the side beside it says how that was rigged, against the usual rig here (common practice).</summary>
    [Fact]
    public void The_side_beside_a_sweep_seat_s_spread_is_the_side_it_is_rigged_on()
    {
        Club club = Record(Club.Empty(Journals.Club), Csv.Read(Csv.Rows("Teal,4-,1,port,spread,,84.5,,,,,,", "Teal,4-,2,starboard,spread,,86.5,,,,,,")));
        Assert.Equal(
            [new(1, Side.Port), new(2, Side.Starboard), new(3, Side.Starboard), new(4, Side.Port)],
            BoatGates.Of(club, Boat(club, "Teal")));
    }

    [Fact]
    public void A_file_with_errors_is_not_recorded() => Assert.Throws<ArgumentException>(
        () => ReadingsRecording.Entries(Csv.Read(Csv.Rows("Teal,9x,1,port,gate,catch,4,,,,,,")), Club.Empty(Journals.Club), Stamp(Now)));

    internal static Club Record(Club club, ReadingsInput file) =>
        club.With(ReadingsRecording.Entries(file, club, Stamp(Now)).Entries.Select(Recorded.Of));

    /// <summary>What is left to record of a file in a club.</summary>
    internal static IReadOnlyList<Entry> StillToRecord(ReadingsInput file, Club club) => ReadingsRecording.Entries(file, club, Stamp(Now)).Entries;

    internal static BoatView Boat(Club club, string name) =>
        club.Subjects.Where(s => s.Thing == "boat").Select(s => new BoatView(club, s.Key)).Single(b => b.Name == name);

    private static RecordingStamp Stamp(DateTimeOffset now) => new("m1", "desk", default, now, () => Guid.CreateVersion7(now));

    /// <summary>A shed with knocks, crabs and mendings at its gates, of the days it has and of none.</summary>
    internal static ReadingsInput Told(AShed shed, Random random)
    {
        BoatTold[] told = [.. shed.Boats.Select(boat =>
        {
            Reading Any() => boat.Readings[random.Next(boat.Readings.Count)];
            DateOnly? Day() => random.Next(3) == 0 ? null : new DateOnly(2026, 5, 4).AddDays(random.Next(-1, 2));
            return new BoatTold(
                boat.Boat,
                boat.Class,
                [.. Enumerable.Range(0, random.Next(4)).Select(_ => new Report((ReportKind)random.Next(5), Any().Gate, null, Day()))],
                [.. Enumerable.Range(0, random.Next(3)).Select(_ => new Mended(Any().Gate, Day()))]);
        })];
        return new(shed.Boats, [], [], 0)
        {
            Told = told,
            Records = [.. shed.Boats.Zip(told, (b, t) => BoatRecord.ByDate(b, t.Reports, t.Mendings))],
            Racks = [.. shed.Boats.SelectMany(b => b.Readings).Select(r => (r.Lie.Level as HullLevel.OfRack)?.Rack).OfType<Rack>().Distinct()],
        };
    }

    /// <summary>A reading but for its day, where the file has none; numbers of seventeen digits come back to the sixteenth.</summary>
    private static string Text(Reading r) => FormattableString.Invariant(
        $"{r.Item} {r.Gate} {r.At.Station} {Short(r.At.Angle.Angle)} {Short(r.Value)} {r.Gauge.Name} {r.Lie.Lie} {Text(r.Lie.Level)} {(r.Lie.Date < new DateOnly(2026, 12, 1) ? r.Lie.Date : null)}");

    private static string Text(HullLevel level) => level switch
    {
        HullLevel.Read read => $"read {Text(read.Attitude)}",
        HullLevel.OfRack rack => $"rack {rack.Rack.Name} {rack.Rack.Bedding} {Text(rack.Rack.Attitude)}",
        _ => level.GetType().Name,
    };

    private static string Text(HullAttitude attitude) => $"{Short(attitude.BowHigh.Angle)} {Short(attitude.PortLow.Angle)}";

    private static string Short(Angle angle) => angle.Degrees.ToString("G8", System.Globalization.CultureInfo.InvariantCulture);
}
