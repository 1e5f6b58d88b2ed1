using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Rig;

public class RigMeasuresTests
{
    [Fact]
    public void Each_word_leads_back_to_its_measure() =>
        Assert.Equal(RigMeasures.All, RigMeasures.All.Select(m => RigMeasures.OfWord(m.Word().ToUpperInvariant())!.Value));

    [Fact]
    public void No_other_word_is_a_measure() => Assert.Null(RigMeasures.OfWord("pitch"));

    [Fact]
    public void An_inch_is_2_54_centimetres() =>
        // International yard and pound agreement, 1959: exact by definition.
        Assert.Equal(2.54, Length.FromInches(1).Centimetres);
}
