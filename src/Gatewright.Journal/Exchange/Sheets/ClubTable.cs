using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Exchange.Sheets;

/// <summary>One table of a club.</summary>
/// <param name="File">The name of its file, such as boats.csv.</param>
/// <param name="Write">Writes the club's table; the writer is neither flushed nor closed.</param>
public sealed record ClubTable(string File, Action<Club, TextWriter> Write);
