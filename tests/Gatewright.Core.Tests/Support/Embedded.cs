using System.Globalization;

namespace Gatewright.Core.Tests.Support;

/// <summary>Text that the test assembly carries, so that the tests run from a bare clone and from anywhere.</summary>
internal static class Embedded
{
    public static IReadOnlyList<string> Lines(string name)
    {
        using Stream stream = typeof(Embedded).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"There is no embedded {name}.", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n');
    }

    /// <summary>The rows of a table of numbers; lines that start with # say what it is and where it is from.</summary>
    public static double[][] Table(string name) =>
    [
        .. Lines($"Published/{name}.txt")
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))
                .ToArray()),
    ];
}
