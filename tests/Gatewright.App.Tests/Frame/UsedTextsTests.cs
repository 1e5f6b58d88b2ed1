using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Gatewright.App.Tests.Look;

namespace Gatewright.App.Tests.Frame;

/// <summary>No text waits for a page that never asks for it.</summary>
/// <remarks>
/// Many names are made of a word of the page and the name of a value ("Due" and "Ashore", "code-" and "conflict"): such a name
/// is used where the first is written as text in the app, and the second is a word of the program. This lets a name
/// through that is spelt as something else is; it never asks for one that is needed to go.
/// </remarks>
public partial class UsedTextsTests
{
    private static readonly HashSet<string> Words =
        [.. Source("src").SelectMany(text => Word().Matches(text).Select(m => m.Value))];

    [Theory]
    [MemberData(nameof(TextsTests.All), MemberType = typeof(TextsTests))]
    public void Each_text_is_asked_for(Type texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        string all = string.Concat(Source("src/Gatewright.App"));

        Assert.DoesNotContain(Names(texts), name => !IsUsed(name, all));
    }

    [Theory]
    [InlineData("OneThing", "T[\"OneThing\"]", true)]
    [InlineData("code-string", "T[\"code-\" + code]", true)]
    [InlineData("code-string", "T[\"word-\" + code]", false)]
    [InlineData("AnotherThingThatNobodyNames", "T[\"OneThing\"]", false)]
    public void A_text_is_used_by_its_name_or_by_both_its_parts(string name, string source, bool used) =>
        Assert.Equal(used, IsUsed(name, source));

    private static bool IsUsed(string name, string source) =>
        source.Contains($"\"{name}\"", StringComparison.Ordinal)
        || Words.Contains(name)
        || Enumerable.Range(1, name.Length - 1).Any(cut => IsMadeOf(name[..cut], name[cut..], source));

    private static bool IsMadeOf(string first, string second, string source) =>
        (source.Contains($"\"{first}\"", StringComparison.Ordinal) || source.Contains($"\"{first}{{", StringComparison.Ordinal)
            || (source.Contains($"\"{second}\"", StringComparison.Ordinal) && char.IsAsciiLetterUpper(second[0])))
        && (first[^1] is '.' or '-' || Words.Contains(second) || Words.Contains(first));

    private static IEnumerable<string> Names(Type texts) =>
        new ResourceManager(texts).GetResourceSet(CultureInfo.InvariantCulture, true, false)!.Cast<DictionaryEntry>().Select(e => (string)e.Key);

    private static IEnumerable<string> Source(string folder) => Directory
        .EnumerateFiles(Tokens.Path(folder), "*.*", SearchOption.AllDirectories)
        .Where(file => System.IO.Path.GetExtension(file) is ".cs" or ".razor")
        .Where(file => !file.Contains($"{System.IO.Path.DirectorySeparatorChar}obj{System.IO.Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Select(File.ReadAllText);

    [GeneratedRegex(@"[A-Za-z][A-Za-z0-9]*")]
    private static partial Regex Word();
}
