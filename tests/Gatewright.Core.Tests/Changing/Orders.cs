namespace Gatewright.Core.Tests.Changing;

/// <summary>Every order of a few things, one after the other.</summary>
internal static class Orders
{
    public static IEnumerable<int[]> Of(int size)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        foreach (int[] shorter in Of(size - 1))
        {
            for (int at = 0; at < size; at++)
            {
                yield return [.. shorter[..at], size - 1, .. shorter[at..]];
            }
        }
    }
}
