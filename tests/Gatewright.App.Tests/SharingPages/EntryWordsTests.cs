using System.Resources;
using System.Runtime.CompilerServices;
using Gatewright.App.SharingPages;
using Gatewright.App.Tests.World;
using Gatewright.Journal.Facts;

namespace Gatewright.App.Tests.SharingPages;

public class EntryWordsTests
{
    [Fact]
    public void Every_kind_of_fact_has_words_of_its_own()
    {
        var texts = new ResourceManager(typeof(SharingPagesTexts));
        Type[] facts = [.. typeof(Fact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fact)) && !t.IsAbstract)];
        string[] kinds = [.. facts.Select(t => EntryWords.Kind((Fact)RuntimeHelpers.GetUninitializedObject(t)))];

        Assert.Equal(facts.Select(t => t.Name), kinds);
        Assert.All(kinds, kind => Assert.NotNull(texts.GetString(kind, System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public async Task A_fact_is_told_by_the_name_of_what_it_is_about()
    {
        await using ClubOnDevice club = await ClubOnDevice.StartAsync();
        await club.InHand.RecordAsync(
            new ThingSet(Things.Boat, "b1", new Dictionary<string, string?> { ["name"] = "Grebe" }),
            new JobPlanned("j1", "b1", Core.Diagnosing.Cause.GatePitch, "insert-swap", [], [], []));

        Assert.Equal("Grebe", EntryWords.About(club.InHand.Club, new Held("b1", "knock")));
        Assert.Equal("Grebe", EntryWords.About(club.InHand.Club, new StepDone("j1", 0)));
        Assert.Equal("Grebe", EntryWords.About(club.InHand.Club, new Retracted(club.InHand.Club.All().First(r => r.Fact is JobPlanned).Entry.Id)));
        Assert.Null(EntryWords.About(club.InHand.Club, new StockCounted("pin", 0, 1)));
    }
}
