using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Exchange;
using Gatewright.Store;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>Runs <c>gatewright record</c>: read everything, then record it; or say all that is wrong and record nothing.</summary>
internal sealed class RecordRun(Terminal terminal)
{
    private const string So = "Nothing was recorded.";

    /// <summary>As often as somebody else may record the same file at the same moment.</summary>
    private const int MostTries = 3;

    public async Task<Answer> RunAsync(RecordRequest request, CancellationToken cancellation)
    {
        RecordInput input = RecordInput.Read(request, terminal);
        for (int left = MostTries; ; left--)
        {
            var errors = new List<InputProblem>(input.Errors);
            OpenedClub? club = await RecordingClub.OpenAsync(request, errors, cancellation).ConfigureAwait(false);
            IReadOnlyList<Entry> entries = club is null || errors.Count > 0 ? [] : RecordedEntries.Of(input, club, request, errors);
            if (club is null || errors.Count > 0)
            {
                return new Answer.Refused(errors, input.ErrorsBeyond, So);
            }

            try
            {
                await AppendAsync(club, entries, cancellation).ConfigureAwait(false);
                return Recorded.Answer(club, request, entries, input.Warnings);
            }
            catch (EntryConflictException) when (left > 1)
            {
                // The same rows were recorded by somebody else meanwhile: what is on record by now is left out.
            }
        }
    }

    private static async Task AppendAsync(OpenedClub club, IReadOnlyList<Entry> entries, CancellationToken cancellation)
    {
        if (entries.Count > 0)
        {
            await new JournalStore(club.Location).AppendAsync(club.Id, entries, cancellation).ConfigureAwait(false);
        }
    }
}
