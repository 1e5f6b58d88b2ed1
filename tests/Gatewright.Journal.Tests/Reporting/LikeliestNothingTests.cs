using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Reporting;

namespace Gatewright.Journal.Tests.Reporting;

/// <summary>Whether something is likelier than that nothing is wrong where a report told of it.</summary>
public sealed class LikeliestNothingTests
{
    [Fact]
    public void Of_the_whole_boat_the_likeliest_story_decides()
    {
        Assert.True(new ReportEffect(null, false, null, null, new([], 0.89)).IsLikeliestNothing);
        Assert.False(new ReportEffect(null, false, null, null, new([new(Cause.PinAft, new(1, Side.Port))], 0.6)).IsLikeliestNothing);
        Assert.False(new ReportEffect(null, false, null, null, null).IsLikeliestNothing);
    }

    [Fact]
    public void Of_a_gate_its_likeliest_cause_decides()
    {
        var gate = new GatePlace(1, Side.Port);

        Assert.True(new ReportEffect(gate, false, null, Of(gate, null), null).IsLikeliestNothing);
        Assert.False(new ReportEffect(gate, false, null, Of(gate, Cause.PinAft), null).IsLikeliestNothing);
    }

    private static GateDiagnosis Of(GatePlace gate, Cause? likeliest) => new(gate, default!, default!, default!, [new(likeliest, 0.9)]);
}
