using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Cards;
using Gatewright.Printing.RigSheets;
using Gatewright.Printing.Sheds;
using Gatewright.Printing.Tests.World;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.RigSheets;

/// <summary>What is read back from a rig sheet is what is on record, and nothing is left out.</summary>
public class RigSheetTests
{
    public static TheoryData<string, string> Boats =>
        [.. from boat in (string[])["Nuthatch", "Hornbeam", "Dipper", "Lapwing", "Backwater", Printed.LongName] from tag in (string[])["en", "de"] select (boat, tag)];

    [Theory]
    [MemberData(nameof(Boats))]
    public void Its_text_is_the_data(string boat, string tag)
    {
        Imprint imprint = ExampleClub.Imprint(Language.Of(tag));
        Wording say = imprint.Say;
        BoatStanding standing = Printed.Full.Boats(boat).Single();
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, [standing], imprint));
        string said = pdf.Said();

        Assert.Contains(boat, said, StringComparison.Ordinal);
        Assert.Contains(standing.View.Class!.Name, said, StringComparison.Ordinal);
        Assert.Contains(say.Names.Verdict(standing.Check!.Verdict.Verdict), said, StringComparison.Ordinal);
        Assert.Contains(say.Levels.HowRead(standing.Check), said, StringComparison.Ordinal);
        Assert.Contains("Kim Heron", said, StringComparison.Ordinal);
        Assert.Contains(say.Standards.Limits(standing.Check.Verdict.Standard), said, StringComparison.Ordinal);
        Assert.Contains(say.Cautions.Precedence, said, StringComparison.Ordinal);
        foreach (GateVerdict gate in standing.Check.Verdict.Gates)
        {
            foreach (Station station in Stations.All)
            {
                StationPitch pitch = gate.At(station);
                string figure = say.Figures.Bare(pitch.Pitch);
                Assert.Contains($"{say.Names.Station(station)} {(pitch.Read ? figure : $"({figure})")}", said, StringComparison.Ordinal);
            }

            if (gate.Verdict != Verdict.Good)
            {
                Assert.Contains(say.Reasons.Why(gate, standing.Check.Verdict.Standard)!, said, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>Good is what was read; a gate that was changed since was not.</summary>
    [Theory]
    [InlineData("en", 4, "to be read again")]
    [InlineData("en", -3, "to be read again")]
    [InlineData("de", -3, "neu zu messen")]
    public void A_gate_that_was_changed_since_it_was_read_leaves_no_good_on_the_sheet(string tag, int port, string word)
    {
        Imprint imprint = ExampleClub.Imprint(Language.Of(tag));
        ExampleClub club = ExampleClub.Empty().With(
            [
                new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "1x" }),
                new BoatLaid("l", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
                .. Stations.All.Select(at => new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Port, port, at)),
                .. Stations.All.Select(at => new ReadingTaken("l", "teal", ReadItem.Gate, 1, Side.Starboard, 4, at)),
                new GateMended("teal", 1, Side.Port),
            ]);
        BoatStanding boat = club.Boats().Single();
        Assert.Equal(Verdict.Good, boat.Check!.Verdict.Verdict);

        foreach (byte[] print in (byte[][])[RigSheetPrint.Of(club.Club, [boat], imprint), PocketCardPrint.Of(club.Club, [boat], imprint), ShedSummaryPrint.Of(club.Club, [boat], imprint)])
        {
            using var paper = new Poppler(print);
            Assert.Contains(word, paper.Said(), StringComparison.Ordinal);
            Assert.DoesNotMatch($@"\b{imprint.Say.Names.Verdict(Verdict.Good)}\b", paper.Said());
            Assert.Equal(port < 0, paper.Said().Contains(imprint.Texts["Shed.AshoreUnsure"], StringComparison.Ordinal) || paper.Said().Contains(imprint.Say.Cautions.ChangedUnread, StringComparison.Ordinal));
        }

        using var shed = new Poppler(ShedSummaryPrint.Of(club.Club, [boat], imprint));
        Assert.Contains($"1 {word}", shed.Said(), StringComparison.Ordinal);
        using var sheet = new Poppler(RigSheetPrint.Of(club.Club, [boat], imprint));
        Assert.Contains(imprint.Say.Boats.ReadAgain(boat.Changed!.Changes.Single()), sheet.Said(), StringComparison.Ordinal);
    }

    /// <summary>The figures stand where their gate is: port left of the keel, starboard right, each in its seat's row from the bow down.</summary>
    [Theory]
    [InlineData("Nuthatch")]
    [InlineData("Hornbeam")]
    public void Figures_stand_beside_their_gate(string boat)
    {
        BoatStanding standing = Printed.Full.Boats(boat).Single();
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, [standing], ExampleClub.Imprint()));
        Page page = pdf.Pages()[0];
        List<Word> catches = [.. page.Words.Where(w => w.Text == "catch" && w.Top < 200).OrderBy(w => w.Top)];
        Assert.Equal(standing.Check!.Verdict.Gates.Count, catches.Count);

        foreach (Side side in (Side[])[Side.Port, Side.Starboard])
        {
            IEnumerable<string> shown = catches.Where(w => w.Left < 105 == (side == Side.Port)).Select(w => Behind(page, w));
            IEnumerable<string> known = standing.Check.Verdict.Gates.Where(g => g.Gate.Side == side)
                .Select(g => g.At(Station.Catch)).Select(p => Wording.OnScreen(Language.English).Figures.Degrees(p.Pitch.Value.Degrees));
            Assert.Equal(known, shown.Select(s => s.TrimStart('(')));
        }
    }

    /// <summary>A boat that is out of limits and may be under a floor is to be treated as stop: its sheet says at which gate.</summary>
    [Fact]
    public void A_floor_in_doubt_is_told_beside_what_weighs_more()
    {
        Imprint imprint = ExampleClub.Imprint();
        List<(BoatStanding Boat, GateVerdict Gate, Reason Floor)> both = [.. from boat in Printed.Full.Boats()
            from gate in boat.Check!.Verdict.Gates
            where gate.Reasons is [{ Kind: not ReasonKind.Floor }, ..]
            let floor = gate.Reasons.FirstOrDefault(r => r.Kind == ReasonKind.Floor)
            where floor is not null
            select (boat, gate, floor)];
        Assert.NotEmpty(both);

        Assert.All(both, b => Assert.Contains(
            new BoatTold(imprint).Reasons(b.Boat.Check!),
            told => told.EndsWith(imprint.Say.Reasons.Of(b.Gate.Gate, b.Floor, b.Boat.Check!.Verdict.Standard), StringComparison.Ordinal)));
    }

    /// <summary>Of the shed's pins some lean aft and some forward, some out and some in: each way has its word, and the figure no sign.</summary>
    [Fact]
    public void A_pin_s_leans_stand_with_the_way_they_go()
    {
        Imprint imprint = ExampleClub.Imprint();
        var told = new BoatTold(imprint);
        int ways = 0;
        foreach (BoatStanding boat in Printed.Full.Boats())
        {
            foreach (Core.Diagnosing.GateDiagnosis gate in boat.Check!.Diagnosis.Gates)
            {
                IReadOnlyList<string> pin = told.Gate(Printed.Full.Club, boat.View, boat.Check, gate.Gate).Pin;
                string aft = pin.Single(line => line.StartsWith("aft ", StringComparison.Ordinal) || line.StartsWith("fore ", StringComparison.Ordinal));
                string outward = pin.Single(line => line.StartsWith("out ", StringComparison.Ordinal) || line.StartsWith("in ", StringComparison.Ordinal));
                ways |= Follows(gate.LeanAft.Value.Degrees, aft, "aft ", "fore ") | (Follows(gate.LeanOut.Value.Degrees, outward, "out ", "in ") << 2);
            }
        }

        Assert.Equal(0b1111, ways);

        static int Follows(double lean, string told, string positive, string negative)
        {
            string figure = Math.Abs(lean).ToString("F1", System.Globalization.CultureInfo.InvariantCulture);
            Assert.StartsWith((lean <= -0.05 ? negative : positive) + figure + " ", told, StringComparison.Ordinal);
            return lean <= -0.05 ? 2 : lean >= 0.05 ? 1 : 0;
        }
    }

    /// <summary>Each seat's figures stand under its number, bow on the left: 84.6 at seat 1 up to 85.3 at seat 8.</summary>
    [Fact]
    public void Measures_stand_under_their_seats_from_the_bow()
    {
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, Printed.Full.Boats(Printed.LongName), ExampleClub.Imprint()));
        List<Word> words = [.. pdf.Pages().SelectMany(p => p.Words)];
        string[] spreads = ["84.6", "84.7", "84.8", "84.9", "85.0", "85.1", "85.2", "85.3"];

        List<Word> row = [.. spreads.Select(s => words.Single(w => w.Text == s))];

        Assert.Equal(row.OrderBy(w => w.Left), row);
        Assert.All(row, w => Assert.Equal(row[0].Top, w.Top, 1.0));
        List<Word> seats = [.. Enumerable.Range(1, 8).Select(n => words.Where(w => w.Text == $"{n}" && w.Bottom <= row[0].Top + 1 && row[0].Top - w.Top < 12).MinBy(w => Math.Abs(Middle(w) - Middle(row[n - 1])))!)];

        // A mark of the verdict may stand before the figure: a seat's column is 12 mm wide.
        Assert.All(seats.Zip(row), pair => Assert.InRange(Middle(pair.Second) - Middle(pair.First), -4.0, 4.0));
        static double Middle(Word word) => (word.Left + word.Right) / 2;
    }

    /// <summary>A name as long as a line may be cut; what the program itself says may not.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Nothing_that_the_program_says_is_cut_off(string tag)
    {
        using var pdf = new Poppler(RigSheetPrint.Of(
            Printed.Full.Club, [.. Printed.Full.Boats().Where(b => b.View.Name != Printed.LongName)], ExampleClub.Imprint(Language.Of(tag))));

        Assert.DoesNotContain("…", pdf.Said(), StringComparison.Ordinal);
    }

    /// <summary>An eight with every reading and every usual measure, and a gate to be seen to: all of it on one page, seat beside seat.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void An_eight_read_and_measured_throughout_has_one_page(string tag)
    {
        ExampleClub club = ExampleClub.Of("boat,class,seat,side,item,at,reading,bow_high,port_low\n" + string.Join('\n', Enumerable.Range(1, 8).SelectMany(Seat)));
        using var pdf = new Poppler(RigSheetPrint.Of(club.Club, club.Boats(), ExampleClub.Imprint(Language.Of(tag))));

        Page page = Assert.Single(pdf.Pages());
        string said = pdf.Said();
        Assert.All((string[])["84.6", "85.3", "114.6", "115.3", "375.1", "375.8"], value => Assert.Contains(value, said.Replace(',', '.'), StringComparison.Ordinal));

        // A gate's three pitches keep clear of those of the next gate on its side.
        List<Word> catches = [.. page.Words.Where(w => w.Text == (tag == "en" ? "catch" : "Auslage") && w.Top < 200 && w.Left > 105).OrderBy(w => w.Top)];
        List<Word> finishes = [.. page.Words.Where(w => w.Text == (tag == "en" ? "finish" : "Endzug") && w.Top < 200 && w.Left > 105).OrderBy(w => w.Top)];
        Assert.Equal(4, catches.Count);
        Assert.All(catches.Skip(1).Zip(finishes), pair => Assert.True(pair.First.Top > pair.Second.Bottom));

        static IEnumerable<string> Seat(int seat)
        {
            string side = seat % 2 == 0 ? "port" : "starboard";
            foreach ((string at, double degrees) in ((string, double)[])[("catch", 4), ("abeam", 4), ("finish", 3.5)])
            {
                yield return FormattableString.Invariant($"Heron,8+,{seat},{side},gate,{at},{degrees - (seat == 5 ? 2.5 : 0)},0.2,0.1");
            }

            foreach ((string item, double centimetres) in ((string, double)[])[("spread", 84.5), ("work-through", 15), ("inboard", 114.5), ("oar-length", 375), ("height", 16.5)])
            {
                yield return FormattableString.Invariant($"Heron,8+,{seat},{(item is "spread" or "work-through" ? "" : side)},{item},,{centimetres + (0.1 * seat):0.0},,");
            }
        }
    }

    /// <summary>German takes more room than English, and a second page for a note at its foot is one too many.</summary>
    [Fact]
    public void A_boat_that_has_one_page_in_English_has_one_in_German()
    {
        foreach (BoatStanding boat in ExampleClub.Shed().Boats())
        {
            int[] pages = [.. Language.All.Select(language =>
            {
                using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, [boat], ExampleClub.Imprint(language)));
                return pdf.Pages().Count;
            })];
            Assert.True(pages[1] <= pages[0], $"{boat.View.Name}: {pages[0]} in English, {pages[1]} in German");
        }
    }

    [Fact]
    public void The_rig_stands_beside_its_targets_with_its_uncertainty()
    {
        BoatStanding quad = Printed.Full.Boats("Nuthatch").Single();
        var rig = BoatRig.Of(Printed.Full.Club, quad.View);
        RigTarget target = rig.View.Targets!.Find(RigMeasure.Span, RigAspect.Value, new(1, null))!;
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, [quad], ExampleClub.Imprint()));
        string said = pdf.Said();

        // Four seats measured 159.5 cm each: see Printed.
        Assert.Contains(FormattableString.Invariant($"Span, cm {target.Value - target.Tolerance}–{target.Value + target.Tolerance} 0.21 159.5 159.5 159.5 159.5"), said, StringComparison.Ordinal);
        Assert.All(
            rig.Verdict!.Figures.SelectMany(f => f.Reasons).Where(r => r.Verdict != Verdict.Good),
            reason => Assert.Contains(Wording.OnScreen(Language.English).Rig.Of(reason), said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("en", "Seat 1 port: 1 port of The blue ones, length 288.5 ± ", "Places given 2026-11-20: Kim Heron.")]
    [InlineData("de", "Platz 1 Backbord: 1 port aus The blue ones, Länge 288,5 ± ", "Plätze zugeteilt 20.11.2026: Kim Heron.")]
    public void Its_oars_stand_on_it_with_their_figures_and_who_put_them_there(string tag, string expected, string placed)
    {
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, Printed.Full.Boats("Nuthatch"), ExampleClub.Imprint(Language.Of(tag))));
        string said = pdf.Said();
        Assert.Contains(expected, said, StringComparison.Ordinal);
        Assert.Contains(placed, said, StringComparison.Ordinal);
    }

    [Fact]
    public void Oars_that_others_put_there_are_told_apart()
    {
        ExampleClub club = Printed.Afresh();
        string quad = club.Key("Nuthatch");
        club.By(
            "ash",
            new ThingSet(Things.Oar, "oar-3", new Dictionary<string, string?> { ["name"] = "2 port", ["boat"] = quad, ["seat"] = "2", ["side"] = "port" }));
        using var pdf = new Poppler(RigSheetPrint.Of(club.Club, club.Boats("Nuthatch"), ExampleClub.Imprint()));
        string said = pdf.Said();

        Assert.Contains("1 port: place given 2026-11-20: Kim Heron.", said, StringComparison.Ordinal);
        Assert.Contains("2 port: place given 2026-11-20: ash.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_held_boat_says_so_with_the_reason_who_and_when_and_what_is_open()
    {
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, Printed.Full.Boats(Printed.LongName), ExampleClub.Imprint()));
        string said = pdf.Said();
        Assert.Contains("Held ashore: not out on the water", said, StringComparison.Ordinal);
        Assert.Contains("to be looked at by the boatbuilder before anybody rows it again (Kim Heron, 2026-11-20)", said, StringComparison.Ordinal);
        Assert.Contains("A knock at seat 3 port: hit the pontoon while landing in the dark (Kim Heron, 2026-11-20)", said, StringComparison.Ordinal);
    }

    /// <summary>A crew's link is no member: on paper nobody's id stands in its place.</summary>
    [Theory]
    [InlineData("en", "(a crew over its link, 2026-11-20)")]
    [InlineData("de", "(eine Mannschaft über ihren Link; 20.11.2026)")]
    public void What_a_crew_told_over_its_link_says_so(string tag, string expected)
    {
        ExampleClub club = ExampleClub.Shed();
        club.On(CrewTold.Device, "l-eight", new Reported(club.Key("Nuthatch"), ReportKind.WashesOut, 2, Side.Port));
        using var pdf = new Poppler(RigSheetPrint.Of(club.Club, club.Boats("Nuthatch"), ExampleClub.Imprint(Language.Of(tag))));
        string said = pdf.Said();

        Assert.Contains(expected, said, StringComparison.Ordinal);
        Assert.DoesNotContain("l-eight", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_may_not_see_names_sees_none()
    {
        using var pdf = new Poppler(RigSheetPrint.Of(Printed.Full.Club, Printed.Full.Boats(Printed.LongName), ExampleClub.Imprint().WithoutNames()));
        Assert.DoesNotContain("Kim", pdf.Said(), StringComparison.Ordinal);
        Assert.Contains("By a member.", pdf.Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_boat_that_nobody_read_has_a_sheet_to_write_on_and_no_verdict()
    {
        ExampleClub club = ExampleClub.Empty().With(
            new Journal.Facts.ThingSet("boat", "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "4-" }),
            new Journal.Facts.ThingSet("boat", "smew", new Dictionary<string, string?> { ["name"] = "Smew" }));
        using var pdf = new Poppler(RigSheetPrint.Of(club.Club, club.Boats(), ExampleClub.Imprint()));
        Assert.Equal(2, pdf.Pages().Count);
        Assert.Contains("Nothing was read since its gates were last changed", pdf.Said(), StringComparison.Ordinal);
        Assert.DoesNotContain("good", pdf.Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_no_boat_it_says_that_there_is_none()
    {
        using var pdf = new Poppler(RigSheetPrint.Of(ExampleClub.Empty().Club, [], ExampleClub.Imprint()));
        Assert.Contains("There is no boat to print.", pdf.Said(), StringComparison.Ordinal);
    }

    /// <summary>The word that follows another on its line.</summary>
    private static string Behind(Page page, Word word) => page.Words
        .Where(w => w.Left > word.Right && Math.Abs(((w.Top + w.Bottom) / 2) - ((word.Top + word.Bottom) / 2)) < 1.5)
        .MinBy(w => w.Left)!.Text;
}
