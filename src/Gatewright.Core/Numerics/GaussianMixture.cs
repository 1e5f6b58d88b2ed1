using System.Globalization;

namespace Gatewright.Core.Numerics;

/// <summary>
/// A quantity that is normal under each of several stories, each story with its probability: what is known of it
/// when the stories are averaged over.
/// </summary>
/// <remarks>
/// Kept whole, not collapsed to a mean and a width: a gate that is probably healthy and perhaps badly out has a
/// tail that no single normal has, and the tail is what a safety floor asks about.
/// </remarks>
public sealed class GaussianMixture
{
    private readonly double[] _weights;
    private readonly double[] _means;
    private readonly double[] _deviations;

    /// <summary>A mixture; the weights are scaled to sum to 1. A deviation of 0 is a value known exactly.</summary>
    /// <exception cref="ArgumentException">
    /// No component, or lengths that differ, or weights that sum to nothing; a weight or deviation below 0, or a value
    /// that is not finite.
    /// </exception>
    public GaussianMixture(ReadOnlySpan<double> weights, ReadOnlySpan<double> means, ReadOnlySpan<double> deviations)
    {
        double total = 0;
        foreach (double weight in weights)
        {
            total += weight;
        }

        if (!(total > 0) || means.Length != weights.Length || deviations.Length != weights.Length)
        {
            throw new ArgumentException("A mixture needs as many means and deviations as weights, and some weight.", nameof(weights));
        }

        for (int i = 0; i < weights.Length; i++)
        {
            if (!(weights[i] >= 0 && deviations[i] >= 0 && double.IsFinite(weights[i] + deviations[i] + means[i])))
            {
                throw new ArgumentException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"Component {i} has weight {weights[i]}, mean {means[i]} and deviation {deviations[i]}: all must be finite, weight and deviation 0 or more."));
            }
        }

        _weights = new double[weights.Length];
        for (int i = 0; i < weights.Length; i++)
        {
            _weights[i] = weights[i] / total;
        }

        _means = means.ToArray();
        _deviations = deviations.ToArray();
    }

    /// <summary>The mean over all stories.</summary>
    public double Mean => Cholesky.Dot(_weights, _means);

    /// <summary>The standard deviation over all stories: what varies within them and between them.</summary>
    public double Sd
    {
        get
        {
            double mean = Mean;
            double variance = 0;
            for (int i = 0; i < _weights.Length; i++)
            {
                double off = _means[i] - mean;
                variance += _weights[i] * ((_deviations[i] * _deviations[i]) + (off * off));
            }

            return Math.Sqrt(variance);
        }
    }

    /// <summary>The probability of lying above a value; of a component known exactly to be that value, half.</summary>
    public double Above(double value)
    {
        double sum = 0;
        for (int i = 0; i < _weights.Length; i++)
        {
            double off = value - _means[i];
            sum += _weights[i] * Normal.Above(off == 0 ? 0 : off / _deviations[i]);
        }

        return sum;
    }
}
