using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Jobs;

/// <summary>Turns a job of the whole shed's plan into the job that is put on record, with the parts that the plan gives it.</summary>
public static class JobOfPlan
{
    /// <summary>The job; null where the plan names a remedy, a part or a place that this program does not know.</summary>
    /// <param name="job">The key it is to have.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="planned">The job as the plan has it.</param>
    public static JobPlanned? Of(string job, string boat, PlannedJob planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        RemedyKind[] kinds = [.. RemedyKinds.All.Where(k => planned.Steps.Contains(k.Code()))];
        if (kinds.Length == 0 || kinds.Length != planned.Steps.Count || Sides.OfWord(planned.Side) is not { } side)
        {
            return null;
        }

        return new(
            job,
            boat,
            Cause(planned, kinds),
            string.Join(JobPlan.Both, planned.Steps),
            [planned.Instruction],
            [.. planned.Parts.GroupBy(p => (p.Part, p.Size)).Select(g => new PartUsed(g.Key.Part, (decimal)g.Key.Size, g.Count()))],
            [.. planned.Expected.Select(Expected).OfType<ExpectedAt>()],
            planned.Seat,
            side);
    }

    /// <summary>The likely cause where the plan makes up for it, else what its first remedy sets right.</summary>
    private static Cause Cause(PlannedJob planned, RemedyKind[] kinds)
    {
        foreach (Cause cause in Causes.All)
        {
            if (cause.Code() == planned.MakesUpFor)
            {
                return cause;
            }
        }

        return kinds[0] switch
        {
            RemedyKind.PinFootShim or RemedyKind.StraightenPin or RemedyKind.ReplacePin => Core.Diagnosing.Cause.PinAft,
            RemedyKind.PlateWasher => Core.Diagnosing.Cause.PinOut,
            RemedyKind.Backstay or RemedyKind.SetRigger or RemedyKind.RefitRigger or RemedyKind.RepairRigger => Core.Diagnosing.Cause.Rigger,
            _ => Core.Diagnosing.Cause.GatePitch,
        };
    }

    /// <summary>To the tenth, as a job's own plan has it; null for what is read between the stations.</summary>
    private static ExpectedAt? Expected(CheckedExpectation expected)
    {
        foreach (Station station in Stations.All)
        {
            if (station.Word() == expected.At)
            {
                return new(station, Tenth(expected.Value), Tenth(expected.From), Tenth(expected.To));
            }
        }

        return null;
    }

    private static decimal Tenth(double degrees) => Math.Round((decimal)degrees, 1, MidpointRounding.AwayFromZero);
}
