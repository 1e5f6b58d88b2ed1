using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>What those who look after boats know from experience (common practice; no published source).</summary>
public sealed class CommonPracticeTests
{
    private static readonly Station[] CatchAndFinish = [Station.Catch, Station.Finish];

    /// <summary>
    /// Common practice: about 5 at the catch falling to about 1 at the finish means the pin leans out. By the drop alone the
    /// lean is 4 / (sin 55° + sin 35°) = 2.9°.
    /// </summary>
    /// <remarks>
    /// That lean in a gate of 4 gives 6.3 and 2.4: 5 and 1 lie lower by about 1.4 each, so the pin leans forward as well, by
    /// some 1.8° (1.4 over the cosines, 0.57 and 0.82, less what healthy scatter takes). A forward lean takes less at the catch
    /// than at the finish, so part of the drop is its own: what is left for the lean out is 2.5°. Hence rigger (both
    /// leans) before pin-out, and 2.9 within two u.
    /// </remarks>
    [Fact]
    public void Five_at_the_catch_and_one_at_the_finish_is_a_pin_that_leans_out()
    {
        GatePlace odd = Gate(3);
        Diagnosis diagnosis = Diagnose(Eight(CatchAndFinish, (seat, at) => seat != 3 ? 4 : at == Station.Catch ? 5 : 1));
        GateDiagnosis gate = diagnosis.At(odd);
        Assert.Equal(odd, diagnosis.Gates.MaxBy(g => g.Wrong)!.Gate);
        Assert.True(diagnosis.Of(Cause.PinOut, odd) + diagnosis.Of(Cause.Rigger, odd) > 0.95);
        Assert.All(diagnosis.Gates.Where(g => g.Gate != odd), g => Assert.True(g.Wrong < 0.05));
        Assert.InRange(gate.LeanOut.Value.Degrees, 2.2, 3.2);
        Assert.Equal(2.9, gate.LeanOut.Value.Degrees, 2 * gate.LeanOut.U.Degrees);
        Assert.InRange(gate.LeanAft.Value.Degrees, -3, -1);
        Assert.Equal(4, gate.GatePitch.Value.Degrees, 0.3);
    }

    /// <summary>Read abeam as well, at the 4 that a lean out alone leaves there, the forward lean has no place.</summary>
    [Fact]
    public void A_lean_out_alone_leaves_the_pitch_abeam()
    {
        Diagnosis diagnosis = Diagnose(Eight(Stations.All, (seat, at) => seat != 3 ? 4 : at switch
        {
            Station.Catch => 6.5,
            Station.Abeam => 4,
            _ => 2.5,
        }));
        GateDiagnosis gate = diagnosis.At(Gate(3));
        Assert.Equal(Cause.PinOut, gate.Causes[0].Cause);
        Assert.True(gate.Causes[0].Probability > 0.8);
        Assert.Equal(0, gate.LeanAft.Value.Degrees, 0.3);
    }

    /// <summary>Common practice: one gate off is that gate; all alike off is how the boat lay, or the gauge.</summary>
    [Theory]
    [InlineData("catch finish", 6.0)]
    [InlineData("catch finish", 2.0)]
    [InlineData("abeam", 6.0)]
    [InlineData("catch abeam finish", 5.5)]
    public void All_gates_off_by_the_same_is_the_hull_or_the_gauge(string stations, double degrees)
    {
        Station[] read = [.. Stations.All.Where(s => stations.Split(' ').Contains(s.Word()))];
        Diagnosis diagnosis = Diagnose(Eight(read, (_, _) => degrees));
        Assert.True(diagnosis.Probability(part => part.Cause.IsBoatWide()) > 0.95);
        Assert.All(diagnosis.Gates, gate => Assert.True(gate.Wrong < 0.05));
    }

    /// <summary>Common practice: a boat that is rolled reads higher on one side at the catch and lower there at the finish.</summary>
    [Fact]
    public void High_to_port_at_the_catch_and_low_at_the_finish_is_a_hull_rolled_to_port()
    {
        Diagnosis diagnosis = Diagnose(Eight(CatchAndFinish, (seat, at) =>
            (Gate(seat).Side == Side.Port) == (at == Station.Catch) ? 5.5 : 2.5));
        Assert.True(diagnosis.Probability(part => part.Cause == Cause.HullLevel) > 0.95);
        Assert.True(diagnosis.Levels.Single().PortLow.Value.Degrees > 1);
        Assert.Equal(0, diagnosis.Levels.Single().BowHigh.Value.Degrees, 0.3);
    }

    [Theory]
    [InlineData("catch")]
    [InlineData("abeam")]
    [InlineData("finish")]
    [InlineData("catch finish")]
    [InlineData("catch abeam finish")]
    public void One_gate_at_one_and_a_half_among_fours_is_that_gate(string stations)
    {
        Station[] read = [.. Stations.All.Where(s => stations.Split(' ').Contains(s.Word()))];
        Diagnosis diagnosis = Diagnose(Eight(read, (seat, _) => seat == 5 ? 1.5 : 4));
        Assert.Equal(Gate(5), diagnosis.Gates.MaxBy(g => g.Wrong)!.Gate);
        Assert.True(diagnosis.At(Gate(5)).Wrong > 0.95);
        Assert.All(diagnosis.Gates.Where(g => g.Gate != Gate(5)), g => Assert.True(g.Wrong < 0.05));
    }

    /// <summary>Common practice: equal at catch and finish means a pin that is upright; then it is the insert, or a lean aft.</summary>
    [Fact]
    public void Equal_at_catch_and_finish_is_a_pin_upright_from_the_end()
    {
        Diagnosis diagnosis = Diagnose(Eight(CatchAndFinish, (seat, _) => seat == 5 ? 2 : 4));
        GateDiagnosis gate = diagnosis.At(Gate(5));
        Assert.True(gate.Wrong > 0.9);
        Assert.True(diagnosis.Of(Cause.PinOut, Gate(5)) < 0.01);

        // The mean is not quite 0: less lean forward at the catch's cosine than at the finish's is made good by a lean inward.
        Assert.Equal(0, gate.LeanOut.Value.Degrees, gate.LeanOut.U.Degrees);
        Assert.Equal(Cause.GatePitch, gate.Causes[0].Cause);
    }

    [Fact]
    public void A_boat_of_fours_has_nothing_wrong()
    {
        Diagnosis diagnosis = Diagnose(Eight(Stations.All, (_, _) => 4));
        Assert.True(diagnosis.Stories[0].IsNone);
        Assert.True(diagnosis.Stories[0].Probability > 0.9);
        Assert.All(diagnosis.Gates, gate => Assert.Null(gate.Causes[0].Cause));
    }

    /// <summary>A stamp on the insert says what the gate is meant to be: six read on a six is healthy.</summary>
    [Fact]
    public void A_gate_that_reads_what_its_insert_is_stamped_has_nothing_wrong()
    {
        BoatReadings boat = Eight(Stations.All, (seat, _) => seat == 5 ? 6 : 4);
        var stamped = new BoatContext
        {
            Targets = new Dictionary<GatePlace, Gatewright.Core.Geometry.GateState> { [Gate(5)] = Gatewright.Core.Geometry.GateState.FromDegrees(6, 0, 0) },
        };
        Assert.True(Diagnose(boat).At(Gate(5)).Wrong > 0.95);
        Assert.True(Diagnose(boat, stamped).At(Gate(5)).Wrong < 0.05);
    }

    /// <summary>Reading the pin itself tells a wrong insert from a pin that leans aft.</summary>
    [Theory]
    [InlineData(-2.5, Cause.PinAft)]
    [InlineData(0, Cause.GatePitch)]
    public void A_reading_of_the_pin_tells_insert_from_pin(double pinAft, Cause cause)
    {
        BoatReadings abeam = Eight([Station.Abeam], (seat, _) => seat == 5 ? 1.5 : 4);
        Reading[] ofThePin = [Read(ReadItem.PinAft, Gate(5), pinAft), Read(ReadItem.PinOut, Gate(5), 0)];
        BoatReadings both = abeam with { Readings = [.. abeam.Readings, .. ofThePin] };
        Assert.True(Diagnose(abeam).Of(cause, Gate(5)) < 0.5);
        Assert.True(Diagnose(both).Of(cause, Gate(5)) > 0.8);
    }
}
