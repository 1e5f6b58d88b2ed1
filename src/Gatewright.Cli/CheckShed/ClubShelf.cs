using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.CheckShed;

/// <summary>What lies on a club's shelf, by its journal.</summary>
internal static class ClubShelf
{
    /// <summary>The parts; null when none was ever counted.</summary>
    public static Stores? Of(Club club)
    {
        List<PartCount> parts = [.. Parts(club).Select(p => new PartCount(p.Part, Math.Max(p.Count, 0)))];
        return parts.Count == 0 ? null : Stores.Of(parts);
    }

    /// <summary>Parts of which more went out than came in: taken as none.</summary>
    public static IEnumerable<InputProblem> Odd(Club club) => Parts(club)
        .Where(p => p.Count < 0)
        .Select(p => new InputProblem("stores", null, null, p.Part.ToString(), FormattableString.Invariant(
            $"{-p.Count} more went out than came in: taken as none. Count the shelf.")));

    private static IEnumerable<(Part Part, int Count)> Parts(Club club) => StoresView.Of(club)
        .SelectMany(line => PartKinds.All
            .Where(kind => kind.Word() == line.Key.Part)
            .Select(kind => (new Part(kind, (double)line.Key.Size), line.Value)))
        .OrderBy(p => p.Item1);
}
