using System.Text;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Tests.Replay;

namespace Gatewright.Journal.Tests.Facts;

/// <summary>Every kind of entry as it is written, to the byte: what was once written is read for ever.</summary>
public sealed class FactKindsTests
{
    public static TheoryData<string, int, string> Written => new()
    {
        { "set", 1, """{"thing":"boat","key":"heron","fields":{"name":"Heron","rack":null}}""" },
        { "retract", 1, """{"entry":"01900000-0000-7000-8000-000000000001","reason":"a slip"}""" },
        { "round-started", 1, """{"round":"r1","standard":"club"}""" },
        { "round-ended", 1, """{"round":"r1"}""" },
        { "boat-laid", 1, """{"lying":"l1","boat":"heron","lie":"inverted","level":"read","bowHigh":0.3,"portLow":-0.2}""" },
        { "boat-laid", 1, """{"lying":"l2","boat":"heron","lie":"upright","level":"by-eye","round":"r1","moved":true}""" },
        { "reading", 1, """{"lying":"l1","boat":"heron","item":"gate","seat":3,"side":"port","value":4.5,"station":"catch","gauge":"g1"}""" },
{ "boat-laid", 1, """{"lying":"l1","boat":"heron","lie":"upright","level":"by-eye","date":"2026-10-10"}""" },
        { "rack-level", 1, """{"rack":"a","bowHigh":0.1,"portLow":0.0,"date":"2026-10-10"}""" },
        { "report", 1, """{"boat":"heron","kind":"knock","seat":3,"side":"port","date":"2026-10-10"}""" },
        { "rack-level", 1, """{"rack":"a","bowHigh":0.1,"portLow":0.0}""" },
        { "gauge-reversed", 1, """{"gauge":"g1","first":2.3,"turned":-1.9}""" },
        { "report", 1, """{"boat":"heron","kind":"crab-at-finish","seat":3,"side":"port","text":"blade stuck"}""" },
        { "hold", 1, """{"boat":"heron","reason":"knocked"}""" },
        { "hold", 1, """{"boat":"heron","reason":"Damage","reasons":{"de":"Schaden"}}""" },
        { "note", 1, """{"thing":"boat","key":"heron","text":"Damage, seat 3 port: a crack","damage":{"seat":3,"side":"port","text":"a crack"}}""" },
        { "release", 1, """{"boat":"heron","reason":"mended and read again"}""" },
        { "release", 1, """{"boat":"heron","reason":"mended and read again","lifts":["01900000-0000-7000-8000-000000000001"]}""" },
        { "job-planned", 1, """{"job":"j1","boat":"heron","cause":"pin-out","remedy":"plate-washer","steps":["look","do"],"parts":[{"part":"washer","size":2,"count":1}],"expected":[{"station":"catch","value":4.0,"from":3.1,"to":4.9}],"seat":3,"side":"port"}""" },
        { "job-planned", 1, """{"job":"j1","boat":"heron","cause":"wrong-seat","remedy":"exchange-riggers","steps":["do"],"parts":[],"expected":[],"seat":3,"side":"port","otherSeat":5,"otherSide":"port"}""" },
        { "step-done", 1, """{"job":"j1","step":0}""" },
        { "job-done", 1, """{"job":"j1","found":"pin-out"}""" },
        { "job-done", 1, """{"job":"j1","found":"pin-aft","also":["gate-pitch","sleeve"]}""" },
        { "job-dropped", 1, """{"job":"j1","reason":"no parts"}""" },
        { "mended", 1, """{"boat":"heron","seat":3,"side":"port","date":"2026-10-10"}""" },
        { "stock-changed", 1, """{"part":"washer","size":2,"change":-1,"job":"j1"}""" },
        { "stock-counted", 1, """{"part":"insert","size":4,"count":7}""" },
        { "note", 1, """{"thing":"boat","key":"heron","text":"slow leak"}""" },
        { "photo", 1, """{"thing":"boat","key":"heron","sha256":"00","bytes":10,"mediaType":"image/jpeg"}""" },
        { "oar-read", 1, """{"oar":"o1","item":"sleeve","value":0.5,"session":"s1","boat":"heron","lie":"inverted","level":"read","bowHigh":0.3,"portLow":0,"laid":"across","gauge":"g1","date":"2026-10-10"}""" },
        { "oar-read", 1, """{"oar":"o1","item":"length","value":3755,"unit":"mm"}""" },
        { "change-planned", 1, """{"job":"c1","boat":"heron","rig":"Regatta","steps":[{"text":"set it","seat":3,"parts":[],"side":"port","measure":"spread","value":84.5,"u":0.3,"laidBy":false,"turnsSide":false,"refits":true},{"text":"put it in","seat":3,"parts":[{"part":"insert","size":4,"count":1}],"side":"port","insert":4,"laidBy":false,"turnsSide":false,"refits":true},{"text":"bring it","seat":3,"parts":[],"side":"port","rigger":"r3","laidBy":false,"turnsSide":true,"refits":true},{"text":"set it","seat":3,"parts":[],"laidBy":false,"turnsSide":false,"refits":false,"texts":{"de":"einstellen"}}],"again":[{"item":"spread","seat":3,"after":[0],"from":84,"to":85},{"item":"pitch-catch","seat":3,"after":[0,1],"side":"port"}]}""" },
        { "measure-set", 1, """{"boat":"heron","measure":"spread","seat":3,"value":84.5,"unit":"cm","u":0.3,"side":"port","date":"2026-10-10"}""" },
        { "reading-kept", 1, """{"boat":"heron","reading":"01900000-0000-7000-8000-000000000001"}""" },
        { "measure", 1, """{"boat":"heron","measure":"spread","seat":3,"value":84.5,"unit":"cm","side":"port"}""" },
    };

    [Theory]
    [MemberData(nameof(Written))]
    public void Each_kind_reads_and_is_written_again_as_it_was(string kind, int version, string body)
    {
        Fact? fact = FactKinds.Read(Entry(kind, version, body), out string? problem);

        Assert.Null(problem);
        (string name, int written, byte[] bytes) = FactKinds.Write(fact!);
        Assert.Equal((kind, version, body), (name, written, Encoding.UTF8.GetString(bytes)));
    }

    [Fact]
    public void Every_kind_stands_above() =>
        Assert.Equal(FactKinds.Names.Order(), Written.Select(row => row.Data.Item1).Distinct().Order());

    [Fact]
    public void A_reading_is_what_its_words_say() => Assert.Equal(
        new ReadingTaken("l1", "heron", ReadItem.Gate, 3, Side.Port, 4.5m, Station.Catch, Gauge: "g1"),
        FactKinds.Read(Entry("reading", 1, Written.Single(r => r.Data.Item1 == "reading").Data.Item3), out _));

    [Fact]
    public void A_cause_is_what_its_word_says() => Assert.Equal(
        new JobDone("j1", Cause.PinOut), FactKinds.Read(Entry("job-done", 1, """{"job":"j1","found":"pin-out"}"""), out _));

    [Theory]
    [InlineData("tide-table", 1)]
    [InlineData("reading", 2)]
    public void A_kind_or_version_from_a_newer_program_is_kept_and_not_refused(string kind, int version)
    {
        Assert.IsType<UnknownFact>(FactKinds.Read(Entry(kind, version, """{"new":true}"""), out string? problem));
        Assert.Null(problem);
    }

    [Theory]
    [InlineData("""{"boat":"heron"}""")]
    [InlineData("""{"boat":"heron","reason":null}""")]
    [InlineData("""{"boat":3,"reason":"knocked"}""")]
    public void A_known_kind_whose_body_cannot_be_read_is_refused_with_its_reason(string body)
    {
        Assert.Null(FactKinds.Read(Entry("hold", 1, body), out string? problem));
        Assert.StartsWith("the body of a hold entry, at $", problem, StringComparison.Ordinal);
    }

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
