using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Core.Tests.Support;
using Gatewright.Words;

namespace Gatewright.Core.Tests.Rig;

/// <summary>docs/method-rig.md says what the program does.</summary>
public class MethodRigPageTests
{
    private const string Page = "method-rig.md";

    [Fact]
    public void Each_measure_is_taken_as_the_page_says() => Assert.Equal(
        RigMeasures.All.Select(m => $"`{m.Word()}`: {Wording.English.Rig.How(m)}"),
        MethodPage.Table("How each is measured", 10, Page).Select(row => $"{row[0]}: {row[1]}"));

    [Fact]
    public void Each_uncertainty_is_the_page_s() => Assert.Equal(
        RigMeasures.All.Select(m => (m, RigErrors.Usual(m))).Select(e => string.Create(
            CultureInfo.InvariantCulture,
            $"`{e.m.Word()}` {e.Item2.Own} {e.Item2.OfSeat} {e.Item2.OfBoat} {e.Item2.Tape} {e.Item2.Tilt} {e.Item2.Once:0.###}")),
        MethodPage.Table("How sure it is", 10, Page).Select(row => string.Join(' ', row)));

    [Fact]
    public void Each_starting_target_is_the_page_s() => Assert.All(
        MethodPage.Table("Starting targets: women and men", 22, Page),
        row =>
        {
            RigTargets targets = RigTargets.Starting(BoatClass.Parse(row[0]), Crews.OfWord(row[1]));
            RigMeasure width = targets.Class.Rowing == Rowing.Scull ? RigMeasure.Span : RigMeasure.Spread;
            RigTarget[] of =
            [
                Find(targets, width), Find(targets, RigMeasure.Inboard), Find(targets, RigMeasure.OarLength),
                Find(targets, RigMeasure.Height), Find(targets, RigMeasure.Height, Side.Starboard),
            ];
            for (int i = 0; i < of.Length; i++)
            {
                // A sum of figures of two decimals.
                Close.To(double.Parse(row[i + 2], CultureInfo.InvariantCulture), of[i].Value, 1e-9, string.Join(' ', row));
            }

            Assert.Equal(row[7], of[0].Source switch { RigSource.Survey => "survey", RigSource.ClubGuides => "club guides", _ => "ours" });
        });

    /// <summary>"as above ± 2", "42 ± 4", "at most 1", "1 ± 1": of each kind of rowing, of an eight and a single of men.</summary>
    [Fact]
    public void Each_tolerance_is_the_page_s()
    {
        int held = 0;
        foreach (string[] row in MethodPage.Table("Starting targets: tolerances and the rest", 14, Page))
        {
            RigAspect aspect = row[1] switch { "value" => RigAspect.Value, "starboard less port" => RigAspect.Sides, _ => RigAspect.Seats };
            foreach ((string cell, string boatClass) in new[] { (row[2], "1x"), (row[3], "8+") })
            {
                RigTargets targets = RigTargets.Starting(BoatClass.Parse(boatClass), Crew.Men);
                foreach (RigMeasure measure in row[0].Split(", ").Select(w => RigMeasures.OfWord(w.Trim('`'))!.Value).Where(m => m.IsOf(targets.Class.Rowing)))
                {
                    RigTarget? target = targets.Find(measure, aspect, new(1, Side.Port));
                    Assert.Equal(cell.Length > 0, target is not null);
                    if (target is not null)
                    {
                        string[] words = cell.Replace("at most", "0 ±", StringComparison.Ordinal).Replace(" on a side", "", StringComparison.Ordinal).Split(" ± ");
                        Assert.Equal(double.Parse(words[1], CultureInfo.InvariantCulture), target.Tolerance);
                        if (double.TryParse(words[0], CultureInfo.InvariantCulture, out double value))
                        {
                            Assert.Equal(value, target.Value);
                        }

                        held++;
                    }
                }
            }
        }

        Assert.Equal(29, held);
    }

    private static RigTarget Find(RigTargets targets, RigMeasure measure, Side side = Side.Port) =>
        targets.Find(measure, RigAspect.Value, new(1, side))!;
}
