using Gatewright.Core.Changing;

namespace Gatewright.Words.TheChange;

/// <summary>What is said of two rigs side by side.</summary>
public sealed class CompareWords
{
    private readonly Wording _say;

    internal CompareWords(Wording say) => _say = say;

    /// <summary>"Teal beside Heron".</summary>
    public string Head(RigComparison compared)
    {
        ArgumentNullException.ThrowIfNull(compared);
        return _say.Text("Compare.Head", compared.First.Name, compared.Second.Name);
    }

    /// <summary>"differs", "alike", "cannot be told".</summary>
    public string As(ComparedAs told) => _say.Text($"Compare.Of.{told}");

    /// <summary>"12 figures alike".</summary>
    public string Alike(int count) => _say.Counted("Compare.Alike", count, count);

    /// <summary>Where nothing differs.</summary>
    public string NoneDiffer => _say.Text("Compare.NoneDiffer");

    /// <summary>One place in a sentence; null where both are alike.</summary>
    public string? Of(RigComparison compared, ComparedItem item)
    {
        ArgumentNullException.ThrowIfNull(compared);
        ArgumentNullException.ThrowIfNull(item);
        string place = Sentence.Capital(_say.Rig.Place(item.Place));
        string name = _say.Changes.Item(item.Item);
        return item.As switch
        {
            ComparedAs.Alike => null,
            ComparedAs.OneSided => _say.Text("Compare.OneSided", place, name, item.First is null ? compared.Second.Name : compared.First.Name),
            ComparedAs.NotTakenSince => _say.Text("Compare.NotTakenSince", place, name),
            ComparedAs.Untold => _say.Text("Compare.Untold", place, name, Figure(item, item.First), Figure(item, item.Second), Difference(item)),
            _ => _say.Text(
                item.Difference!.Value.Value > 0 ? "Compare.Differs.More" : "Compare.Differs.Less",
                place,
                name,
                Figure(item, item.First),
                Figure(item, item.Second),
                Difference(item),
                _say.Figures.Percent(item.Probability!.Value)),
        };
    }

    /// <summary>A rigger or an oar that is another.</summary>
    public string Of(ComparedMark mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        string none = _say.Text("Compare.NoMark");
        return _say.Text(mark.IsOar ? "Compare.Oar" : "Compare.Rigger", _say.Names.GateFirst(mark.At), mark.First ?? none, mark.Second ?? none);
    }

    /// <summary>A difference without its sign, with its uncertainty: "1.0 ± 0.4 cm".</summary>
    public string Difference(ComparedItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return item.Difference is { } difference ? _say.Changes.Figure(item.Item, difference with { Value = Math.Abs(difference.Value) }) : string.Empty;
    }

    private string Figure(ComparedItem item, RigValue? value) => value is null ? string.Empty : _say.Changes.Figure(item.Item, value.Value);
}
