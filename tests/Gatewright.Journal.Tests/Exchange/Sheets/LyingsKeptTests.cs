using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Sheets;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Exchange.Recording;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Exchange.Sheets;

/// <summary>Which readings share a level, and which do not since the boat was moved between them, outlasts the table and its being recorded elsewhere.</summary>
public sealed class LyingsKeptTests
{
    private const string Boat = "heron";
    private static readonly long Begin = new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds();

    [Property(MaxTest = 200)]
    public Property Each_laying_that_readings_refer_to_stays_itself() => Prop.ForAll(Journal.ToArbitrary(), entries =>
    {
        Club club = Club.Empty(Journals.Club).With(entries);
        BoatRecord expected = Record(club);
        if (expected.Current.Readings.Count == 0)
        {
            return;
        }

        string table = Written(club);
        ReadingsInput read = Csv.Read(table);
        AssertSame(expected, Assert.Single(read.Records));

        Club recorded = ReadingsRecordingTests.Record(Club.Empty(Journals.Club), read);
        AssertSame(expected, Record(recorded));
        Assert.Equal(table, Written(recorded));
        Assert.Empty(ReadingsRecordingTests.StillToRecord(Csv.Read(Written(recorded)), recorded));
    });

    /// <summary>In whatever order the rows stand: what stands last may have been read before the move.</summary>
    [Fact]
    public void A_lying_before_the_move_is_no_other_where_its_rows_come_later()
    {
        const string header = "lying,boat,class,seat,side,at,reading";
        Club club = ReadingsRecordingTests.Record(Club.Empty(Journals.Club), Csv.Read(Csv.Lines(header, "2,Heron,2-,1,starboard,catch,4.5", ",Heron,2-,2,port,catch,4.5")));

        IReadOnlyList<Reading> readings = Record(club).Current.Readings;
        Assert.NotEqual(readings[0].Lie, readings[1].Lie);
        Assert.Equal(readings[0].Lie with { Moved = null }, readings[1].Lie with { Moved = null });
    }

    /// <summary>A table in which nothing is to be told apart is one as it ever was.</summary>
    [Fact]
    public void A_boat_that_lies_otherwise_after_a_move_needs_no_mark() => Assert.DoesNotContain(
        "lying",
        Written(Club.Empty(Journals.Club).With([
            Journals.Entry(1, Journals.Set(Boat, "class", "2-"), Begin),
            Journals.Entry(2, new BoatLaid("a", Boat, Lie.Upright, LevelBasis.ByEye), Begin + 1),
            Journals.Entry(3, Reading("a", 1, 4), Begin + 2),
            Journals.Entry(4, new BoatLaid("b", Boat, Lie.Inverted, LevelBasis.ByEye, Moved: true), Begin + 3),
            Journals.Entry(5, Reading("b", 2, 4), Begin + 4)])),
        StringComparison.Ordinal);

    private static void AssertSame(BoatRecord expected, BoatRecord actual)
    {
        Assert.Equal(AnyShed.AsRead(expected.Current.Readings), AnyShed.AsRead(actual.Current.Readings));
        Assert.Equal(Told(expected), Told(actual));
    }

    private static IEnumerable<string> Told(BoatRecord record)
    {
        BoatVerdict verdict = record.Check(CheckSettings.Default).Verdict;
        return verdict.Gates.SelectMany(g => g.Reasons.Select(r => $"{g.Gate} {r}").Concat(g.Pitches.Select(p => $"{g.Gate} {p}")));
    }

    private static BoatRecord Record(Club club) => BoatView.All(club).Single().Record(MeasuringSettings.Default)!;

    private static string Written(Club club)
    {
        using var text = new StringWriter();
        ClubCsv.Tables.Single(t => t.File == "readings.csv").Write(club, text);
        return text.ToString();
    }

    private static ReadingTaken Reading(string lying, int seat, decimal value) =>
        new(lying, Boat, ReadItem.Gate, seat, seat == 1 ? Side.Starboard : Side.Port, value, Station.Catch);

    /// <summary>A morning's readings by two who lay the boat alike and otherwise, move it, and put right what they said; some of it on another day.</summary>
    private static Gen<Recorded[]> Journal { get; } =
        from entries in Gen.CollectToArray(Enumerable.Range(2, 14), One)
        select (Recorded[])[Journals.Entry(1, Journals.Set(Boat, "class", "2-"), Begin), .. entries];

    private static Gen<Recorded> One(int number) =>
        from lying in Gen.Elements("a", "b", "c", "d")
        from seat in Gen.Choose(1, 2)
        from value in Gen.Choose(0, 12)
        from lie in Gen.Frequency((3, Gen.Constant(Lie.Upright)), (1, Gen.Constant(Lie.Inverted)))
        from level in Gen.Elements(LevelBasis.ByEye, LevelBasis.ByEye, LevelBasis.BubbleCentred)
        from moved in Gen.Elements<bool?>(null, true)
        from day in Gen.Elements<DateOnly?>(null, null, new(2026, 4, 1))
        from fact in Gen.Frequency(
            (1, Gen.Constant<Fact>(new BoatLaid(lying, Boat, lie, level, Date: day, Moved: moved))),
            (1, Gen.Constant<Fact>(Reading(lying, seat, value / 2m))))
        select Journals.Entry(number, fact, Begin + number);
}
