using Gatewright.Core.Advising;

namespace Gatewright.Core.Tests.Advising;

public class EntropyTests
{
    /// <remarks>
    /// C. E. Shannon, A Mathematical Theory of Communication (1948), section 9: four letters of probabilities 1/2, 1/4,
    /// 1/8, 1/8 carry 7/4 bits a letter. From memory.
    /// </remarks>
    [Fact]
    public void Four_letters_of_unequal_chances_carry_seven_quarters_of_a_bit() =>
        Assert.Equal(1.75, Entropy.Bits([0.5, 0.25, 0.125, 0.125]));

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(8, 3)]
    public void Even_odds_between_many_are_the_logarithm_of_how_many(int many, double bits) =>
        Assert.Equal(bits, Entropy.Bits([.. Enumerable.Repeat(1.0 / many, many)]), 1e-12);

    [Fact]
    public void What_cannot_be_adds_nothing() => Assert.Equal(1, Entropy.Bits([0.5, 0, 0.5]));
}
