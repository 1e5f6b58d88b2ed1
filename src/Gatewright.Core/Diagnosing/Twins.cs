using Gatewright.Core.Numerics;

namespace Gatewright.Core.Diagnosing;

/// <summary>Two causes that the readings taken cannot tell apart, since both change them alike.</summary>
/// <param name="One">One cause.</param>
/// <param name="Other">The other.</param>
/// <param name="Alike">
/// How much of what one does to the readings the other does too, 0 to 1: the squared cosine of the angle between
/// their effects, each reading weighed by how well it is known.
/// </param>
public sealed record Twins(CausePart One, CausePart Other, double Alike);

/// <summary>Finds causes that read the same.</summary>
internal static class TwinSearch
{
    /// <summary>Below this share the readings do tell two causes apart, if only just.</summary>
    private const double AlikeEnough = 0.8;

    /// <summary>A cause less likely than this is not worth confusing another with.</summary>
    private const double LikelyEnough = 0.1;

    public static List<Twins> Of(EvidenceKernel kernel, IReadOnlyList<Opening> openings, double[] probabilities)
    {
        List<Opening> likely = [.. openings.Where((_, i) => probabilities[i] >= LikelyEnough)];
        var twins = new List<Twins>();
        for (int i = 0; i < likely.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double alike = likely[i].Unknowns.Intersect(likely[j].Unknowns).Any()
                    ? AlikeIfRestUnseen(kernel, likely[i], likely[j])
                    : Math.Min(1, Alike(kernel, likely[i], likely[j]));
                if (alike >= AlikeEnough)
                {
                    twins.Add(new(likely[j].Part, likely[i].Part, alike));
                }
            }
        }

        return [.. twins.OrderByDescending(t => t.Alike)];
    }

    /// <summary>The least that the wider cause explains of any one effect of the narrower: m_xF M_FF⁻¹ m_Fx / m_xx.</summary>
    private static double Alike(EvidenceKernel kernel, Opening one, Opening other)
    {
        (Opening narrow, Opening wide) = one.Unknowns.Length <= other.Unknowns.Length ? (one, other) : (other, one);
        int size = kernel.Model.Layout.Size;
        int count = wide.Unknowns.Length;
        double[] inner = new double[count * count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                inner[(i * count) + j] = kernel.Information[(wide.Unknowns[i] * size) + wide.Unknowns[j]];
            }
        }

        // A wider cause that no reading sees in one of its ways (a lean out, abeam) is compared by the others alone.
        if (!Cholesky.Factor(inner, count))
        {
            return count == 1 ? 0 : wide.Unknowns.Max(u => Share(kernel, narrow, u));
        }

        return narrow.Unknowns.Min(unknown =>
        {
            double[] cross = [.. wide.Unknowns.Select(u => kernel.Information[(u * size) + unknown])];
            double whole = kernel.Information[(unknown * size) + unknown];
            Cholesky.SolveLower(inner, count, cross);
            return whole > 0 ? Cholesky.Dot(cross, cross) / whole : 0;
        });
    }

    /// <summary>
    /// A rigger's two leans include each pin's one: that is not likeness but one being part of the other, unless no
    /// reading sees the rest (abeam, a lean out).
    /// </summary>
    private static double AlikeIfRestUnseen(EvidenceKernel kernel, Opening one, Opening other)
    {
        int size = kernel.Model.Layout.Size;
        IEnumerable<int> rest = one.Unknowns.Except(other.Unknowns).Concat(other.Unknowns.Except(one.Unknowns));
        return rest.All(unknown => kernel.Information[(unknown * size) + unknown] <= 0) ? 1 : 0;
    }

    private static double Share(EvidenceKernel kernel, Opening narrow, int unknown)
    {
        int size = kernel.Model.Layout.Size;
        double own = kernel.Information[(unknown * size) + unknown];
        return narrow.Unknowns.Min(u =>
        {
            double cross = kernel.Information[(u * size) + unknown];
            double product = own * kernel.Information[(u * size) + u];
            return product > 0 ? cross * cross / product : 0;
        });
    }
}
