using Gatewright.Cli.Terminals;
using Gatewright.Core;

namespace Gatewright.Cli.Simulate;

/// <summary>What was asked of <c>gatewright simulate</c>.</summary>
/// <param name="Boats">How many boats to draw.</param>
/// <param name="Class">Their class.</param>
/// <param name="Stations">Where each gate is read.</param>
/// <param name="First">The station of the round after which advice is followed.</param>
/// <param name="Seed">Where the random numbers begin: the same seed draws the same boats.</param>
/// <param name="Chances">A file with the club's table of chances, which boats are drawn and weighed by; null for the defaults.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record SimulateRequest(
    int Boats,
    BoatClass Class,
    IReadOnlyList<Station> Stations,
    Station First,
    int Seed,
    string? Chances,
    Form Form,
    int? Width);
