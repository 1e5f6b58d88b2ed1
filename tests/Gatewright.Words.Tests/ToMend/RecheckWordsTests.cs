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
}
