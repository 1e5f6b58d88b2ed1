using System.Globalization;
using Gatewright.Bench.Reporting;
using MathNet.Numerics;

namespace Gatewright.Bench.Kernels;

/// <summary>A kernel of ours beside MathNet's: the ratio of their times, once they have given the same answer.</summary>
internal static class BesideMathNet
{
    /// <param name="what">The task.</param>
    /// <param name="ours">A benchmark method of <typeparamref name="T"/>.</param>
    /// <param name="theirs">Another, with the same result.</param>
    /// <exception cref="InvalidOperationException">The results differ.</exception>
    public static Measured Compare<T>(string what, Func<double> ours, Func<double> theirs)
    {
        // Nothing here is large enough to share among threads, and sharing it would only slow MathNet down.
        Control.UseManaged();
        Control.UseSingleThread();
        RequireSame(ours(), theirs());
        var times = Kernel.Nanoseconds<T>();
        (double our, double their) = (times[ours.Method.Name], times[theirs.Method.Name]);
        string note = string.Create(CultureInfo.InvariantCulture, $"{our / 1000:G3} µs beside {their / 1000:G3} µs");
        return new(Target.AtMost(1, "of MathNet's time", what), our / their, note);
    }

    private static void RequireSame(double ours, double theirs)
    {
        // Both problems are well conditioned: more than rounding between the two is a fault.
        if (!(Math.Abs(ours - theirs) <= 1e-9 * Math.Max(1, Math.Abs(theirs))))
        {
            throw new InvalidOperationException($"The two methods differ: {ours} and {theirs}.");
        }
    }
}
