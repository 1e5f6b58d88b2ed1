using System.Globalization;
using System.Text;

namespace Gatewright.Journal.Keeping;

/// <summary>Keys for things that are new: readable by whoever looks into a file, and no two alike however many devices make them.</summary>
public static class ThingKeys
{
    private const int LongestSlug = 24;

    /// <summary>A key from what the thing is called: "Älteste Möwe" → "aelteste-moewe-3f9a04c2".</summary>
    /// <param name="name">What it is called; it may be renamed later, its key stays.</param>
    /// <param name="chance">A random number that no other device draws.</param>
    /// <returns>Lower-case letters a to z, figures and hyphens, at most 33 of them: never a slash, which parts a boat's key from a seat's number.</returns>
    public static string New(string name, uint chance)
    {
        ArgumentNullException.ThrowIfNull(name);
        string slug = Slug(name);
        string random = chance.ToString("x8", CultureInfo.InvariantCulture);
        return slug.Length == 0 ? random : $"{slug}-{random}";
    }

    private static string Slug(string name)
    {
        var slug = new StringBuilder();
        foreach (char c in Spelled(name))
        {
            if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            {
                slug.Append(c);
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && slug is [.., not '-'])
            {
                slug.Append('-');
            }
        }

        return slug.ToString(0, Math.Min(slug.Length, LongestSlug)).Trim('-');
    }

    /// <summary>German letters as they are spelled without their dots; of all others the marks come apart from the letter.</summary>
    private static string Spelled(string name)
    {
        var known = new StringBuilder(name.Length);
        foreach (char c in name)
        {
            // Half of a pair that lost its other half cannot be taken apart.
            known.Append(char.IsSurrogate(c) ? '-' : c);
        }

        return known.ToString().ToLowerInvariant().Normalize(NormalizationForm.FormC)
            .Replace("ä", "ae", StringComparison.Ordinal)
            .Replace("ö", "oe", StringComparison.Ordinal)
            .Replace("ü", "ue", StringComparison.Ordinal)
            .Replace("ß", "ss", StringComparison.Ordinal)
            .Normalize(NormalizationForm.FormD);
    }
}
