using Gatewright.Core;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests.OnTheWater;

/// <summary>What is said to be mended first.</summary>
public sealed class LoadWordsTests
{
    private static readonly GatePlace Seat2 = new(2, Side.Port);

    [Fact]
    public void A_sleeve_is_told_with_how_far_and_which_way()
    {
        MendFirst choice = Of(gate: (0.2, 3), sleeve: (0.6, 8), none: 0.1, oar: "Oar 7", toBow: -1.25);

        Assert.Equal(
            "The sleeve of Oar 7 (seat 2 port) first, for balance, rather than a gate: 60 % that it is the right one; turned by 1.3 ± 0.2° to the stern the roll moment is expected to go from 20.0 to 12.0 N m (root mean square through the drive).",
            Wording.English.Load.ForRoll(choice));
        Assert.Equal(
            "Die Manschette von Oar 7 (Platz 2 Backbord) zuerst, für das Gleichgewicht, nicht eine Dolle: 60 %, dass sie die richtige ist; um 1,3 ± 0,2° zum Heck gedreht, geht das Rollmoment voraussichtlich von 20,0 auf 12,0 N m (quadratisches Mittel über den Durchzug).",
            Wording.German.Load.ForRoll(choice));
    }

    [Fact]
    public void An_oar_without_a_name_is_told_by_its_place() => Assert.StartsWith(
        "The sleeve of the oar of seat 2 port first, so that seats feel alike",
        Wording.English.Load.ForLoad(Of(gate: (0.2, 3), sleeve: (0.6, 8), none: 0.1)),
        StringComparison.Ordinal);

    [Fact]
    public void A_gate_is_told_with_what_is_likelier_and_yet_not_expected_to_help()
    {
        string told = Wording.English.Load.ForRoll(Of(gate: (0.2, 3), sleeve: (0.6, -8), none: 0.1));

        Assert.StartsWith("Seat 2 port first, for balance: 20 % that it is the right one", told, StringComparison.Ordinal);
        Assert.EndsWith(
            "The sleeve of the oar of seat 2 port is likelier to be the right one (60 %), but where it is not, mending it would make it that much worse: on the whole it is not expected to help.",
            told,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.2, 3, 0.7, "70 % that whichever is mended, the boat rolls no less.")]
    [InlineData(0.2, -3, 0.1, "whichever is mended, the boat is not expected to roll less.")]
    public void Nothing_is_told_to_be_worth_it_for_its_own_reason(double probability, double fall, double none, string end) => Assert.EndsWith(
        end, Wording.English.Load.ForRoll(Of((probability, fall), (0.1, -1), none)), StringComparison.Ordinal);

    private static MendFirst Of(
        (double Probability, double Fall) gate, (double Probability, double Fall) sleeve, double none, string? oar = null, double toBow = 1.5) => new(
        20,
        [new(Seat2, gate.Fall, gate.Probability)],
        [new(Seat2, oar, Estimate.FromDegrees(toBow, 0.2), sleeve.Fall, sleeve.Probability)],
        none);
}
