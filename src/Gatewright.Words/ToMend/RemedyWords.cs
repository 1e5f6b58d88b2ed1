using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;

namespace Gatewright.Words.ToMend;

/// <summary>A way to mend: its title, what to do, what it takes, what to mind and what to expect.</summary>
public sealed class RemedyWords
{
    private readonly Wording _say;

    internal RemedyWords(Wording say) => _say = say;

    /// <summary>"Fit another insert".</summary>
    public string Title(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return _say.Names.Remedy(remedy.Kind);
    }

    /// <summary>What to do, a sentence or more for each step of the work.</summary>
    public IReadOnlyList<string> Steps(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return _say.Work.Steps(remedy.Steps);
    }

    /// <summary>What to do, all in one.</summary>
    public string Instruction(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return _say.Work.Instruction(remedy.Steps);
    }

    /// <summary>"If it is a wrong insert:", before the ways to mend that.</summary>
    public string IfItIs(CausePart part) => _say.Text("Remedy.IfItIs", _say.Causes.SomeHere(part));

    /// <summary>"about 20 minutes".</summary>
    public string Minutes(int minutes) => _say.Counted("Remedy.Minutes", minutes);

    /// <summary>"washer 2 mm, washer 1 mm", or null when nothing is taken from stores.</summary>
    public string? Parts(IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return parts.Count == 0 ? null : string.Join(", ", parts.Select(_say.Names.Part));
    }

    /// <summary>"catch 3.0 to 4.9, abeam 3.1 to 4.9, finish 3.0 to 4.9", in degrees; null where only reading again tells.</summary>
    public string? Expected(IReadOnlyList<ExpectedReading> expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return expected.Count == 0 ? null : string.Join(", ", expected.Select(Expected));
    }

    /// <summary>"catch 3.0 to 4.9", in degrees.</summary>
    public string Expected(ExpectedReading expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return _say.Text(
            "Remedy.ExpectAt",
            _say.Names.Point(expected.At),
            _say.Figures.Degrees(expected.From.Degrees),
            _say.Figures.Degrees(expected.To.Degrees));
    }

    /// <summary>"Takes insert 4°; then expect catch 3.0 to 4.9, …."; null where it takes nothing and only reading again tells.</summary>
    public string? TakesAndExpect(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return (Parts(remedy.Parts), Expected(remedy.Expected)) switch
        {
            ({ } takes, { } expect) => _say.Text("Remedy.TakesAndExpect", takes, expect),
            ({ } takes, null) => _say.Text("Remedy.Takes", takes),
            (null, { } expect) => _say.Text("Remedy.Expect", expect),
            _ => null,
        };
    }

    /// <summary>All of a remedy in sentences, for a listener.</summary>
    /// <param name="place">Where: a gate, or the whole boat, as a sentence begins.</param>
    /// <param name="remedy">The remedy.</param>
    public string Whole(string place, Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        string whole = _say.Text(
            "Remedy.Whole", place, _say.Causes.SomeHere(remedy.Part), remedy.Minutes, Instruction(remedy));
        if (Parts(remedy.Parts) is { } takes)
        {
            whole = _say.Text("Sentence.Two", whole, _say.Text("Remedy.Takes", takes));
        }

        return Expected(remedy.Expected) is { } expect
            ? _say.Text("Sentence.Two", whole, _say.Text("Remedy.ExpectDegrees", expect))
            : whole;
    }
}
