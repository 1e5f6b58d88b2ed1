using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Words.ToMend;

namespace Gatewright.Words.Told;

/// <summary>What is told of a shed as a whole.</summary>
public sealed class ShedWords
{
    private readonly Wording _say;

    internal ShedWords(Wording say) => _say = say;

    /// <summary>The boats of a verdict.</summary>
    public static IReadOnlyList<BoatCheck> Boats(ToldShed shed, Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(shed);
        return [.. shed.Boats.Where(boat => boat.Verdict.Verdict == verdict)];
    }

    /// <summary>What a verdict asks for: "mend when convenient"; of `good`, "nothing".</summary>
    public string WhatNow(Verdict verdict) => _say.Text($"Shed.WhatNow.{verdict}");

    /// <summary>What was odd about the input or its readings, a sentence each without its full stop.</summary>
    public IEnumerable<string> Warnings(ToldShed shed)
    {
        ArgumentNullException.ThrowIfNull(shed);
        return shed.Warnings.Concat(shed.Boats.SelectMany(boat =>
            _say.Boats.Notices(boat).Select(notice => _say.Text("Shed.OfBoat", _say.Boats.Name(boat), notice))));
    }

    /// <summary>
    /// The boats that stand under another verdict and are to be treated as `stop` all the same; null when there are none.
    /// </summary>
    public string? TreatAsStop(ToldShed shed)
    {
        ArgumentNullException.ThrowIfNull(shed);
        List<string> names = [.. shed.Boats
            .Where(boat => CautionWords.IsToBeTreatedAsStop(boat.Verdict)
                || (boat.Verdict.Verdict != Verdict.Stop && shed.ChangedUnread.Contains(boat.Verdict.Boat)))
            .Select(_say.Boats.Name)];
        return names.Count == 0 ? null : _say.Text("Shed.TreatAsStop", string.Join(", ", names));
    }

    /// <summary>The boats that somebody holds, under whatever verdict they stand; null when there are none.</summary>
    public string? HeldWhateverTheyRead(ToldShed shed)
    {
        ArgumentNullException.ThrowIfNull(shed);
        return shed.Held.Count == 0 ? null : _say.Text("Shed.Held", string.Join(", ", shed.Held.Distinct()));
    }

    /// <summary>The whole report in words alone, a statement at a time; an empty one is where a listener may skip on.</summary>
    public IEnumerable<string> Statements(ToldShed shed, Telling telling)
    {
        ArgumentNullException.ThrowIfNull(shed);
        ArgumentNullException.ThrowIfNull(telling);
        return shed.Boats.SelectMany(boat => Statements(boat, telling).Append(string.Empty)).Concat(AtTheEnd(shed));
    }

    /// <summary>One boat in words alone, a statement at a time.</summary>
    public IEnumerable<string> Statements(BoatCheck boat, Telling telling)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(telling);
        return new BoatStatements(_say, telling).Of(boat);
    }

    private IEnumerable<string> AtTheEnd(ToldShed shed)
    {
        int gates = shed.Boats.Sum(boat => boat.Verdict.Gates.Count);
        yield return _say.Text("Shed.Head", _say.Counted("Count.Boats", shed.Boats.Count), _say.Counted("Count.Gates", gates));
        foreach (string statement in Verdicts.All.Reverse().SelectMany(verdict => OfVerdict(shed, verdict)))
        {
            yield return statement;
        }

        if (HeldWhateverTheyRead(shed) is { } held)
        {
            yield return _say.Text("Boat.Further", held);
        }

        foreach (string warning in Warnings(shed))
        {
            yield return _say.Text("Shed.Warning", warning);
        }

        yield return string.Empty;
        foreach (string limits in _say.Standards.Limits(shed.Boats, shed.Standard))
        {
            yield return limits;
        }

        yield return _say.Standards.PlusMinus;
        if (shed.NeedsAttention)
        {
            yield return _say.Cautions.Lifting;
        }

        yield return _say.Cautions.Precedence;
    }

    private IEnumerable<string> OfVerdict(ToldShed shed, Verdict verdict)
    {
        IReadOnlyList<BoatCheck> boats = Boats(shed, verdict);
        string word = Sentence.Capital(_say.Names.Verdict(verdict));
        string count = _say.Counted("Count.Boats", boats.Count);
        yield return boats.Count == 0 ? _say.Text("Shed.Verdict", word, count)
            : verdict == Verdict.Good ? _say.Text("Shed.Verdict.Good", word, count, string.Join(", ", boats.Select(_say.Boats.Name)))
            : _say.Text("Shed.Verdict.Todo", word, count, WhatNow(verdict), string.Join(". ", boats.Select(_say.Boats.Trouble)));
        if (verdict == Verdict.Stop && TreatAsStop(shed) is { } more)
        {
            yield return _say.Text("Boat.Further", more);
        }
    }
}
