using System.Globalization;
using System.Text.RegularExpressions;

namespace Gatewright.App.Tests.Look;

/// <summary>The colours that the app's style names, as light and dark have them.</summary>
internal static partial class Tokens
{
    /// <summary>In daylight.</summary>
    public static IReadOnlyDictionary<string, Colour> Light { get; } = Of(0);

    /// <summary>At dusk.</summary>
    public static IReadOnlyDictionary<string, Colour> Dark { get; } = Of(1);

    /// <summary>At dusk, for whoever chose it against what the device says.</summary>
    public static IReadOnlyDictionary<string, Colour> ChosenDark { get; } = Of(2);

    /// <summary>In daylight, for whoever asks their device for more contrast.</summary>
    public static IReadOnlyDictionary<string, Colour> Contrasting { get; } = MoreContrast();

    /// <summary>A file of the project.</summary>
    public static string Read(string path) => File.ReadAllText(Path(path));

    /// <summary>Where a file or folder of the project is.</summary>
    public static string Path(string path)
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(System.IO.Path.Combine(folder, "Gatewright.slnx")))
        {
            folder = System.IO.Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run inside the project.");
        }

        return System.IO.Path.Combine(folder, path);
    }

    private static Dictionary<string, Colour> Of(int which) =>
        In(Block().Matches(Style).Select(b => b.Value).Where(b => b.Contains("--touch:", StringComparison.Ordinal)).ElementAt(which));

    private static Dictionary<string, Colour> In(string block) =>
        Token().Matches(block).ToDictionary(m => m.Groups[1].Value, m => Colour.Parse(m.Groups[2].Value));

    /// <summary>What holds then: the rules of a bare root give way to those of the dusk, which name more, and replace those of the day.</summary>
    private static Dictionary<string, Colour> MoreContrast()
    {
        Match rules = Contrast().Match(Style);
        Assert.Equal(":root", rules.Groups[1].Value.Trim());
        Assert.True(rules.Index > Style.IndexOf(":root {", StringComparison.Ordinal));
        var tokens = new Dictionary<string, Colour>(Light);
        foreach ((string name, Colour colour) in In(rules.Value))
        {
            tokens[name] = colour;
        }

        return tokens;
    }

    private static string Style => Read("src/Gatewright.App/wwwroot/look.css");

    [GeneratedRegex(@"prefers-contrast: more\) \{([^{]*)\{[^}]*\}")]
    private static partial Regex Contrast();

    [GeneratedRegex(@":root[^{]*\{[^}]*\}")]
    private static partial Regex Block();

    [GeneratedRegex(@"--([\w-]+):\s*(#[0-9a-f]{6})")]
    private static partial Regex Token();
}

/// <summary>A colour of sRGB, as light: each channel linear, 0 to 1.</summary>
internal readonly record struct Colour(double Red, double Green, double Blue)
{
    /// <summary>Relative luminance. WCAG 2.2, definition "relative luminance".</summary>
    public double Luminance => (0.2126 * Red) + (0.7152 * Green) + (0.0722 * Blue);

    /// <summary>Reads #rrggbb.</summary>
    public static Colour Parse(string hex) => new(Channel(hex[1..3]), Channel(hex[3..5]), Channel(hex[5..7]));

    /// <summary>WCAG 2.2, definition "contrast ratio".</summary>
    public double Contrast(Colour other) =>
        (Math.Max(Luminance, other.Luminance) + 0.05) / (Math.Min(Luminance, other.Luminance) + 0.05);

    /// <summary>As seen through a matrix that takes away one kind of cone.</summary>
    public Colour Through(double[,] m) => new(
        Mixed(m, 0), Mixed(m, 1), Mixed(m, 2));

    /// <summary>Difference in CIELAB: ISO/CIE 11664-4, Euclidean; white point D65.</summary>
    public double Difference(Colour other)
    {
        (double l, double a, double b) = Lab;
        (double ol, double oa, double ob) = other.Lab;
        return Math.Sqrt(((l - ol) * (l - ol)) + ((a - oa) * (a - oa)) + ((b - ob) * (b - ob)));
    }

    private (double L, double A, double B) Lab
    {
        get
        {
            double x = Bent(((0.4124 * Red) + (0.3576 * Green) + (0.1805 * Blue)) / 0.95047);
            double y = Bent((0.2126 * Red) + (0.7152 * Green) + (0.0722 * Blue));
            double z = Bent(((0.0193 * Red) + (0.1192 * Green) + (0.9505 * Blue)) / 1.08883);
            return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));
        }
    }

    private static double Channel(string hex)
    {
        double value = int.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static double Bent(double t) => t > 0.008856 ? Math.Cbrt(t) : (7.787 * t) + (16.0 / 116);

    private double Mixed(double[,] m, int row) =>
        Math.Clamp((m[row, 0] * Red) + (m[row, 1] * Green) + (m[row, 2] * Blue), 0, 1);
}
