using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange.ChancesFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Exchange.ChancesFiles;

public sealed class ChancesRoundTripTests
{
    [Fact]
    public void A_file_that_says_nothing_but_its_format_is_the_defaults() =>
        Tables.AssertSame(ClubChances.Default, Tables.Of($"{{ {Tables.Format} }}"));

    [Fact]
    public void What_is_left_out_keeps_its_default()
    {
        ClubChances table = Tables.Of($$"""
            {
              {{Tables.Format}}, // a club that knocks its riggers about
              "chances": { "rigger": 0.04 },
              "reports": { "crabEarly": { "width": 0.5, }, },
            }
            """);
        Tables.AssertSame(
            ClubChances.Default with
            {
                Before = PriorChances.Default with { Rigger = 0.04 },
                Reports = ReportLikelihoods.Default with { CrabEarly = ReportLikelihoods.Default.CrabEarly with { WidthDegrees = 0.5 } },
            },
            table);
    }

    /// <summary>Every number by itself, to its last bit: one that is not written, or lands in another's place, shows.</summary>
    [Property]
    public void A_table_is_read_as_it_was_written(int seed)
    {
        var random = new Random(seed);
        ClubChances table = ChanceNumbers.All.Aggregate(ClubChances.Default, (t, number) => number.With(t, Any(number, random))) with
        {
            Jobs = JobRecord.Empty.And(
            [
                new(new CheckedThing.OfGate("=Heron", BoatClass.Parse("4x"), new(3, Side.Starboard)), new(2026, 5, random.Next(1, 31)), Cause.PinOut),
                FinishedJob.Of(new CheckedThing.OfGate("Heron", BoatClass.Parse("8+"), new(2, Side.Port)), new(2026, 5, 2), [Cause.Rigger, Cause.GatePitch]),
                new(new CheckedThing.OfOar("'=Heron", BoatClass.Parse("8+"), new(8, Side.Port)), new(2026, 5, 2), null),
                new(new CheckedThing.OfLevel("Fru Åse \"Ärna\""), new(2026, 5, 3), Cause.HullLevel),
                new(new CheckedThing.OfGauge("G1"), new(1999, 1, 1), Cause.GaugeZero),
            ]),
        };
        string text = ChancesFile.Text(table);

        Tables.AssertSame(table, Tables.Of(text));
        Assert.Equal(text, ChancesFile.Text(Tables.Of(text)));
    }

    /// <summary>A chance low enough that four of them stay below 1; a peak above any base.</summary>
    private static double Any(ChanceNumber number, Random random)
    {
        double share = random.NextDouble();
        return number.Range == NumberRange.Chance ? share / 4
            : number.Key.EndsWith(".base", StringComparison.Ordinal) ? 0.01 + (share / 4)
            : number.Key.EndsWith(".peak", StringComparison.Ordinal) ? 0.5 + (share / 4)
            : number.Range.Least + ((number.Range.Most - number.Range.Least) * (0.001 + (0.99 * share)));
    }
}
