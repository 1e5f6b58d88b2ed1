using Gatewright.Journal.Exchange;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.CheckShed;

/// <summary>What is odd about a club's shelf.</summary>
internal static class OddShelf
{
    /// <summary>Parts of which more went out than came in: taken as none.</summary>
    public static IEnumerable<InputProblem> Of(Club club) => ClubShelf.Parts(club)
        .Where(p => p.Count < 0)
        .Select(p => new InputProblem("stores", null, null, p.Part.ToString(), FormattableString.Invariant(
            $"{-p.Count} more went out than came in: taken as none. Count the shelf.")));
}
