namespace Gatewright.Drawings;

/// <summary>A straight scale: values from one end to the other on a length of the drawing, either of which may run backwards.</summary>
/// <param name="From">The value at the start.</param>
/// <param name="To">The value at the end, another one.</param>
/// <param name="Start">Where the scale starts on the drawing.</param>
/// <param name="End">Where it ends.</param>
public readonly record struct Scale(double From, double To, double Start, double End)
{
    /// <summary>Where a value stands; beyond the ends when it is outside.</summary>
    public double this[double value] => Start + ((value - From) / (To - From) * (End - Start));

    /// <summary>Whole degrees from the lowest to the highest value, at most nine of them.</summary>
    public IEnumerable<int> WholeDegrees
    {
        get
        {
            int lowest = (int)Math.Ceiling(Math.Min(From, To));
            int highest = (int)Math.Floor(Math.Max(From, To));
            int each = Math.Max(1, (highest - lowest + 8) / 9);
            return Enumerable.Range(lowest, highest - lowest + 1).Where(degree => degree % each == 0);
        }
    }
}
