using Gatewright.Journal.Exchange;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing;

namespace Gatewright.Cli.Print;

/// <summary>A document to be made of a shed.</summary>
/// <param name="Document">What it is called for programs: "sheet", "labels".</param>
/// <param name="Make">Makes it; null and an error where that cannot be.</param>
internal sealed record PrintWork(string Document, Func<PrintedShed, List<InputProblem>, PrintedWork?> Make);

/// <summary>A document that was made.</summary>
/// <param name="Content">The file.</param>
/// <param name="Count">How many there are in it of what it is about.</param>
/// <param name="What">What that is: "3 rig sheets".</param>
internal sealed record PrintedWork(byte[] Content, int Count, string What);

/// <summary>A shed to be printed.</summary>
/// <param name="Club">The club, or what files say as one.</param>
/// <param name="Boats">The boats meant, by name.</param>
/// <param name="Imprint">What every page says of itself.</param>
internal sealed record PrintedShed(Club Club, IReadOnlyList<BoatStanding> Boats, Imprint Imprint);
