using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;

namespace Gatewright.Journal.Tests.Members;

/// <summary>Asked by the kind of a fact, the rules answer what they answer of the fact itself.</summary>
public class RecordingRulesTests
{
    public static TheoryData<Role> All => [.. Enum.GetValues<Role>()];

    [Theory]
    [MemberData(nameof(All))]
    public void A_kind_is_answered_as_a_fact_of_it_is(Role role)
    {
        Assert.Equal(RecordingRules.May(role, new Held("b", "cracked")), RecordingRules.May<Held>(role));
        Assert.Equal(RecordingRules.May(role, new Released("b", "mended")), RecordingRules.May<Released>(role));
        Assert.Equal(RecordingRules.May(role, new Reported("b", ReportKind.Knock)), RecordingRules.May<Reported>(role));
        Assert.Equal(RecordingRules.May(role, new Retracted(Guid.Empty)), RecordingRules.May<Retracted>(role));
        Assert.Equal(RecordingRules.May(role, new RoundStarted("r")), RecordingRules.May<RoundStarted>(role));
        Assert.Equal(RecordingRules.May(role, new JobDone("j")), RecordingRules.May<JobDone>(role));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Properties_and_notes_go_by_what_they_are_of(Role role) => Assert.All(Things.Fields.Keys, thing =>
    {
        Assert.Equal(RecordingRules.May(role, new ThingSet(thing, "k", new Dictionary<string, string?>())), RecordingRules.May<ThingSet>(role, thing));
        Assert.Equal(RecordingRules.May(role, new Noted(thing, "k", "scratched")), RecordingRules.May<Noted>(role, thing));
    });

    [Fact]
    public void Without_a_thing_every_kind_of_thing_is_meant()
    {
        Assert.True(RecordingRules.May<ThingSet>(Role.Helper, Things.Boat));
        Assert.False(RecordingRules.May<ThingSet>(Role.Helper));
        Assert.True(RecordingRules.May<Noted>(Role.Crew, Things.Boat));
        Assert.False(RecordingRules.May<Noted>(Role.Crew));
        Assert.True(RecordingRules.May<ThingSet>(Role.Keeper));
    }

    /// <summary>Who may do what, as the page on people says.</summary>
    [Theory]
    [InlineData(Role.Keeper, true, true, true)]
    [InlineData(Role.Helper, true, false, true)]
    [InlineData(Role.Coach, true, true, false)]
    [InlineData(Role.Crew, false, false, false)]
    public void Each_role_does_its_own(Role role, bool holds, bool releases, bool reads)
    {
        Assert.Equal(holds, RecordingRules.May<Held>(role));
        Assert.Equal(releases, RecordingRules.May<Released>(role));
        Assert.Equal(reads, RecordingRules.May<ReadingTaken>(role));
    }
}
