using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Checking;
using Gatewright.Core.Load;
using Gatewright.Core.Rig;
using Gatewright.Core.Simulating;
using Gatewright.Journal.Exchange.Balance;
using Gatewright.Journal.Oars;

namespace Gatewright.Cli.Balances;

/// <summary>Runs <c>gatewright balance</c>.</summary>
internal sealed class BalanceRun(Terminal terminal)
{
    /// <summary>The same file gives the same answer.</summary>
    private const int Seed = 1;

    public int Run(BalanceRequest request) =>
        request.Place is null ? Show(request) : StoreErrors.Guard(request.Form, terminal, () => Show(request));

    private int Show(BalanceRequest request)
    {
        ShedInput input = ShedInput.Read(new("gatewright balance", request.Files, null, request.Chances, request.Boats, request.Place), terminal);
        if (input.Errors.Count > 0)
        {
            return InputErrors.Tell(input.Errors, input.ErrorsBeyond, request.Form, terminal, "Nothing was told.");
        }

        IReadOnlyList<BalancedBoat> boats = [.. input.Boats.Where(b => b.Current.Readings.Count > 0).Select(b => Of(b, input, request.Pull))];
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => BalanceJson.Text(request.Pull, boats.Select(b => (b.Boat, b.Class, b.Balance))),
            () => BalanceStatements.Of(boats, request.Pull));
        return ExitStatus.Good;
    }

    private static BalancedBoat Of(BoatRecord boat, ShedInput input, DriveProfile pull)
    {
        BoatCheck check = boat.Check(input.SettingsOf(boat));
        SleevesInBoat? sleeves = input.SleevesOf(boat.Current.Boat);
        ShedRig? rig = input.Rigs.FirstOrDefault(r => r.Boat == boat.Current.Boat);
        var seats = SeatsOnWater.Of(
            rig?.Targets ?? RigTargets.Starting(boat.Current.Class, crew: null), Measures(rig), gate => sleeves?.Sleeve(gate), gate => sleeves?.Name(gate));
        return new(
            boat.Current.Boat,
            boat.Current.Class.Name,
            BoatBalance.Of(check, seats, pull, new Draws(new Random(Seed).NextDouble)));
    }

    private static IReadOnlyList<RigReading> Measures(ShedRig? rig) =>
        [.. (rig?.Verdict?.Figures ?? [])
            .Where(f => !f.Figure.IsComputed)
            .Select(f => new RigReading(f.Figure.Measure, f.Figure.Place, f.Figure.Value.Value))];
}

/// <summary>A boat and its balance; null while not every gate was read.</summary>
internal sealed record BalancedBoat(string Boat, string Class, BoatBalance? Balance);
