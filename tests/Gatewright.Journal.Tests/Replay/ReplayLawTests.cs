using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Tests.Replay;

public sealed class ReplayLawTests
{
    [Property(MaxTest = 400)]
    public Property Any_order_with_any_duplicates_gives_the_same_club() => Prop.ForAll(
        (from entries in Journals.Any
         from twice in Gen.SubListOf(entries)
         from shuffled in Gen.Shuffle([.. entries, .. twice])
         select (entries, shuffled)).ToArbitrary(),
        given => ClubPicture.Of(Whole(given.entries)) == ClubPicture.Of(Whole(given.shuffled)));

    [Property(MaxTest = 400)]
    public Property One_at_a_time_gives_what_all_at_once_gives() => Prop.ForAll(
        Journals.Any.ToArbitrary(),
        entries => ClubPicture.Of(entries.Aggregate(Club.Empty(Journals.Club), (club, entry) => club.With(entry)))
            == ClubPicture.Of(Whole(entries)));

    [Property(MaxTest = 400)]
    public Property Two_replicas_that_exchange_what_each_lacks_become_the_same() => Prop.ForAll(
        (from entries in Journals.Any
         from here in Gen.SubListOf(entries)
         from there in Gen.SubListOf(entries)
         select (here, there)).ToArbitrary(),
        given =>
        {
            Club one = Whole(given.here);
            Club other = Whole(given.there);
            return ClubPicture.Of(one.With(other.All())) == ClubPicture.Of(other.With(one.All()));
        });

    /// <summary>Pieces of a few and of hundreds: a club files many at once in another way than one by one.</summary>
    [Property(MaxTest = 60)]
    public Property In_pieces_of_any_size_a_large_club_is_the_same() => Prop.ForAll(
        (from entries in Gen.CollectToArray(Enumerable.Range(0, 12), part => Journals.Many(40 * part, 40))
         from cuts in Gen.Choose(0, 479).ListOf(6)
         select (entries: entries.SelectMany(e => e).ToArray(), cuts: cuts.Append(0).Append(480).Order().ToArray())).ToArbitrary(),
        given =>
        {
            Club club = Club.Empty(Journals.Club);
            foreach ((int from, int to) in given.cuts.Zip(given.cuts.Skip(1)))
            {
                // Half of what is there comes again each time.
                club = club.With(given.entries[(from / 2)..to]);
            }

            return ClubPicture.Of(club) == ClubPicture.Of(Whole(given.entries))
                && given.entries.All(e => club.Find(e.Entry.Id) is not null);
        });

    [Property(MaxTest = 200)]
    public Property The_club_as_of_an_instant_is_the_club_of_the_entries_up_to_it() => Prop.ForAll(
        Journals.Any.ToArbitrary(),
        Gen.Choose(0, 5).ToArbitrary(),
        (entries, ms) => ClubPicture.Of(Whole(entries).AsOf(DateTimeOffset.FromUnixTimeMilliseconds(ms)))
            == ClubPicture.Of(Whole([.. entries.Where(e => e.Entry.Time.Milliseconds <= ms)])));

    [Property(MaxTest = 400)]
    public Property An_entry_is_retracted_when_some_later_retraction_of_it_is_not() => Prop.ForAll(
        Journals.Any.ToArbitrary(),
        entries =>
        {
            Club club = Whole(entries);
            return entries.All(entry => club.IsRetracted(entry) == ByDefinition(entry, entries));
        });

    private static Club Whole(IEnumerable<Recorded> entries) => Club.Empty(Journals.Club).With(entries);

    /// <summary>The definition itself, word for word; slow, and independent of how the club searches.</summary>
    private static bool ByDefinition(Recorded entry, IReadOnlyList<Recorded> all) =>
        all.Any(r => r.Fact is Journal.Facts.Retracted retraction
            && retraction.Entry == entry.Entry.Id
            && Journal.Entries.EntryOrder.Instance.Compare(r.Entry, entry.Entry) > 0
            && !ByDefinition(r, all));
}
