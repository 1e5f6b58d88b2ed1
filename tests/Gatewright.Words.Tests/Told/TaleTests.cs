using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Words.Judged;

namespace Gatewright.Words.Tests.Told;

/// <summary>A boat in a few sentences.</summary>
public class TaleTests
{
    public static TheoryData<string> Boats => [.. ExampleShed.Shed.Boats.Select(boat => boat.Verdict.Boat)];

    [Theory]
    [MemberData(nameof(Boats))]
    public void A_good_boat_is_told_in_a_sentence_and_any_other_in_four_and_what_was_not_read_in_one_more(string name)
    {
        BoatCheck boat = Boat(name);
        int sentences = (boat.Verdict.Verdict == Verdict.Good ? 1 : 4) + (boat.Verdict.NotRead.Count > 0 ? 1 : 0);

        Assert.All([Wording.English, Wording.German], say => Assert.Equal(sentences, say.Tales.Of(boat).Count));
    }

    /// <summary>What the terminal says first of a gate is what the app says of it.</summary>
    [Theory]
    [MemberData(nameof(Boats))]
    public void The_reason_is_the_first_that_is_told_of_the_worst_gate(string name)
    {
        BoatCheck boat = Boat(name);
        if (boat.Verdict.Verdict == Verdict.Good)
        {
            Assert.All(boat.Verdict.Gates, gate => Assert.Null(Wording.English.Reasons.Why(gate, boat.Verdict.Standard)));
            return;
        }

        GateVerdict worst = boat.Verdict.Gates.First(gate => gate.Verdict == boat.Verdict.Verdict);
        string first = Wording.English.Reasons.Of(worst.Gate, ReasonChoice.Of(worst, false)[0], boat.Verdict.Standard);
        Assert.Equal(first, Wording.English.Tales.Of(boat)[1]);
        Assert.Contains(Wording.English.Shed.Statements(boat, new()), statement => statement.EndsWith(first, StringComparison.Ordinal));
    }

    [Fact]
    public void The_boat_that_is_stopped()
    {
        BoatCheck nuthatch = Boat("Nuthatch");

        Assert.Equal("Nuthatch 4x+: stop, because of 1 gate.", Wording.English.Tales.Of(nuthatch)[0]);
        Assert.Equal("Nuthatch 4x+: gesperrt, wegen 1 Dolle.", Wording.German.Tales.Of(nuthatch)[0]);
        Assert.StartsWith("Mark the boat", Wording.English.Cautions.For(nuthatch.Verdict), StringComparison.Ordinal);
    }

    private static BoatCheck Boat(string name) => ExampleShed.Shed.Boats.Single(boat => boat.Verdict.Boat == name);
}
