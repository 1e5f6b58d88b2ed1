using Gatewright.Core;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.Journal.Jobs;

/// <summary>Turns a remedy that was chosen into the job that is put on record.</summary>
public static class JobPlan
{
    /// <summary>Between the codes of a job that consists of several remedies.</summary>
    internal const string Both = " + ";

    /// <summary>A job for a remedy.</summary>
    /// <param name="job">The job's key.</param>
    /// <param name="boat">The boat's key.</param>
    /// <param name="remedy">The remedy.</param>
    /// <param name="gate">The gate; null for what the whole boat shares.</param>
    /// <param name="say">The language its steps are put down in.</param>
    public static JobPlanned Of(string job, string boat, Remedy remedy, GatePlace? gate, Wording say)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        ArgumentNullException.ThrowIfNull(say);
        GatePlace? other = Other(remedy, gate);
        return new(
            job,
            boat,
            remedy.Part.Cause,
            remedy.Kind.Code(),
            Steps(remedy, say),
            [.. PartCount.Of(remedy.Parts).Select(c => new PartUsed(c.Part.Kind.Word(), (decimal)c.Part.Size, c.Count))],
            [.. remedy.Expected.Select(Expected).OfType<ExpectedAt>()],
            gate?.Seat,
            gate?.Side,
            other?.Seat,
            other?.Side);
    }

    /// <summary>The second gate that a remedy at one changes: that of the other of two riggers that are exchanged; null of every other.</summary>
    private static GatePlace? Other(Remedy remedy, GatePlace? gate) => remedy is { Kind: RemedyKind.ExchangeRiggers, Part: { Other: { } other } part }
        ? gate == other ? part.Gate : other
        : null;

    /// <summary>The work, step by step; after loosened bolts the last step is to tighten and look.</summary>
    internal static IReadOnlyList<string> Steps(Remedy remedy, Wording say) => remedy.Cautions.Contains(Caution.Bolts)
        ? [.. say.Remedies.Steps(remedy), say.Cautions.Of(Caution.Bolts)]
        : say.Remedies.Steps(remedy);

    private static ExpectedAt? Expected(ExpectedReading expected) => expected.At.Station is { } station
        ? new(station, Tenth(expected.Pitch.Value.Degrees), Tenth(expected.From.Degrees), Tenth(expected.To.Degrees))
        : null;

    /// <summary>To the tenth that is shown: what is judged later goes back to the readings and not to these figures.</summary>
    private static decimal Tenth(double degrees) => Math.Round((decimal)degrees, 1, MidpointRounding.AwayFromZero);
}
