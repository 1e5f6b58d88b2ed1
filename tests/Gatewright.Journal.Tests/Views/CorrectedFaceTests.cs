using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Tests.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Views;

/// <summary>A reading of a face, and what it is with level and zero taken out.</summary>
public sealed class CorrectedFaceTests
{
    private readonly RoundClubs _clubs = RoundClubs.Of("1x");

    /// <remarks>Abeam a face takes the rise of the bow whole: docs/method.md, the level of the hull. Upright, a bow that is 0.4° high takes 0.4° from what is shown.</remarks>
    [Theory]
    [InlineData(0.4, 4.6)]
    [InlineData(-0.4, 5.4)]
    public void A_bow_that_was_read_high_is_taken_out(double bowHigh, double pitch)
    {
        CorrectedFace face = Read((decimal)bowHigh, null);

        Assert.Equal((5, true, false), (face.Entered, face.IsLevelOut, face.IsZeroOut));

        // The geometry is exact, the rule of thumb is not: of half a degree they differ by far less than a hundredth.
        Assert.Equal(pitch, face.Pitch, 0.01);
        Assert.Contains("with the boat's level taken out", face.Why(Wording.English), StringComparison.Ordinal);
    }

    /// <remarks>Shown 1.0 and, turned end for end, −0.2: a zero of 0.4.</remarks>
    [Fact]
    public void A_zero_that_was_checked_is_taken_out()
    {
        _clubs.Add(new GaugeReversed("dial", 1.0m, -0.2m));
        CorrectedFace face = Read(0, "dial");

        Assert.Equal((false, true), (face.IsLevelOut, face.IsZeroOut));
        Assert.Equal("5.0° entered; 4.6° with the gauge's zero taken out", face.Why(Wording.English));
    }

    [Fact]
    public void On_a_level_boat_it_is_what_was_entered()
    {
        CorrectedFace face = Read(0, null);

        Assert.Equal(new(5, face.Pitch, false, false), face);
        Assert.Null(face.Why(Wording.English));
    }

    private CorrectedFace Read(decimal bowHigh, string? gauge)
    {
        _clubs.Add(
            new BoatLaid("l", RoundClubs.Boat, Lie.Upright, LevelBasis.Read, bowHigh, 0),
            new ReadingTaken("l", RoundClubs.Boat, ReadItem.Gate, 1, Side.Port, 5, Station.Abeam, null, gauge));
        return CorrectedFace.Of(_clubs.View, _clubs.View.Records[^1], MeasuringSettings.Default)!;
    }
}
