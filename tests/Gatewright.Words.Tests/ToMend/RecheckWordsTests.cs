using Gatewright.Core;
using Gatewright.Core.Mending;

namespace Gatewright.Words.Tests.ToMend;

public class RecheckWordsTests
{
    [Theory]
    [InlineData("en", RecheckOutcome.Mended, "Seat 3 port reads as was expected after the work (chance that it is so: 80 %).")]
    [InlineData("en", RecheckOutcome.NotMended, "Seat 3 port reads as it did before (chance that it is so: 15 %): the work has not mended it.")]
    [InlineData("en", RecheckOutcome.Otherwise, "Seat 3 port has changed, and not as was expected (chance that it is so: 5 %): something else was mended, or moved. Read it again and look for the cause anew.")]
    [InlineData("de", RecheckOutcome.Mended, "Platz 3 Backbord zeigt, was nach der Arbeit zu erwarten war (Wahrscheinlichkeit dafür: 80 %).")]
    public void Each_outcome_has_its_sentence_and_its_own_probability(string tag, RecheckOutcome outcome, string sentence) => Assert.Equal(
        sentence, Wording.In(Language.Of(tag)).Rechecks.Of(new GatePlace(3, Side.Port), new(outcome, 0.8, 0.15, 0.05)));

    /// <summary>Where nobody marked all of the work as done, nothing is said of what it did.</summary>
    [Theory]
    [InlineData("en", RecheckOutcome.Mended, "Seat 3 port reads as it should once the work is done (chance that it is so: 80 %).")]
    [InlineData("en", RecheckOutcome.NotMended, "Seat 3 port reads as it did before (chance that it is so: 15 %).")]
    [InlineData("en", RecheckOutcome.Otherwise, "Seat 3 port reads neither as it did before nor as it should once the work is done (chance that it is so: 5 %).")]
    [InlineData("de", RecheckOutcome.NotMended, "Platz 3 Backbord zeigt dasselbe wie vorher (Wahrscheinlichkeit dafür: 15 %).")]
    public void Of_work_that_is_not_known_to_be_done_nothing_is_said(string tag, RecheckOutcome outcome, string sentence) => Assert.Equal(
        sentence, Wording.In(Language.Of(tag)).Rechecks.Of(new GatePlace(3, Side.Port), new(outcome, 0.8, 0.15, 0.05), isWorked: false));
}
