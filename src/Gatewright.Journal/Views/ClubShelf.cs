using Gatewright.Core.Mending;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>What lies on a club's shelf, by its journal, as the core takes it.</summary>
public static class ClubShelf
{
    /// <summary>The parts, those of which more went out than came in taken as none; null when none was ever counted.</summary>
    public static Stores? Of(Club club)
    {
        List<PartCount> parts = [.. Parts(club).Select(p => p with { Count = Math.Max(p.Count, 0) })];
        return parts.Count == 0 ? null : Stores.Of(parts);
    }

    /// <summary>Every part on the shelf by kind and size, with its true count: below 0 where more went out than came in.</summary>
    public static IEnumerable<PartCount> Parts(Club club) => StoresView.Of(club)
        .SelectMany(line => PartKinds.All
            .Where(kind => kind.Word() == line.Key.Part)
            .Select(kind => new PartCount(new(kind, (double)line.Key.Size), line.Value)))
        .OrderBy(p => p.Part);
}
