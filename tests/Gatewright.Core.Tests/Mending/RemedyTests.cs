using System.Text.RegularExpressions;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Mending;

/// <summary>What holds of every remedy, whatever it mends.</summary>
public partial class RemedyTests
{
    private static readonly GatePlace Gate = new(Faulty.Seat, Side.Port);
    private static readonly GatePlace Across = new(Faulty.Seat, Side.Starboard);

    private static IReadOnlyList<Remedy> AtGates => Faulty.RemediesAtGates;

    private static IReadOnlyList<Remedy> Elsewhere => Faulty.RemediesElsewhere;

    [Fact]
    public void Every_kind_of_remedy_is_reached_from_some_cause() =>
        Assert.Equal(RemedyKinds.All, AtGates.Concat(Elsewhere).Select(r => r.Kind).Distinct().Order());

    [Fact]
    public void Every_cause_has_a_remedy() =>
        Assert.Equal(Causes.All, AtGates.Concat(Elsewhere).Select(r => r.Part.Cause).Distinct().Order());

    [Fact]
    public void Codes_are_words_and_no_two_are_alike()
    {
        Assert.Equal(RemedyKinds.All.Count, RemedyKinds.All.Select(k => k.Code()).Distinct().Count());
        Assert.All(RemedyKinds.All, kind => Assert.Matches("^[a-z]+(-[a-z]+)+$|^backstay$", kind.Code()));
    }

    /// <remarks>The change applied to the state, through the exact geometry: 1e-9° is rounding.</remarks>
    [Fact]
    public void What_is_to_be_expected_is_the_exact_geometry_of_the_gate_once_changed()
    {
        Assert.NotEmpty(AtGates);
        foreach (Remedy remedy in AtGates)
        {
            GateState before = remedy.Before!.Mean;
            GateState after = GateState.FromDegrees(
                before.GatePitch.Degrees + remedy.Change.GatePitch.Degrees,
                before.Pin.Aft.Degrees + remedy.Change.Pin.Aft.Degrees,
                before.Pin.Out.Degrees + remedy.Change.Pin.Out.Degrees);

            Assert.Equal(3, remedy.Expected.Count);
            Assert.All(remedy.Expected, expected => Assert.Equal(
                PitchGeometry.At(expected.At.Angle, after, Side.Port).Degrees, expected.Pitch.Value.Degrees, 1e-9));
        }
    }

    [Fact]
    public void The_band_stands_about_the_pitch_and_is_wider_than_what_the_gate_alone_leaves_open() => Assert.All(
        AtGates.SelectMany(r => r.Expected),
        expected =>
        {
            double half = (expected.To.Degrees - expected.From.Degrees) / 2;
            Assert.Equal(expected.Pitch.Value.Degrees, expected.From.Degrees + half, 1e-9);
            Assert.True(half > 1.96 * expected.Pitch.U.Degrees);
        });

    /// <remarks>
    /// One re-check reading: 0.5/√12, 0.2, 0.5 a radian times 5° or 1°, 0.1 of level, and the gauge's zero of 0.05; the
    /// gate itself has 0.3 of the new insert and what is left open of its pin.
    /// </remarks>
    [Theory]
    [InlineData(Station.Catch, 5)]
    [InlineData(Station.Abeam, 1)]
    public void The_bands_width_comes_from_the_gate_and_from_the_clubs_own_settings(Station station, double held)
    {
        Remedy remedy = Faulty.Remedy(Faulty.Gate(GateState.FromDegrees(6, 0, 0)), Cause.GatePitch, RemedyKind.InsertSwap);
        ExpectedReading expected = remedy.Expected[(int)station];
        double reading = (0.25 / 12) + 0.04 + Math.Pow(0.5 * held * Math.PI / 180, 2) + 0.01 + 0.0025;

        Assert.Equal(
            1.959964 * Math.Sqrt(reading + Math.Pow(expected.Pitch.U.Degrees, 2)),
            (expected.To.Degrees - expected.From.Degrees) / 2,
            1e-9);
    }

    [Fact]
    public void A_finer_gauge_and_a_better_level_narrow_the_band()
    {
        BoatCheck usual = Faulty.Gate(GateState.FromDegrees(6, 0, 0));
        MeasuringSettings finer = MeasuringSettings.Default with { LevelReadU = Angle.FromDegrees(0.02), HeldAngleU = Angle.FromDegrees(1) };
        BoatCheck better = BoatCheck.Of(
            usual.Readings, BoatContext.None, CheckSettings.Default with { Diagnosing = DiagnosingSettings.Default with { Measuring = finer } });

        Assert.True(Width(better) < Width(usual) - 0.01);

        static double Width(BoatCheck check)
        {
            ExpectedReading expected = Faulty.Remedy(check, Cause.GatePitch, RemedyKind.InsertSwap).Expected[0];
            return expected.To.Degrees - expected.From.Degrees;
        }
    }

    /// <remarks>In square degrees: a tilt adds 0.2² to what was left open of the lean; a new pin or insert leaves 0.3².</remarks>
    [Theory]
    [InlineData(RemedyKind.PlateWasher, Cause.PinOut, 2, 0.04)]
    [InlineData(RemedyKind.PinFootShim, Cause.PinOut, 2, 0.04)]
    [InlineData(RemedyKind.Backstay, Cause.PinAft, 1, 0.04)]
    [InlineData(RemedyKind.PinFootShim, Cause.PinAft, 1, 0.04)]
    [InlineData(RemedyKind.SetRigger, Cause.Rigger, 1, 0.04)]
    [InlineData(RemedyKind.SetRigger, Cause.Rigger, 2, 0.04)]
    public void A_tilt_is_added_to_what_was_left_open(RemedyKind kind, Cause cause, int unknown, double added)
    {
        double off = cause == Cause.PinAft ? 0 : 3;
        Remedy remedy = Faulty.Remedy(Faulty.Gate(GateState.FromDegrees(4, cause == Cause.PinOut ? 0 : 3, off)), cause, kind);

        Assert.Equal(
            remedy.Before!.Covariance[unknown, unknown] + added, remedy.After!.Covariance[unknown, unknown], 1e-12);
    }

    [Theory]
    [InlineData(RemedyKind.InsertSwap, Cause.GatePitch, 0)]
    [InlineData(RemedyKind.ReplacePin, Cause.PinAft, 1)]
    [InlineData(RemedyKind.ReplacePin, Cause.PinAft, 2)]
    [InlineData(RemedyKind.RefitRigger, Cause.Rigger, 2)]
    public void What_is_made_new_forgets_what_it_was(RemedyKind kind, Cause cause, int unknown)
    {
        Remedy remedy = Faulty.Remedy(Faulty.Gate(GateState.FromDegrees(5.5, 3, 2)), cause, kind);

        Assert.Equal(0.09, remedy.After!.Covariance[unknown, unknown], 1e-12);
        Assert.Equal(0, remedy.After.Covariance[unknown, (unknown + 1) % 3]);
    }

    [Fact]
    public void Every_remedy_says_whose_word_comes_first() =>
        Assert.All(RemedyKinds.All, kind => Assert.Equal(Caution.Defer, Cautions.For(kind)[^1]));

    [Theory]
    [InlineData(RemedyKind.LevelAgain, Caution.Lifting)]
    [InlineData(RemedyKind.StraightenPin, Caution.BentPin)]
    [InlineData(RemedyKind.Backstay, Caution.Stay)]
    [InlineData(RemedyKind.SetRigger, Caution.Knocked)]
    [InlineData(RemedyKind.PlateWasher, Caution.Bolts)]
    [InlineData(RemedyKind.InsertSwap, Caution.InsertHome)]
    public void The_caution_stands_where_the_work_is(RemedyKind kind, Caution caution) =>
        Assert.Contains(caution, Cautions.For(kind));

    [Fact]
    public void A_remedy_carries_the_cautions_of_its_kind() =>
        Assert.All(AtGates.Concat(Elsewhere), remedy => Assert.Equal(Cautions.For(remedy.Kind), remedy.Cautions));

    [Fact]
    public void No_instruction_needs_a_sign_convention_or_promises_safety() => Assert.All(
        AtGates.Concat(Elsewhere), remedy => Assert.DoesNotMatch(SignOrPromise(), remedy.Instruction));

    [Theory]
    [InlineData("by -2.0°")]
    [InlineData("by −2.0°")]
    [InlineData("a negative lean")]
    [InlineData("then it is safe")]
    [InlineData("plus 2°")]
    public void The_check_on_words_finds_what_it_is_for(string words) => Assert.Matches(SignOrPromise(), words);

    [Fact]
    public void Remedies_of_a_cause_come_quickest_first() => Assert.All(
        Faulty.Cases, c => Assert.All(c.Causes, cause =>
        {
            IReadOnlyList<Remedy> remedies = Faulty.Remedies(Faulty.Gate(c.State), cause);
            Assert.Equal(remedies.OrderBy(r => r.Minutes), remedies);
        }));

    [Fact]
    public void The_parts_are_those_of_the_instruction()
    {
        Remedy washers = Faulty.Remedy(Faulty.Gate(GateState.FromDegrees(4, 0, 3)), Cause.PinOut, RemedyKind.PlateWasher);

        Assert.Equal(["washer 2 mm", "washer 1 mm", "washer 0.5 mm"], washers.Parts.Select(p => p.ToString()));
        Assert.StartsWith("Put washers of 2 + 1 + 0.5 mm behind", washers.Instruction, StringComparison.Ordinal);
    }

    /// <remarks>6 mm over 60 mm is the most that three shims of 2 mm give: 5.7°.</remarks>
    [Fact]
    public void What_the_shims_cannot_reach_is_said()
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(4, 8, 0));

        Assert.EndsWith(" That leaves about 2.2°.", Faulty.Remedy(check, Cause.PinAft, RemedyKind.PinFootShim).Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gate_that_is_as_it_should_be_gets_neither_insert_nor_shim() => Assert.Equal(
        [RemedyKind.ReplacePin],
        new[] { Cause.GatePitch, Cause.PinAft }.SelectMany(cause => Faulty.Remedies(Faulty.Gate(GateState.FromDegrees(4, 0, 0)), cause)).Select(r => r.Kind));

    /// <remarks>Halfway between two inserts the one of more pitch: too little is what dives.</remarks>
    [Theory]
    [InlineData(4.4, 4)]
    [InlineData(4.5, 5)]
    [InlineData(3.5, 4)]
    public void The_insert_is_the_nearest_to_be_had_to_what_the_gate_is_meant_to_be(double target, double insert)
    {
        var context = new BoatContext { Targets = new Dictionary<GatePlace, GateState> { [Gate] = GateState.FromDegrees(target, 0, 0) } };
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(7, 0, 0), context: context);

        Assert.Equal([new(PartKind.Insert, insert)], Faulty.Remedy(check, Cause.GatePitch, RemedyKind.InsertSwap).Parts);
    }

    [Fact]
    public void Only_likely_causes_are_worth_a_spanner()
    {
        BoatCheck check = Faulty.Gate(GateState.FromDegrees(6.2, 0, 0));

        Assert.Equal([Cause.GatePitch], Remedies.For(check, Gate, MendingSettings.Default).Select(r => r.Part.Cause).Distinct());
        Assert.Empty(Remedies.For(check, Across, MendingSettings.Default));
        Assert.Empty(Remedies.ForBoat(check));
    }

    [GeneratedRegex("positive|negative|minus|plus|[-−][0-9]|\\bsafe\\b", RegexOptions.IgnoreCase)]
    private static partial Regex SignOrPromise();
}
