using System.Globalization;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Words;

/// <summary>
/// The tables of docs/method.md, recomputed. Numbers are held to the decimals that the page gives: half of the last one,
/// and a hair for the halves that round the other way.
/// </summary>
public class MethodPageTests
{
    private static readonly MeasuringSettings Settings = MeasuringSettings.Default;

    [Fact]
    public void Pitch_through_the_stroke()
    {
        foreach (string[] row in MethodPage.Table("Worked example: pitch through the stroke", rows: 8))
        {
            var gate = GateState.FromDegrees(Number(row[0]), Number(row[1]), Number(row[2]));
            (Side side, Lie lie) = (SideOf(row[3]), LieOf(row[4]));
            var hull = HullAttitude.FromDegrees(Number(row[5]), Number(row[6]));
            var at = OarAngle.FromDegrees(Number(row[7]));

            AsPrinted(row[8], PitchGeometry.At(at, gate, side, hull, lie).Degrees);
            AsPrinted(row[9], PitchSlopes.At(at, side, lie).Pitch(gate, hull).Degrees);
        }
    }

    [Fact]
    public void Lean_out_from_the_drop()
    {
        foreach (string[] row in MethodPage.Table("Worked example: lean out from the drop", rows: 3))
        {
            double Sine(string angle) => PitchSlopes.At(OarAngle.FromDegrees(Number(angle)), Side.Port, Lie.Upright).Out;

            AsPrinted(row[4], (Number(row[0]) - Number(row[1])) / (Sine(row[2]) - Sine(row[3])));
        }
    }

    [Fact]
    public void Default_station_angles()
    {
        foreach (string[] row in MethodPage.Table("Default numbers: station angles", rows: 2))
        {
            StationAngles angles = Settings.Angles(row[0] == "sweep" ? Rowing.Sweep : Rowing.Scull);

            Assert.Equal(row[1..].Select(Number), Stations.All.Select(s => angles.At(s).Degrees));
        }
    }

    [Fact]
    public void Default_uncertainties()
    {
        Gauge gauge = Settings.GaugeNamed("any");
        double[] values =
        [
            Settings.HeldAngleU.Degrees,
            Settings.HeldAbeamU.Degrees,
            Settings.PitchDegreesPerRadianOfOar,
            gauge.Resolution.Degrees,
            gauge.Repeatability.Degrees,
            gauge.Zero.Estimate.U.Degrees,
            Settings.CheckedGaugeZeroU.Degrees,
            Settings.LevelReadU.Degrees,
            Settings.BubbleCentredU.Degrees,
            Settings.ByEyeU.Degrees,
            Settings.FirmRackU.Degrees,
            Settings.SoftRackU.Degrees,
        ];

        Assert.Equal(
            values, MethodPage.Table("Default numbers: uncertainties", rows: 12).Select(row => Number(row[1])));
    }

    [Fact]
    public void The_parts_of_one_reading()
    {
        foreach (string[] row in MethodPage.Table("Worked example: the parts of one reading", rows: 4))
        {
            UncertaintyBudget budget = Pooled(Taken.Gate(Taken.Seat(1), StationOf(row[0]), 4, LevelOf(row[1]))).Budget;

            AsPrinted(row[2], budget.Resolution);
            AsPrinted(row[3], budget.Repeatability);
            AsPrinted(row[4], budget.HeldAngle);
            AsPrinted(row[5], budget.Level);
            AsPrinted(row[6], budget.GaugeZero);
            AsPrinted(row[7], budget.CombinedDegrees);
        }
    }

    [Fact]
    public void Correcting_a_reading()
    {
        foreach (string[] row in MethodPage.Table("Worked example: correcting a reading", rows: 5))
        {
            var gauge = Taken.GaugeOf("gauge", 0.5, 0.2, Number(row[1]), 0.05);
            BoatLie lie = Taken.Read(LieOf(row[3]), Number(row[4]), Number(row[5]));
            var reading = new Reading(
                ReadItem.Gate,
                Taken.Seat(1, SideOf(row[2])),
                Settings.Sweep.Point(OarAngle.FromDegrees(Number(row[6]))),
                Angle.FromDegrees(Number(row[0])),
                lie,
                gauge);

            AsPrinted(row[7], Pooled(reading).Pitch.Degrees);
        }
    }

    [Fact]
    public void Two_seats_of_one_boat()
    {
        foreach (string[] row in MethodPage.Table("Worked example: two seats of one boat", rows: 3))
        {
            BoatLie lie = LevelOf(row[2]);
            var corrected = CorrectedReadings.Of(
                [Taken.Gate(PlaceOf(row[0]), Station.Catch, 4, lie), Taken.Gate(PlaceOf(row[1]), Station.Catch, 4, lie)], Settings);

            AsPrinted(row[3], corrected.Pitches[0].Estimate.U.Degrees);
            AsPrinted(row[4], corrected.Difference(0, 1).U.Degrees);
        }
    }

    [Fact]
    public void Pooling()
    {
        foreach (string[] row in MethodPage.Table("Worked example: pooling", rows: 5))
        {
            CorrectedPitch pooled = Pooled([.. row[0].Split(", ").Select(text => text.Split(' ', 2)).Select(
                parts => Taken.Gate(Taken.Seat(1), Station.Catch, Number(parts[0]), LevelOf(parts[1])))]);

            AsPrinted(row[1], pooled.Pitch.Degrees);
            AsPrinted(row[2], pooled.Estimate.U.Degrees);
            Assert.Equal(row[3], pooled.RepeatsDisagree ? "yes" : "no");
        }
    }

    [Fact]
    public void Default_rule()
    {
        DecisionRule rule = DecisionRule.Default;

        Assert.Equal(
            [rule.OutsideToAdjust, rule.AboveFloorForGood, rule.BelowFloorToStop],
            MethodPage.Table("Default numbers: rule", rows: 3).Select(row => Number(row[1])));
    }

    [Fact]
    public void Default_standards()
    {
        foreach (string[] row in MethodPage.Table("Default numbers: standards", rows: 6))
        {
            Assert.Equal(
                StationLimits.FromDegrees(Number(row[2]), Number(row[3]), Number(row[4])),
                StandardOf(row[0]).At(StationOf(row[1])));
        }

        foreach (string[] row in MethodPage.Table("Default numbers: drop and range", rows: 2))
        {
            Standard standard = StandardOf(row[0]);

            Assert.Equal((Number(row[1]), Number(row[2])), (standard.LargestDrop.Degrees, standard.LargestRange.Degrees));
        }
    }

    [Fact]
    public void One_reading_at_the_catch()
    {
        DecisionRule rule = DecisionRule.Default;
        StationLimits limits = Standard.Club.Catch;
        foreach (string[] row in MethodPage.Table("Worked example: one reading at the catch", rows: 9))
        {
            Reading reading = Taken.Gate(Taken.Seat(1), Station.Catch, Number(row[0]), LevelOf(row[1]));
            double u = Pooled(reading).Estimate.U.Degrees;
            (Verdict byLimits, double outside) =
                rule.Limits(Number(row[0]), u, limits.Lowest.Degrees, limits.Highest.Degrees);
            double below = DecisionRule.Below(limits.Floor, Number(row[0]), u);

            AsPrinted(row[2], u);
            AsPrinted(row[3], outside);
            AsPrinted(row[4], below);
            Assert.Equal((row[5], row[6]), (byLimits.Word(), rule.Floor(below).Word()));
            Assert.Equal(row[7], Judged.Gate(Standard.Club, reading).Verdict.Word());
        }
    }

    [Fact]
    public void A_boat_at_the_catch()
    {
        foreach (string[] row in MethodPage.Table("Worked example: a boat at the catch", rows: 4))
        {
            Reading[] readings =
                [.. row[0].Split(", ").Select((text, i) => Taken.Gate(Taken.Seat(i + 1), Station.Catch, Number(text)))];

            Assert.Equal(row[2], Judged.Boat(StandardOf(row[1]), readings).Verdict.Word());
        }
    }

    [Fact]
    public void A_heading_that_is_not_there_and_a_table_that_has_lost_a_row_are_errors()
    {
        Assert.Throws<ArgumentException>(() => MethodPage.Table("No such heading", rows: 1));
        Assert.Throws<ArgumentException>(() => MethodPage.Table("Default numbers: rule", rows: 4));
    }

    private static void AsPrinted(string printed, double value)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : printed.Length - point - 1;

        Close.To(Number(printed), value, 0.5000001 * Math.Pow(10, -decimals), printed);
    }

    private static CorrectedPitch Pooled(params Reading[] readings) =>
        Assert.Single(CorrectedReadings.Of(readings, Settings).Pitches);

    /// <summary>The page writes a true minus sign.</summary>
    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static Side SideOf(string word) => Enum.GetValues<Side>().Single(side => side.Word() == word);

    private static Lie LieOf(string word) => Enum.GetValues<Lie>().Single(lie => lie.Word() == word);

    private static Station StationOf(string word) => Stations.All.Single(station => station.Word() == word);

    private static Standard StandardOf(string name) => Standard.BuiltIn.Single(standard => standard.Name == name);

    private static GatePlace PlaceOf(string words) =>
        Enumerable.Range(1, 8)
            .SelectMany(seat => Enum.GetValues<Side>().Select(side => new GatePlace(seat, side)))
            .Single(place => place.ToString() == words);

    private static BoatLie LevelOf(string word) => word switch
    {
        "read" => Taken.Read(Lie.Upright, 0, 0),
        "bubble" => Taken.Level,
        "by eye" => Taken.ByEye,
        _ => throw new ArgumentException($"'{word}' is no way of levelling.", nameof(word)),
    };
}
