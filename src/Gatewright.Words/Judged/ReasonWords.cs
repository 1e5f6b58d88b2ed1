using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Judged;

/// <summary>Why a gate is not good, with the numbers and without a sign convention.</summary>
public sealed class ReasonWords
{
    private const int MostDigits = 3;

    private readonly Wording _say;

    internal ReasonWords(Wording say) => _say = say;

    /// <summary>The sentence for one reason of a gate.</summary>
    /// <example>Seat 3 port reads 2.4° ± 0.3 at the catch, below the 3° that club allows (chance that it is outside: 96 %).</example>
    public string Of(GatePlace gate, Reason reason, Standard standard)
    {
        ArgumentNullException.ThrowIfNull(reason);
        ArgumentNullException.ThrowIfNull(standard);
        string place = _say.Names.GateFirst(gate);
        string at = _say.Names.AtStation(reason.Station);
        string figure = Figure(reason);
        string limit = _say.Text("Reason.Limit", _say.Figures.Brief(reason.Limit));
        string chance = _say.Figures.Percent(reason.Probability);
        return reason.Kind switch
        {
            ReasonKind.Floor when reason.IsOneReading => OneReading(_say.Names.Gate(gate), figure, at, limit, chance, reason.Before),
            ReasonKind.Floor => _say.Text(Floor(reason), place, figure, at, limit, chance),
            ReasonKind.Drop => Closely(reason, _say.Text("Reason.Drop", place, figure, standard.Name, limit, chance)),
            ReasonKind.Repeats => _say.Text("Reason.Repeats", place, figure, at, Tenths(reason)),
            ReasonKind.Changed => _say.Text(
                Changed(reason), reason.Item == ReadItem.Gate ? place : _say.Names.Gate(gate), Apart(reason), at, Tenths(reason), _say.Language.Day(reason.Before!.Value)),
            ReasonKind.Range => Closely(
                reason, _say.Text("Reason.Range", place, Other(reason), figure, at, standard.Name, limit, chance)),
            ReasonKind.AboveLimit => Closely(
                reason, _say.Text("Reason.AboveLimit", place, figure, at, limit, standard.Name, chance)),
            _ => Closely(reason, _say.Text("Reason.BelowLimit", place, figure, at, limit, standard.Name, chance)),
        };
    }

    /// <summary>Why a gate is not good in one sentence, that of the reason that is told first; null of one that is good.</summary>
    public string? Why(GateVerdict gate, Standard standard)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return ReasonChoice.Of(gate, false) is [{ } first, ..] ? Of(gate.Gate, first, standard) : null;
    }

    /// <summary>"2 further reasons of less weight"; null when all are told.</summary>
    public string? LeftOut(GateVerdict gate, bool all) => ReasonChoice.LeftOut(gate, all) is > 0 and int count
        ? _say.Counted("Reason.Further", count)
        : null;

    private static string Floor(Reason reason) => (reason.Verdict == Verdict.Stop, reason.Read) switch
    {
        (true, true) => "Reason.Floor.Stop.Read",
        (true, false) => "Reason.Floor.Stop.Expected",
        (false, true) => "Reason.Floor.Unsure.Read",
        _ => "Reason.Floor.Unsure.Expected",
    };

    private static string Changed(Reason reason) => (reason.Item, reason.Value.Value.Degrees < 0) switch
    {
        (ReadItem.PinAft, false) => "Reason.Changed.Pin.Aft",
        (ReadItem.PinAft, true) => "Reason.Changed.Pin.Forward",
        (ReadItem.PinOut, false) => "Reason.Changed.Pin.Out",
        (ReadItem.PinOut, true) => "Reason.Changed.Pin.In",
        (ReadItem.GatePitch, false) => "Reason.Changed.GatePitch.Higher",
        (ReadItem.GatePitch, true) => "Reason.Changed.GatePitch.Lower",
        (_, true) => "Reason.Changed.Lower",
        _ => "Reason.Changed.Higher",
    };

    private string OneReading(string gate, string figure, string at, string limit, string chance, DateOnly? before) => before is { } day
        ? _say.Text("Reason.Floor.Unsure.Former", gate, figure, at, limit, chance, _say.Language.Day(day))
        : _say.Text("Reason.Floor.Unsure.OneReading", gate, figure, at, limit, chance);

    private string Other(Reason reason) => reason.Other is { } other ? _say.Names.Gate(other) : string.Empty;

    /// <summary>Which way is said in words.</summary>
    private string Apart(Reason reason) => Figure(reason with
    {
        Value = new(Core.Geometry.Angle.FromDegrees(Math.Abs(reason.Value.Value.Degrees)), reason.Value.U),
    });

    private string Closely(Reason reason, string sentence) => reason.Verdict == Verdict.Unsure
        ? _say.Text("Sentence.Two", sentence, _say.Text("Reason.TooClose"))
        : sentence;

    /// <summary>
    /// One decimal, and more where one would round the value onto its limit or its uncertainty away: a sentence that
    /// says "3.0°, below the 3°" convinces nobody.
    /// </summary>
    private string Figure(Reason reason)
    {
        decimal value = (decimal)reason.Value.Value.Degrees;
        decimal limit = (decimal)reason.Limit.Degrees;
        decimal u = (decimal)reason.Value.U.Degrees;
        int digits = 1;
        while (digits < MostDigits
            && (Rounded(value, digits).CompareTo(limit) != value.CompareTo(limit) || (u > 0 && Rounded(u, digits) == 0)))
        {
            digits++;
        }

        return _say.Text("Figure.Loose", Text(value, digits), Text(u, digits));
    }

    private static decimal Rounded(decimal value, int digits) => Math.Round(value, digits, MidpointRounding.AwayFromZero);

    private string Text(decimal value, int digits) =>
        Rounded(value, digits).ToString($"F{digits}", _say.Language.Numbers);

    private string Tenths(Reason reason) => _say.Text("Reason.Limit", Text((decimal)reason.Limit.Degrees, 1));
}
