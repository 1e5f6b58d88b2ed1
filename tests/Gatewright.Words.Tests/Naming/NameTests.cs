using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Words.Naming;

namespace Gatewright.Words.Tests.Naming;

/// <summary>Every value of the trade's nouns has its words, in every language.</summary>
public class NameTests
{
    public static TheoryData<string> Languages => [.. Language.All.Select(language => language.Tag)];

    [Theory]
    [MemberData(nameof(Languages))]
    public void Every_value_has_words_and_no_two_have_the_same(string tag)
    {
        NameWords names = Wording.In(Language.Of(tag)).Names;
        Each<Verdict>(names.Verdict);
        Each<Station>(names.Station);
        Each<Station>(names.AtStation);
        Each<Side>(names.Side);
        Each<Lie>(names.Lie);
        Each<Rowing>(names.Rowing);
        Each<Bedding>(names.Bedding);
        Each<Cause>(names.Cause);
        Each<Cause>(cause => Wording.In(Language.Of(tag)).Causes.SomeHere(new(cause)));
        Each<ReasonKind>(names.Reason);
        Each<ReadItem>(names.Item);
        Each<NextItem>(names.Item);
        Each<ReportKind>(names.Report);
        Each<PartKind>(names.Part);
        Each<RemedyKind>(names.Remedy);
        Each<RecheckOutcome>(names.Recheck);
        Each<Caution>(Wording.In(Language.Of(tag)).Cautions.Of);
        Each<Verdict>(Wording.In(Language.Of(tag)).Shed.WhatNow);
    }

    // What the terminal's drawings and the files write by Core's own words must be what is said.
    [Fact]
    public void English_nouns_are_those_of_the_files()
    {
        NameWords names = Wording.English.Names;
        Assert.All(Enum.GetValues<Verdict>(), value => Assert.Equal(value.Word(), names.Verdict(value)));
        Assert.All(Enum.GetValues<Station>(), value => Assert.Equal(value.Word(), names.Station(value)));
        Assert.All(Enum.GetValues<Side>(), value => Assert.Equal(value.Word(), names.Side(value)));
        Assert.All(Enum.GetValues<Lie>(), value => Assert.Equal(value.Word(), names.Lie(value)));
        Assert.All(Enum.GetValues<PartKind>(), value => Assert.Equal(value.Word(), names.Part(value)));
        Assert.All(
            [new(PartKind.Insert, 4), new(PartKind.Shim, 0.5), new Part(PartKind.Pin, 0)],
            part => Assert.Equal(part.ToString(), names.Part(part)));
        Assert.Equal(new GatePlace(3, Side.Port).ToString(), names.Gate(new GatePlace(3, Side.Port)));
    }

    [Theory]
    [InlineData("en", "seat 3 port", "seat 5", "20° | at 20° from abeam", "3 × shim 0.5 mm")]
    [InlineData("de", "Platz 3 Backbord", "Platz 5", "20° | bei 20° vom Mittelzug aus", "3 × Passblech 0,5 mm")]
    public void Places_points_and_parts_are_named(string tag, string gate, string missing, string point, string parts)
    {
        NameWords names = Wording.In(Language.Of(tag)).Names;
        var at = new StrokePoint(OarAngle.FromDegrees(20), null);

        Assert.Equal(gate, names.Gate(new GatePlace(3, Side.Port)));
        Assert.Equal(missing, names.Gate(new MissingGate(5, null)));
        Assert.Equal(point, $"{names.Point(at)} | {names.AtPoint(at)}");
        Assert.Equal(parts, names.Part(new PartCount(new(PartKind.Shim, 0.5), 3)));
    }

    [Theory]
    [InlineData("en", "a knock at seat 3 port", "the boat down to port", "a knock")]
    [InlineData("de", "ein Stoß an Platz 3 Backbord", "das Boot hängt nach Backbord", "ein Stoß")]
    public void Reports_are_named_with_their_place(string tag, string knock, string down, string bare)
    {
        NameWords names = Wording.In(Language.Of(tag)).Names;

        Assert.Equal(knock, names.Report(new Report(ReportKind.Knock, new GatePlace(3, Side.Port))));
        Assert.Equal(down, names.Report(new Report(ReportKind.DownToOneSide, null, Side.Port)));
        Assert.Equal(bare, names.Report(new Report(ReportKind.Knock, null)));
    }

    private static void Each<T>(Func<T, string> words)
        where T : struct, Enum
    {
        List<string> all = [.. Enum.GetValues<T>().Select(words)];
        Assert.All(all, Assert.NotEmpty);
        Assert.Equal(all.Count, all.Distinct().Count());
    }
}
