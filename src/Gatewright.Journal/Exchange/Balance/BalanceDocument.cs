using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange.Balance;

/// <summary>Boats on the water, by a model; docs/balance-format.md describes it. Newtons, newton metres, degrees.</summary>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Pull">Whose pull, as a word.</param>
/// <param name="PeakNewtons">Its peak.</param>
/// <param name="Boats">The boats.</param>
public sealed record BalanceDocument(string Format, string Pull, double PeakNewtons, IReadOnlyList<BalanceOfBoat> Boats)
{
    /// <summary>The format's name and version.</summary>
    public const string Name = "gatewright.balance/1";
}

/// <summary>A boat; of one not read whole the rest is null.</summary>
/// <param name="Boat">Its name.</param>
/// <param name="BoatClass">Its class; the key is <c>class</c>.</param>
/// <param name="MeanRoll">The mean roll moment, positive down to starboard.</param>
/// <param name="Roll">From catch to finish.</param>
/// <param name="Gates">From the bow.</param>
/// <param name="ForRoll">Which gate first for balance: newton metres, root mean square over the drive.</param>
/// <param name="ForLoad">Which gate first so that seats feel alike: newtons, standard deviation.</param>
public sealed record BalanceOfBoat(
    string Boat,
    [property: JsonPropertyName("class")] string BoatClass,
    BalanceFigure? MeanRoll,
    IReadOnlyList<BalancePoint>? Roll,
    IReadOnlyList<BalanceGate>? Gates,
    BalanceChoice? ForRoll,
    BalanceChoice? ForLoad);

/// <summary>A figure with its standard uncertainty; that of the model is not in it.</summary>
public sealed record BalanceFigure(double Value, double U);

/// <summary>The roll moment at an oar angle.</summary>
public sealed record BalancePoint(double Angle, double Value, double U);

/// <summary>A gate, as means over the drive.</summary>
public sealed record BalanceGate(
    int Seat, string Side, BalanceFigure Handle, BalanceFigure FromMean, BalanceFigure Roll, BalanceFigure RollOff, BalanceOar Oar);

/// <summary>The oar in a gate and its arc, in degrees: whether its sleeve was read, and whether the arc follows from the seat's rig.</summary>
public sealed record BalanceOar(BalanceFigure Sleeve, bool IsSleeveRead, BalanceFigure Catch, BalanceFigure Finish, bool IsArcOwn);

/// <summary>What to mend first: what it is now, gates and sleeves by their chance, and the chance that none helps.</summary>
public sealed record BalanceChoice(double Now, double None, IReadOnlyList<BalanceGain> Gates, IReadOnlyList<BalanceTurn> Sleeves);

/// <summary>What mending one gate is expected to take away, and how likely it is the right one.</summary>
public sealed record BalanceGain(int Seat, string Side, double Fall, double Probability);

/// <summary>
/// What turning one sleeve is expected to take away: how far the top of the blade has to come to the bow, in degrees, negative to the
/// stern; and what its oar is called, null where nobody said.
/// </summary>
public sealed record BalanceTurn(int Seat, string Side, string? Oar, BalanceFigure ToBow, double Fall, double Probability);

/// <summary>Writes the document.</summary>
public static class BalanceJson
{
    private static readonly BalanceJsonContext Context = new(WrittenJson.Options());

    /// <summary>The balance of boats as JSON text, without a line end.</summary>
    public static string Text(DriveProfile pull, IEnumerable<(string Boat, string Class, BoatBalance? Balance)> boats)
    {
        ArgumentNullException.ThrowIfNull(pull);
        return JsonSerializer.Serialize(
            new BalanceDocument(BalanceDocument.Name, pull.Name, Four(pull.PeakNewtons), [.. boats.Select(b => Of(b.Boat, b.Class, b.Balance))]),
            Context.BalanceDocument);
    }

    private static BalanceOfBoat Of(string boat, string boatClass, BoatBalance? balance) => balance is null
        ? new(boat, boatClass, null, null, null, null, null)
        : new(
            boat,
            boatClass,
            Of(balance.MeanRoll),
            [.. balance.Roll.Select(p => new BalancePoint(Four(p.At.Degrees), Four(p.Roll.Value), Four(p.Roll.U)))],
            [.. balance.Gates.Select(g => new BalanceGate(
                g.Gate.Seat, g.Gate.Side.Word(), Of(g.Handle), Of(g.FromMean), Of(g.Roll), Of(g.RollOff), Of(g.Oar)))],
            Of(balance.ForRoll),
            Of(balance.ForLoad));

    private static BalanceOar Of(OarOnWater oar) => new(Of(oar.Sleeve), oar.IsSleeveRead, Of(oar.Catch), Of(oar.Finish), oar.IsArcOwn);

    private static BalanceFigure Of(Estimate estimate) => new(Four(estimate.Value.Degrees), Four(estimate.U.Degrees));

    private static BalanceFigure Of(LoadEstimate estimate) => new(Four(estimate.Value), Four(estimate.U));

    private static BalanceChoice Of(MendFirst choice) => new(
        Four(choice.Now),
        Four(choice.None),
        [.. choice.Gates.Select(g => new BalanceGain(g.Gate.Seat, g.Gate.Side.Word(), Four(g.Fall), Four(g.Probability)))],
        [.. choice.Sleeves.Select(s => new BalanceTurn(
            s.Gate.Seat, s.Gate.Side.Word(), s.Oar, Of(s.ToBow), Four(s.Fall), Four(s.Probability)))]);

    /// <summary>Adding 0 turns −0 into 0.</summary>
    private static double Four(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero) + 0.0;
}

/// <summary>Generated at build time; apart from the check's, so that the app need not carry it.</summary>
[JsonSerializable(typeof(BalanceDocument))]
internal sealed partial class BalanceJsonContext : JsonSerializerContext;
