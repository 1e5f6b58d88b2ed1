using Gatewright.Core.Stroke;

namespace Gatewright.App.OnTheWater;

/// <summary>A way to what is wanted, with what it does.</summary>
/// <param name="Answer">What is set.</param>
/// <param name="Change">What that does; null where nothing is set.</param>
/// <param name="After">The stroke after it, with its uncertainty.</param>
public sealed record WishWay(WishAnswer Answer, StrokeChange? Change, MeasuredStroke After);

/// <summary>What was found for some wishes.</summary>
/// <param name="Wishes">The wishes.</param>
/// <param name="Ways">The ways to them, the best first; none where they cannot be met.</param>
/// <param name="Nearest">How near one comes then.</param>
/// <param name="Found">The search's own answer; null where there were more wishes than measures.</param>
/// <param name="Stopping">What stops one at the nearest.</param>
public sealed record WishResult(
    IReadOnlyList<StrokeWish> Wishes, IReadOnlyList<WishWay> Ways, WishWay? Nearest, WishFound? Found, IReadOnlyList<StoppingBound> Stopping)
{
    private const int MostWays = 4;

    /// <summary>Searches for the ways from a stroke.</summary>
    public static WishResult Of(MeasuredStroke before, IReadOnlyList<StrokeWish> wishes, IReadOnlyList<AllowedStep> allowed)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(wishes);
        ArgumentNullException.ThrowIfNull(allowed);
        WishFound? found = wishes.Count > allowed.Count ? null : WishSearch.Of(before.Geometry, wishes, allowed);
        WishWay[] ways = [.. (found?.Answers ?? []).Take(MostWays).Select(a => Way(before, a)).OfType<WishWay>()];
        if (ways.Length > 0)
        {
            return new(wishes, ways, null, found, []);
        }

        NearestRig nearest = NearestRig.Of(before.Geometry, wishes, allowed);
        return new(wishes, [], Way(before, nearest.Nearest), found, nearest.Stopping);
    }

    private static WishWay? Way(MeasuredStroke before, WishAnswer answer)
    {
        StrokeChange? change = answer.Steps.Count == 0 ? null : StrokeChange.Of(before, answer.Steps);
        StrokeGeometry from = before.Geometry;

        // A measure set anew is measured as it was before, with the same tape: its covariance stays.
        MeasuredStroke? after = MeasuredStroke.Of(before.Seat with { Rig = answer.After.Rig }, from.Reach, from.Points);
        return after is null || (change is null && answer.Steps.Count > 0) ? null : new(answer, change, after);
    }
}
