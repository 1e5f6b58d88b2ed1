using Gatewright.Core.Load;

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

    /// <summary>Which gate to mend first for balance.</summary>
    public string ForRoll(MendFirst choice) => First("Load.First.Roll", "Load.First.Roll.None", choice);

    /// <summary>Which gate to mend first so that seats feel alike.</summary>
    public string ForLoad(MendFirst choice) => First("Load.First.Load", "Load.First.Load.None", choice);

    /// <summary>Whose pull it is.</summary>
    public string Profile(DriveProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return _say.Text("Load.Profile", Pull(profile), Whole(profile.PeakNewtons));
    }

    private string First(string key, string none, MendFirst choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        MendGain best = choice.Gates[0];
        if (choice.None > best.Probability || best.Fall <= 0)
        {
            return _say.Text(none, _say.Figures.Percent(choice.None));
        }

        return _say.Text(
            key,
            Sentence.Capital(_say.Names.Gate(best.Gate)),
            _say.Figures.Percent(best.Probability),
            _say.Figures.Degrees(choice.Now),
            _say.Figures.Degrees(choice.Now - best.Fall));
    }

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
