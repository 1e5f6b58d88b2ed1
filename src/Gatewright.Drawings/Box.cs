namespace Gatewright.Drawings;

/// <summary>An upright rectangle on a drawing, in its own units.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its upper edge.</param>
/// <param name="Width">How wide, 0 or more.</param>
/// <param name="Height">How high, 0 or more.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>The right edge.</summary>
    public double Right => X + Width;

    /// <summary>The lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The same rectangle, smaller by so much on each side.</summary>
    public Box Inset(double by) => new(X + by, Y + by, Width - (2 * by), Height - (2 * by));
}
