using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Replay;

/// <summary>An entry together with the fact it is. Two are equal only when they are the same object.</summary>
/// <remarks>
/// From a snapshot it comes with what it is about and reads its fact when first asked: most entries of an old club are
/// never asked. Two threads that ask at once read the same bytes, and either's answer will do.
/// </remarks>
public sealed class Recorded
{
    private Fact? _fact;

    /// <summary>An entry whose fact is known.</summary>
    public Recorded(Entry entry, Fact fact)
        : this(entry, Subject.Of(fact), (fact as Retracted)?.Entry) => _fact = fact;

    /// <summary>An entry that was let in before, with what was known of it then.</summary>
    internal Recorded(Entry entry, Subject about, Guid? retracts) => (Entry, About, Retracts) = (entry, about, retracts);

    /// <summary>The entry: who, when, where.</summary>
    public Entry Entry { get; }

    /// <summary>What.</summary>
    public Fact Fact => _fact ??= Of(Entry).Fact;

    /// <summary>The fact, if it is of a kind; null otherwise, and then it need not even be read.</summary>
    internal T? As<T>()
        where T : Fact => _fact is not null || Entry.Kind == FactKinds.NameOf<T>() ? Fact as T : null;

    /// <summary>Whether the fact has been read from the entry.</summary>
    internal bool IsRead => _fact is not null;

    /// <summary>The shelf it is filed on.</summary>
    internal Subject About { get; }

    /// <summary>The entry that it takes back, if it takes one back.</summary>
    internal Guid? Retracts { get; }

    /// <summary>Whether another is of the same entry: one that comes back from where it was sent is an object of its own.</summary>
    internal bool IsLike(Recorded other) => ReferenceEquals(Entry, other.Entry)
        || (Entry.Id == other.Entry.Id
            && Entry.Time == other.Entry.Time
            && Entry.Member == other.Entry.Member
            && Entry.Device == other.Entry.Device
            && Entry.Kind == other.Entry.Kind
            && Entry.Version == other.Entry.Version
            && Entry.Body.Span.SequenceEqual(other.Entry.Body.Span));

    /// <summary>An entry, read.</summary>
    /// <exception cref="FormatException">A known kind whose body cannot be read: such an entry is never let into a journal.</exception>
    public static Recorded Of(Entry entry) =>
        FactKinds.Read(entry, out string? problem) is { } fact ? new(entry, fact) : throw new FormatException(problem);
}
