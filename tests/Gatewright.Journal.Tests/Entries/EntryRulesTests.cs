using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Tests.Facts;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Entries;

public sealed class EntryRulesTests
{
    private static readonly string Long = new('x', 201);

    public static TheoryData<string, string, string> Refused => new()
    {
        { "set", """{"thing":"boat","key":"heron/2","fields":{"class":"9+","rack":" ","out-of-use":"perhaps"}}""", "\"key\" is 'heron/2': give the boat's key without a slash; \"fields.class\" is '9+': give one of 1x 2x 2- 2+ 4x 4x+ 4- 4+ 8+ 8x+; \"fields.rack\" is '': give a key of 1 to 200 visible characters, without a space at either end; \"fields.out-of-use\" is 'perhaps': give yes or no" },
        { "set", """{"thing":"gate","key":"heron/9/port","fields":{"insert":"4,5"}}""", "\"key\" is 'heron/9/port': give the boat's key, the seat's number and port or starboard, with slashes between; \"fields.insert\" is '4,5': give a number with a decimal point" },
        { "set", """{"thing":"gauge","key":"g1","fields":{"resolution":"99999999999999999999"}}""", "\"fields.resolution\" is '99999999999999999999': give a number from -1000000 to 1000000" },
        { "retract", """{"entry":"01900000-0000-7000-8000-000000000001"}""", "\"entry\" is '01900000-0000-7000-8000-000000000001': an entry cannot retract itself; name an earlier one" },
        { "boat-laid", """{"lying":"l\u0001","boat":"heron","lie":"inverted","level":"rack","bowHigh":31,"date":"0001-01-01"}""", "\"lying\" is 'l ': give a key of 1 to 200 visible characters, without a space at either end; \"bowHigh\" is '31': give a number from -30 to 30; \"date\" is '0001-01-01': give a day from 1900 to 2199; \"rack\" is missing: name the rack whose level is meant" },
        { "boat-laid", """{"lying":"l1","boat":"heron","lie":"inverted","level":"read"}""", "\"bowHigh\" is missing: give the level that was read" },
        { "reading", """{"lying":"l1","boat":"heron","item":"gate","seat":9,"side":"port","value":90.5,"station":"catch","angle":-91}""", "\"seat\" is '9': give a number from 1 to 8; \"value\" is '90.5': give a number from -30 to 30; \"angle\" is '-91': give a number from -90 to 90; \"angle\" is '-91': give a station or an angle, not both" },
        { "reading", """{"lying":"l1","boat":"heron","item":"pin-aft","seat":0,"side":"port","value":46,"station":"catch"}""", "\"seat\" is '0': give a number from 1 to 8; \"value\" is '46': give a number from -45 to 45; \"station\" is 'catch': only a gate's face is read at a station or an angle; leave it out" },
        { "reading-kept", """{"boat":" ","reading":"01900000-0000-7000-8000-000000000001"}""", "\"boat\" is '': give a key of 1 to 200 visible characters, without a space at either end" },
        { "report", """{"boat":"heron","kind":"knock","seat":3}""", "\"side\" is missing: give seat and side together, or neither" },
        { "report", """{"boat":"heron","kind":"down-to-one-side","seat":3}""", "\"side\" is missing: give the side the boat sits down to; \"seat\" is '3': the boat sits down as a whole; leave the seat out" },
        { "hold", $$"""{"boat":"{{Long}}","reason":"a\u0007b"}""", "\"boat\" is 'xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…': give a key of 1 to 200 visible characters, without a space at either end; \"reason\" is 'a b': leave out the characters that cannot be seen" },
        { "hold", """{"boat":"heron","reason":"a knock","reasons":{" ":"a\u0007b"}}""", "\"reasons\" is '': give a key of 1 to 200 visible characters, without a space at either end; \"reasons\" is 'a b': leave out the characters that cannot be seen" },
        { "job-planned", """{"job":"j1","boat":"heron","cause":"pin-out","remedy":"x","steps":[null],"parts":[{"part":"nail","size":2,"count":0}],"expected":[]}""", "\"steps\" is missing: leave empty items out; \"parts.part\" is 'nail': give one of insert, shim, washer or pin; \"parts.count\" is '0': give a number from 1 to 100000" },
        { "job-planned", """{"job":"j1","boat":"heron","cause":"wrong-seat","remedy":"x","steps":[],"parts":[],"expected":[],"seat":3,"side":"port","otherSeat":9}""", "\"otherSeat\" is '9': give a number from 1 to 8; \"otherSide\" is missing: give otherSeat and otherSide together, or neither" },
        { "job-planned", """{"job":"j1","boat":"heron","cause":"wrong-seat","remedy":"x","steps":[],"parts":[],"expected":[],"seat":3,"side":"port","otherSeat":3,"otherSide":"port"}""", "\"otherSeat\" is '3': give seat and side of one gate, and here of another" },
        { "step-done", """{"job":"j1","step":-1}""", "\"step\" is '-1': give a number from 0 to 299" },
        { "job-done", """{"job":"j1","also":["pin-aft"]}""", "\"also\" is 'pin-aft': give what was found first as \"found\", and what else each once" },
        { "job-done", """{"job":"j1","found":"pin-aft","also":["gate-pitch","pin-aft"]}""", "\"also\" is 'gate-pitch, pin-aft': give what was found first as \"found\", and what else each once" },
        { "stock-counted", """{"part":"shim","size":0,"count":-1}""", "\"size\" is '0': give a number from 0.01 to 20; \"count\" is '-1': give a number from 0 to 100000" },
        { "photo", """{"thing":"boat","key":"heron","sha256":"00","bytes":0,"mediaType":"text/html"}""", "\"bytes\" is '0': give a number from 1 to 20971520; \"sha256\" is '00': give the picture's SHA-256 as 64 digits from 0 to 9 and a to f; \"mediaType\" is 'text/html': give one of image/jpeg, image/png, image/webp" },
        { "measure", """{"boat":"heron","measure":"spread","seat":3,"value":860,"unit":"cm"}""", "\"value\" is '860': no spread is that: give 65 to 105 cm" },
        { "measure", """{"boat":"heron","measure":"spread","seat":3,"value":86,"unit":"in"}""", "\"value\" is '86': no spread is that: give 25.6 to 41.3 in" },
        { "measure", """{"boat":"heron","measure":"height","seat":9,"value":17,"unit":"deg","date":"1066-10-14"}""", "\"seat\" is '9': give a number from 1 to 8; \"date\" is '1066-10-14': give a day from 1900 to 2199; \"side\" is missing: give port or starboard: a boat has height on each side of a seat, or on the one that is rowed; \"unit\" is 'deg': give cm, mm or in" },
        { "measure", """{"boat":"heron","measure":"reach","seat":3,"value":86,"unit":"cm"}""", "\"measure\" is 'reach': give one of spread, span, height, inboard, oar-length, overlap, stretcher-angle, heel-depth, work-through, track-position" },
        { "set", """{"thing":"target","key":"boat/heron/reach","fields":{}}""", "\"key\" is 'boat/heron/reach': give boat/KEY/MEASURE or crew/CLASS/CREW/MEASURE, a crew or any; then, where it is meant, /sides or /seats, /SEAT, /port or /starboard" },
        { "set", """{"thing":"target","key":"crew/8+/women/spread","fields":{"value":"8.4","tolerance":"-1","unit":"cm"}}""", "\"fields.value\" is '8.4': no spread is that (crew/8+/women/spread): give 65 to 105 cm; \"fields.tolerance\" is '-1': give how far off the value is still good, 0 or more" },
        { "set", """{"thing":"target","key":"boat/heron/oar-length/3/port","fields":{"value":"110","tolerance":"1","unit":"cm"}}""", "\"fields.value\" is '110': no oar-length is that (boat/heron/oar-length/3/port): give 200 to 420 cm" },
        { "set", """{"thing":"target","key":"boat/heron/inboard","fields":{"value":"115"}}""", "\"fields.unit\" is missing: give the unit of the value (boat/heron/inboard), cm, mm or in" },
        { "set", """{"thing":"target","key":"boat/heron/inboard","fields":{"unit":"in"}}""", "\"fields.value\" is missing: give the value that is in in (boat/heron/inboard)" },
        { "set", """{"thing":"target","key":"boat/heron/height/seats","fields":{"value":"2"}}""", "\"fields.value\" is '2': give 0: the range across the boat is limited by its tolerance alone" },
        { "set", """{"thing":"boat","key":"heron","fields":{"crew":"Women"}}""", "\"fields.crew\" is 'Women': give novice, junior, women, men, light-women or light-men" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void Everything_wrong_with_a_body_is_said_at_once(string kind, string body, string problems) =>
        Assert.Equal(problems, Told(kind, 1, body));

    /// <summary>All that a kind's own page of examples has, but the photo, whose hash there is not one.</summary>
    [Fact]
    public void What_the_program_writes_may_enter() => Assert.All(
        FactKindsTests.Written.Where(row => row.Data.Item1 is not ("photo" or "retract")),
        row => Assert.Equal("", Told(row.Data.Item1, row.Data.Item2, row.Data.Item3)));

    [Fact]
    public void What_a_newer_program_writes_may_enter()
    {
        Assert.Equal("", Told("tide-table", 1, """{"seat":99}"""));
        Assert.Equal("", Told("reading", 2, """{"seat":99}"""));
    }

    [Fact]
    public void A_body_stands_on_one_line() =>
        Assert.Equal("\"body\" is 'several lines': write it on one line, since a journal has an entry a line", Told("tide-table", 1, "{\n}"));

    [Theory]
    [InlineData(2_000, 0)]
    [InlineData(2_001, 1)]
    public void A_note_has_its_longest(int length, int problems) =>
        Assert.Equal(problems, EntryRules.Problems(Entry("note", 1, $$"""{"thing":"boat","key":"heron","text":"{{new string('x', length)}}"}""")).Count);

    [Theory]
    [InlineData(30, "")]
    [InlineData(-30, "")]
    [InlineData(30.1, "\"value\" is '30.1': give a number from -30 to 30")]
    public void A_reading_has_its_range(double value, string problems) => Assert.Equal(
        problems,
        Told("reading", 1, FormattableString.Invariant($$"""{"lying":"l1","boat":"heron","item":"gate","seat":8,"side":"port","value":{{value}}}""")));

    [Fact]
    public void A_list_has_its_longest()
    {
        string steps = string.Join(',', Enumerable.Repeat("\"do\"", 101));
        Assert.Equal(
            "\"steps\" is '101 items': give at most 100",
            Told("job-planned", 1, $$"""{"job":"j1","boat":"heron","cause":"pin-out","remedy":"x","steps":[{{steps}}],"parts":[],"expected":[]}"""));
    }

    /// <summary>A kind without rules would let everything in: each must refuse a key of 201 characters.</summary>
    [Fact]
    public void Every_kind_with_a_key_has_rules() => Assert.All(
        FactKindsTests.Written.Where(row => row.Data.Item1 is not ("retract" or "stock-counted")),
        row => Assert.NotEqual("", Told(row.Data.Item1, row.Data.Item2, Longer(row.Data.Item3))));

    /// <summary>Every key that stands in the examples, made too long.</summary>
    private static string Longer(string body) => new[] { "heron", "r1", "l1", "g1", "j1", "o1", "\"a\"" }
        .Aggregate(body, (text, key) => text.Replace($"\"{key.Trim('"')}\"", $"\"{Long}\"", StringComparison.Ordinal));

    private static string Told(string kind, int version, string body) => string.Join("; ", EntryRules.Problems(Entry(kind, version, body)));

    private static Entry Entry(string kind, int version, string body) => new()
    {
        Id = Journals.Id(1),
        Club = Journals.Club,
        Member = "m1",
        Device = "phone",
        Time = default,
        Kind = kind,
        Version = version,
        Body = Encoding.UTF8.GetBytes(body),
    };
}
