using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Tests.Replay;

public sealed class ShelfTests
{
    /// <summary>More than a tree is used for, in any order and in any lots: one shelf, always read from the oldest on.</summary>
    [Property(MaxTest = 60)]
    public Property Whatever_came_in_bulk_or_alone_stands_in_the_journals_order() => Prop.ForAll(
        (from shuffled in Gen.Shuffle(Enumerable.Range(0, 300).Select(i => Journals.Entry(i, new Held("heron", "knock"), i / 3)).ToArray())
         from lots in Gen.Elements(1, 5, 60, 70, 150, 300).ArrayOf(12)
         from looks in Gen.Elements(true, false).ArrayOf(12)
         select (shuffled, lots, looks)).ToArbitrary(),
        given =>
        {
            Club club = Club.Empty(Journals.Club);
            int at = 0;
            for (int i = 0; i < given.lots.Length; i++)
            {
                Recorded[] lot = given.shuffled[at..Math.Min(at + given.lots[i], given.shuffled.Length)];
                Club before = club;
                Recorded[] stood = [.. before.Everything(Subject.Boat("heron"))];
                club = club.With(lot);
                at += lot.Length;
                IReadOnlyCollection<Recorded> shelf = club.Everything(Subject.Boat("heron"));
                if (shelf.Count != at
                    || !shelf.SequenceEqual(given.shuffled[..at].OrderBy(r => r.Entry.Time).ThenBy(r => r.Entry.Id))
                    || (given.looks[i] && !before.Everything(Subject.Boat("heron")).SequenceEqual(stood)))
                {
                    return false;
                }
            }

            return true;
        });
}
