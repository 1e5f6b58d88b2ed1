using System.Globalization;

namespace Gatewright.Core.Judging;

/// <summary>Reasons in plain English, with their numbers and without a sign convention.</summary>
public static class ReasonSentence
{
    private const int MostDigits = 3;

    /// <summary>The sentence for one reason of a gate.</summary>
    /// <example>Seat 3 port reads 2.4° ± 0.3 at the catch, below the 3° that club allows (chance that it is outside: 96 %).</example>
    public static string Of(GatePlace gate, Reason reason, Standard standard)
    {
        ArgumentNullException.ThrowIfNull(reason);
        ArgumentNullException.ThrowIfNull(standard);
        return reason.Kind switch
        {
            ReasonKind.BelowLimit => Limit(gate, reason, standard, "below"),
            ReasonKind.AboveLimit => Limit(gate, reason, standard, "above"),
            ReasonKind.Floor => Floor(gate, reason),
            ReasonKind.Drop => Drop(gate, reason, standard),
            ReasonKind.Repeats => Repeats(gate, reason),
            _ => Range(gate, reason, standard),
        };
    }

    private static string Limit(GatePlace gate, Reason reason, Standard standard, string side) =>
        $"{Capital(gate)} reads {Number(reason)} {reason.Station.Phrase()}, {side} the {Degrees(reason)} that "
        + $"{standard.Name} allows (chance that it is outside: {Percent(reason.Probability)}).{Doubt(reason)}";

    private static string Floor(GatePlace gate, Reason reason)
    {
        string subject = reason.Read
            ? $"{Capital(gate)} reads {Number(reason)} {reason.Station.Phrase()}"
            : $"{Capital(gate)} was not read {reason.Station.Phrase()} and is expected at {Number(reason)} there";
        string again = reason.Read ? "read again" : "read there";
        return reason.Verdict == Verdict.Stop
            ? $"{subject}, under the floor of {Degrees(reason)} (chance that it is below: {Percent(reason.Probability)}): "
                + "the blade may dive. Not out on the water until mended and read again."
            : $"{subject}, which does not show that it lies above the floor of {Degrees(reason)} "
                + $"(chance that it is below: {Percent(reason.Probability)}). Treat as stop until {again}.";
    }

    private static string Drop(GatePlace gate, Reason reason, Standard standard) =>
        $"{Capital(gate)} loses {Number(reason)} from catch to finish; {standard.Name} allows {Degrees(reason)} "
        + $"(chance that it loses more: {Percent(reason.Probability)}).{Doubt(reason)}";

    private static string Repeats(GatePlace gate, Reason reason) =>
        $"{Capital(gate)} was read more than once {reason.Station.Phrase()}, and two of the readings are {Number(reason)} apart: "
        + $"more than the {Tenths(reason)} by which readings of one gate may differ. Read it again.";

    private static string Range(GatePlace gate, Reason reason, Standard standard) =>
        $"{Capital(gate)} and {reason.Other} are {Number(reason)} apart {reason.Station.Phrase()}; "
        + $"{standard.Name} allows {Degrees(reason)} across the boat "
        + $"(chance that they are further apart: {Percent(reason.Probability)}).{Doubt(reason)}";

    private static string Doubt(Reason reason) =>
        reason.Verdict == Verdict.Unsure ? " Too close to tell: read again, or better." : string.Empty;

    private static string Capital(GatePlace gate)
    {
        string words = gate.ToString();
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>
    /// One decimal, and more where one would round the value onto its limit or its uncertainty away: a sentence that
    /// says "3.0°, below the 3°" convinces nobody.
    /// </summary>
    private static string Number(Reason reason)
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

        return $"{Text(value, digits)}° ± {Text(u, digits)}";
    }

    private static decimal Rounded(decimal value, int digits) => Math.Round(value, digits, MidpointRounding.AwayFromZero);

    private static string Text(decimal value, int digits) =>
        Rounded(value, digits).ToString("F" + digits, CultureInfo.InvariantCulture);

    private static string Tenths(Reason reason) => Text((decimal)reason.Limit.Degrees, 1) + "°";

    private static string Degrees(Reason reason) =>
        reason.Limit.Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";

    /// <summary>Never 0 or 100: a probability from a model is not a certainty.</summary>
    private static string Percent(double probability) =>
        probability > 0.99 ? "over 99 %"
        : probability < 0.01 ? "under 1 %"
        : (100 * probability).ToString("0", CultureInfo.InvariantCulture) + " %";
}
