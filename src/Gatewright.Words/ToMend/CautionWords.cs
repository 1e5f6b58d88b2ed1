using Gatewright.Core.Judging;
using Gatewright.Core.Mending;

namespace Gatewright.Words.ToMend;

/// <summary>What is said where work or rowing could hurt someone.</summary>
public sealed class CautionWords
{
    private readonly Wording _say;

    internal CautionWords(Wording say) => _say = say;

    /// <summary>
    /// Whether a boat that is not `stop` is to be treated so until it is read again: `adjust` elsewhere in it stands
    /// above the `unsure` of a floor and must not hide it.
    /// </summary>
    public static bool IsToBeTreatedAsStop(BoatVerdict boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.StaysAshore && boat.Verdict != Verdict.Stop;
    }

    /// <summary>One caution.</summary>
    public string Of(Caution caution) => _say.Text($"Caution.{caution}");

    /// <summary>Some cautions, each once.</summary>
    public IReadOnlyList<string> Each(IEnumerable<Caution> cautions) => [.. cautions.Distinct().Select(Of)];

    /// <summary>Some cautions, each once, without what is said under every check; empty for none.</summary>
    public string Mind(IEnumerable<Caution> cautions) =>
        string.Join(" ", Each(cautions.Where(caution => caution != Caution.Defer)));

    /// <summary>What is said beside a boat, if anything.</summary>
    public string? For(BoatVerdict boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.Verdict == Verdict.Stop ? _say.Text("Sentence.Two", Of(Caution.Stopped), _say.Text("Caution.StoppedPart"))
            : IsToBeTreatedAsStop(boat) ? _say.Text("Caution.UnsureFloor")
            : null;
    }

    /// <summary>Of a boat whose gate, before it was changed, kept it ashore, and was not read since.</summary>
    public string ChangedUnread => _say.Text("Caution.ChangedUnread");

    /// <summary>Where a boat is to be read again or mended.</summary>
    public string Lifting => Of(Caution.Lifting);

    /// <summary>Under every check.</summary>
    public string Precedence => _say.Text("Sentence.Two", _say.Text("Caution.Precedence"), Of(Caution.Defer));
}
