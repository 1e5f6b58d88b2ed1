using System.Collections;
using System.Globalization;
using System.Resources;
using Gatewright.App.Boat;
using Gatewright.App.Explaining;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping;
using Gatewright.App.Keeping.Oars;
using Gatewright.App.Keeping.People;
using Gatewright.App.Keeping.Settings;
using Gatewright.App.Keeping.Standards;
using Gatewright.App.Keeping.Stores;
using Gatewright.App.OnTheWater;
using Gatewright.App.Printing;
using Gatewright.App.Reporting;
using Gatewright.App.Round;
using Gatewright.App.SharingPages;
using Gatewright.App.Shed;
using Gatewright.App.Tests.Look;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Keeping;
using Gatewright.Journal.Members;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Replica.Exchanging;

namespace Gatewright.App.Tests.Frame;

/// <summary>No text waits for a page that never asks for it.</summary>
/// <remarks>
/// A text is asked for where its name stands, whole and in quotation marks, in the folder of its texts or in a file that
/// names them. Names that the program makes of a word and a value are listed here with the values they are made of, so that a
/// value that is no more leaves its text unused.
/// </remarks>
public class UsedTextsTests
{
    /// <summary>The names that are made of values, by the texts they are among.</summary>
    private static readonly Dictionary<Type, IEnumerable<string>> Made = new()
    {
        [typeof(BoatTexts)] = [.. Things.Fields.Values.SelectMany(f => f.Keys).Select(f => "Field." + f), .. Of<ReadingHolds>("Holds.")],
        [typeof(ExplainingTexts)] = Lesson.All.SelectMany(l => new[] { "name-" + l.Name, "lesson-" + l.Name }),
        [typeof(JobsTexts)] =
        [
            .. Of<RecheckOutcome>("Bands"), .. Of<RecheckOutcome>("Says").SelectMany(says => new[] { says, says + "Undone", says + "Partly" }),

            // The codes of the format gatewright.mend/1.
            "Outcome-mended", "Outcome-above-floors", "Outcome-left", "Outcome-read-again",
            "ReadAgain-level", "ReadAgain-gauge", "ReadAgain-riggers", "ReadAgain-doubt",
        ],
        [typeof(KeepingTexts)] = new[] { "Boats", "Racks", "Stores", "Gauges", "Standards", "People", "Sharing", "Settings", "Explain", "Oars", "Print", "Targets", "Stroke" }.Select(p => p + "Line"),
        [typeof(OnTheWaterTexts)] = Of<WishKind>("Kind."),
        [typeof(OarsTexts)] = [.. new[] { nameof(OarForm.Length), nameof(OarForm.Inboard), nameof(OarForm.Weight) }.Select(f => "Wrong" + f), .. Of<OarItem>("Head")],
        [typeof(PrintingTexts)] = [.. PrintPage.Documents, .. PrintPage.Documents.Select(d => d + "Line"), .. PrintPage.Kinds.Select(k => "Of" + k)],
        [typeof(PeopleTexts)] = Enum.GetValues<Role>().SelectMany(r => new[] { r.Word(), r.Word() + "May" }),
        [typeof(SettingsTexts)] = [.. Of<Cause>(string.Empty), .. new[] { "gates", "oars", "boats", "gauges" }.Select(n => n + "-one")],
        [typeof(StandardsTexts)] =
        [
            .. Stations.All.Select(s => s.Word()), .. Things.Fields[Things.Standard].Keys.Select(f => f + "Why"), .. Of<StandardFault>(string.Empty),
            .. Core.Judging.Standard.BuiltIn.SelectMany(s => new[] { s.Name, s.Name + "For" }),
        ],
        [typeof(StoresTexts)] = [.. PartKinds.All.SelectMany(k => new[] { k.Word(), k.Word() + "Line", "one-" + k.Word() }), "otherLine"],
        [typeof(ReportTexts)] = Of<ReportSubject>(string.Empty),
        [typeof(RoundTexts)] = Of<DueReason>("Due"),
        [typeof(SharingPagesTexts)] =
        [
            .. Of<ExchangePhase>("Phase"), "PhaseAlone", "PhaseLeft", .. Of<ServerTrouble>("Trouble"), .. Enum.GetValues<Side>().Select(s => s.Word()),
            .. RefusedEntry.Known.Select(c => "code-" + c), .. typeof(Fact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fact))).Select(t => t.Name),
        ],
        [typeof(ShedTexts)] = Of<ShedChoice>(string.Empty),
    };

    private static readonly IReadOnlyDictionary<string, string> Sources = Directory
        .EnumerateFiles(Tokens.Path("src/Gatewright.App"), "*.*", SearchOption.AllDirectories)
        .Where(file => Path.GetExtension(file) is ".cs" or ".razor")
        .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .ToDictionary(file => file, File.ReadAllText);

    [Theory]
    [MemberData(nameof(TextsTests.All), MemberType = typeof(TextsTests))]
    public void Each_text_is_asked_for(Type texts) => Assert.Empty(Unused(texts, Names(texts)));

    /// <summary>A text that nobody asks for is found, though its name is a word that stands elsewhere in the program.</summary>
    [Theory]
    [MemberData(nameof(TextsTests.All), MemberType = typeof(TextsTests))]
    public void A_text_that_is_added_and_not_asked_for_is_found(Type texts)
    {
        Assert.Equal(["Recompute"], Unused(texts, [.. Names(texts), "Recompute"]));
        Assert.Equal(["OnInitialized"], Unused(texts, ["OnInitialized"]));
    }

    [Fact]
    public void Names_are_made_for_texts_that_are_there() =>
        Assert.All(Made, made => Assert.Contains(made.Value, name => Names(made.Key).Contains(name)));

    private static List<string> Unused(Type texts, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(texts);
        string folder = Path.Combine([Tokens.Path("src/Gatewright.App"), .. texts.Namespace!.Split('.').Skip(2)]) + Path.DirectorySeparatorChar;
        string[] asking = [.. Sources
            .Where(s => s.Key.StartsWith(folder, StringComparison.Ordinal) || s.Value.Contains($"Texts<{texts.Name}>", StringComparison.Ordinal))
            .Select(s => s.Value)];
        HashSet<string> made = [.. Made.GetValueOrDefault(texts) ?? []];
        return [.. names.Where(name => !made.Contains(name) && !asking.Any(source => source.Contains($"\"{name}\"", StringComparison.Ordinal)))];
    }

    private static IEnumerable<string> Of<T>(string before)
        where T : struct, Enum => Enum.GetNames<T>().Select(n => before + n);

    private static IEnumerable<string> Names(Type texts) =>
        new ResourceManager(texts).GetResourceSet(CultureInfo.InvariantCulture, true, false)!.Cast<DictionaryEntry>().Select(e => (string)e.Key);
}
