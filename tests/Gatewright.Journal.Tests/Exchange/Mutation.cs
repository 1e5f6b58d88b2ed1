namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Files spoilt at random, the same each time.</summary>
internal static class Mutation
{
    /// <summary>So many files, each one of some with one to four places changed.</summary>
    public static IEnumerable<(byte[] File, string Which)> Of(byte[][] files, byte[][] scraps, int seed, int count)
    {
        var random = new Random(seed);
        for (int i = 0; i < count; i++)
        {
            List<byte> file = [.. files[random.Next(files.Length)]];
            for (int change = random.Next(1, 5); change > 0; change--)
            {
                Change(file, scraps, random);
            }

            yield return ([.. file], $"seed {seed}, mutant {i}");
        }
    }

    private static void Change(List<byte> file, byte[][] scraps, Random random)
    {
        int at = random.Next(file.Count + 1);
        int length = Math.Min(random.Next(1, 12), file.Count - at);
        switch (random.Next(5))
        {
            case 0 when at < file.Count:
                file[at] = (byte)random.Next(256);
                break;
            case 1:
                file.RemoveRange(at, length);
                break;
            case 2:
                file.InsertRange(random.Next(file.Count + 1), file.GetRange(at, length));
                break;
            default:
                file.InsertRange(at, scraps[random.Next(scraps.Length)]);
                break;
        }
    }
}
