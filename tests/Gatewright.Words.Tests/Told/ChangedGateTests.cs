using Gatewright.Core;
using Gatewright.Core.Checking;

namespace Gatewright.Words.Tests.Told;

/// <summary>Of a gate that was changed it is said what was done, when, and what to do.</summary>
public class ChangedGateTests
{
    [Theory]
    [InlineData("en", GateChangedBy.Knock, "Seat 3 port was knocked on 2026-10-10 and not read since: read it again.")]
    [InlineData("en", GateChangedBy.Refitting, "The rigger of seat 3 port was taken off and put on again on 2026-10-10, and the gate not read since: read it again.")]
    [InlineData("en", GateChangedBy.Mending, "Seat 3 port was mended on 2026-10-10 and not read since: read it again.")]
    [InlineData("en", GateChangedBy.FinishedJob, "Seat 3 port was worked on in a job, last on 2026-10-10, and not read since: read it again.")]
    [InlineData("en", GateChangedBy.JobGivenUp, "Steps of a job were done at seat 3 port, last on 2026-10-10; the job was given up, and the gate not read since: read it again.")]
    [InlineData("en", GateChangedBy.JobUnderWay, "Steps of a job were done at seat 3 port, last on 2026-10-10; the job is still open, and the gate not read since: read it again.")]
    public void Each_change_has_its_sentence(string tag, GateChangedBy by, string sentence) =>
        Assert.Equal(sentence, Wording.In(Language.Of(tag)).Boats.ReadAgain(new(new(3, Side.Port), new(2026, 10, 10), by)));

    [Fact]
    public void In_German_it_begins_with_a_capital_too()
    {
        foreach (GateChangedBy by in Enum.GetValues<GateChangedBy>())
        {
            string sentence = Wording.German.Boats.ReadAgain(new(new(3, Side.Port), new(2026, 10, 10), by));
            Assert.True(char.IsUpper(sentence[0]), sentence);
            Assert.EndsWith(": neu messen.", sentence, StringComparison.Ordinal);
        }
    }
}
