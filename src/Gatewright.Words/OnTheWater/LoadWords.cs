using Gatewright.Core.Load;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;

namespace Gatewright.Words.OnTheWater;

/// <summary>What is said of a boat's balance on the water, always as of a model.</summary>
public sealed class LoadWords
{
    private readonly Wording _say;

    internal LoadWords(Wording say) => _say = say;

    /// <summary>What it is: a model, for differences and directions.</summary>
    public string Caution => _say.Text("Load.Caution");

    /// <summary>What was measured against such a model.</summary>
    public string Measured => _say.Text("Load.Measured");

    /// <summary>What the model rests on, a sentence each.</summary>
    public IReadOnlyList<string> Assumptions =>
        [_say.Text("Load.Assumes.Pull"), _say.Text("Load.Assumes.Angles"), _say.Text("Load.Assumes.Lift"), _say.Text("Load.Assumes.Oars"), _say.Text("Load.Assumes.Gates"), _say.Text("Load.Assumes.Still")];

    /// <summary>That not every gate was read.</summary>
    public string NotWhole => _say.Text("Load.NotWhole");

    /// <summary>A roll moment with its direction: "12 ± 5 N m, down to port".</summary>
    public string Roll(LoadEstimate roll)
    {
        (string size, string u) = (Whole(Math.Abs(roll.Value)), Whole(roll.U));
        return size == "0" ? _say.Text("Figure.Bare", size, u) + " N m"
            : roll.Value > 0 ? _say.Text("Load.Roll.Starboard", size, u)
            : _say.Text("Load.Roll.Port", size, u);
    }

    /// <summary>A force: "-3.1 ± 1.2 N".</summary>
    public string Force(LoadEstimate force) =>
        _say.Text("Figure.Bare", _say.Figures.Degrees(force.Value), _say.Figures.Degrees(force.U)) + " N";

    /// <summary>
    /// How much of oars and arcs is known: how many sleeves were read, how many seats go through an arc of their own, and what is
    /// taken of the rest.
    /// </summary>
    public string Known(BoatBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        OarOnWater[] oars = [.. balance.Gates.Select(g => g.Oar)];
        var said = new List<string>
        {
            _say.Text("Load.Known", Whole(oars.Count(o => o.IsSleeveRead)), Whole(oars.Count(o => o.IsArcOwn)), Whole(oars.Length)),
        };
        if (Array.Find(oars, o => !o.IsSleeveRead) is { } unread)
        {
            said.Add(_say.Text("Load.Known.Sleeve", Sleeve(unread)));
        }

        if (Array.Find(oars, o => !o.IsArcOwn) is { } usual)
        {
            said.Add(_say.Text("Load.Known.Arc", Arc(usual)));
        }

        return string.Join(' ', said);
    }

    /// <summary>An oar and its arc: "Seat 2 port: sleeve 0.5 ± 0.2°; from 54 ± 3° to -36 ± 2°."</summary>
    public string Oar(GateBalance gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return _say.Text("Load.Oar", Sentence.Capital(_say.Names.Gate(gate.Gate)), Sleeve(gate.Oar), Arc(gate.Oar));
    }

    /// <summary>Which gate to mend first for balance, or whose sleeve to turn and by how much.</summary>
    public string ForRoll(MendFirst choice) =>
        First(choice, "Load.First.Roll", "Load.First.Sleeve.Roll", "Load.First.Roll.None", "Load.First.Roll.NoFall");

    /// <summary>Which gate to mend first so that seats feel alike, or whose sleeve to turn and by how much.</summary>
    public string ForLoad(MendFirst choice) =>
        First(choice, "Load.First.Load", "Load.First.Sleeve.Load", "Load.First.Load.None", "Load.First.Load.NoFall");

    /// <summary>How the sleeves are turned that were named first, each once, and what is to be minded; none where none was.</summary>
    public IReadOnlyList<string> Turns(BoatBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return [.. new[] { balance.ForRoll, balance.ForLoad }
            .Select(choice => choice.Sleeve)
            .OfType<SleeveGain>()
            .DistinctBy(sleeve => sleeve.Gate)
            .Select(Turn)];
    }

    /// <summary>How far a sleeve is turned and which way: "1.0 ± 0.2° to the bow".</summary>
    public string Amount(SleeveGain sleeve)
    {
        ArgumentNullException.ThrowIfNull(sleeve);
        return _say.Text(sleeve.ToBow.Value.Degrees > 0 ? "Load.ToBow" : "Load.ToStern", Bare(sleeve));
    }

    /// <summary>Whose pull it is.</summary>
    public string Profile(DriveProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return _say.Text("Load.Profile", Pull(profile), Whole(profile.PeakNewtons));
    }

    private string First(MendFirst choice, string ofGate, string ofSleeve, string none, string noFall)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return choice switch
        {
            { Gate: { } gate } => Told(ofGate, _say.Names.Gate(gate.Gate), gate.Probability, gate.Fall) + PassedOver(choice, gate.Probability),
            { Sleeve: { } sleeve } => Told(ofSleeve, Sleeve(sleeve), sleeve.Probability, sleeve.Fall, Amount(sleeve))
                + PassedOver(choice, sleeve.Probability),
            _ when choice.Gates.Any(g => g.Fall > 0) => _say.Text(none, _say.Figures.Percent(choice.None)),
            _ => _say.Text(noFall),
        };

        string Told(string key, string what, double probability, double fall, string amount = "") => _say.Text(
            key,
            Sentence.Capital(what),
            _say.Figures.Percent(probability),
            _say.Figures.Degrees(choice.Now),
            _say.Figures.Degrees(choice.Now - fall),
            amount);
    }

    /// <summary>What is likelier right than what was named, and yet is expected to make it worse; empty where nothing is.</summary>
    private string PassedOver(MendFirst choice, double named)
    {
        (string What, double Probability)[] likelier = [
            .. choice.Gates.Take(1).Select(g => (_say.Names.Gate(g.Gate), g.Probability)),
            .. choice.Sleeves.Take(1).Select(s => (Sleeve(s), s.Probability)),
        ];
        (string what, double probability) = likelier.MaxBy(l => l.Probability);
        return probability > named
            ? " " + Sentence.Capital(_say.Text("Load.First.PassedOver", what, _say.Figures.Percent(probability)))
            : "";
    }

    private string Turn(SleeveGain sleeve)
    {
        double degrees = sleeve.ToBow.Value.Degrees;
        var turn = SleeveTurn.Of(degrees, RigDimensions.Default.ShaftDiameterMm);
        string how = _say.Text(
            degrees > 0 ? "Load.Turn.ToBow" : "Load.Turn.ToStern",
            Sleeve(sleeve),
            Bare(sleeve),
            _say.Figures.Fixed(turn.RoundMm, 1),
            _say.Figures.Length(turn.DiameterMm));
        return string.Join(' ', _say.Cautions.Each(Cautions.For(RemedyKind.TurnSleeve)).Prepend(how));
    }

    private string Sleeve(SleeveGain sleeve) => sleeve.Oar is { } oar
        ? _say.Text("Load.Sleeve.Named", _say.Names.Gate(sleeve.Gate), oar)
        : _say.Text("Load.Sleeve.At", _say.Names.Gate(sleeve.Gate));

    private string Bare(SleeveGain sleeve) => _say.Text(
        "Figure.Bare", _say.Figures.Degrees(Math.Abs(sleeve.ToBow.Value.Degrees)), _say.Figures.Degrees(sleeve.ToBow.U.Degrees));

    private string Pull(DriveProfile profile) => profile.Name switch
    {
        "men" => _say.Text("Load.Pull.Men"),
        "women" => _say.Text("Load.Pull.Women"),
        "men-maximal" => _say.Text("Load.Pull.MenMaximal"),
        "women-maximal" => _say.Text("Load.Pull.WomenMaximal"),
        _ => profile.Name,
    };

    private string Sleeve(OarOnWater oar) =>
        _say.Text("Figure.Bare", _say.Figures.Degrees(oar.Sleeve.Value.Degrees), _say.Figures.Degrees(oar.Sleeve.U.Degrees)) + "°";

    private string Arc(OarOnWater oar) => _say.Text(
        "Load.Arc",
        Whole(oar.Catch.Value.Degrees),
        Whole(oar.Catch.U.Degrees),
        Whole(oar.Finish.Value.Degrees),
        Whole(oar.Finish.U.Degrees));

    private string Whole(double value) => _say.Figures.Degrees(value, 0);
}
