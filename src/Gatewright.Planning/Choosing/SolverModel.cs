using Google.OrTools.Sat;

namespace Gatewright.Planning.Choosing;

/// <summary>A choice model in the solver's own terms.</summary>
internal sealed class SolverModel
{
    private readonly ChoiceModel _model;
    private readonly List<BoolVar[]> _chosen;
    private readonly IntVar?[] _bought;
    private readonly BoolVar[] _achieved;

    public SolverModel(ChoiceModel model)
    {
        _model = model;
        _chosen = [.. model.Groups.Select(Group)];
        _bought = new IntVar?[model.Resources.Count];
        LimitUses();
        _achieved = [.. model.Bundles.Select(b => Achieved(PairReduction.Of(b)))];
    }

    public CpModel Model { get; } = new();

    /// <summary>An aim as a sum of the solver's variables.</summary>
    public LinearExpr Sum(Aim aim) => aim switch
    {
        Aim.OfOptions options => Sum(options.Worth.SelectMany(worth => worth).Select(w => (long)w)),
        RankedAims ranked => Sum(ranked.Worth),
        Aim.OfBundles bundles => LinearExpr.Sum(bundles.Bundles.Select(b => _achieved[b])),
        _ => LinearExpr.Sum(_bought.OfType<IntVar>()),
    };

    /// <summary>What the solver chose.</summary>
    public IReadOnlyList<int> Chosen(CpSolver solver) =>
        [.. _chosen.Select(vars => Array.FindIndex(vars, v => solver.BooleanValue(v)))];

    /// <summary>Has the solver start from a choice.</summary>
    public void StartFrom(IReadOnlyList<int> chosen)
    {
        Model.ClearHints();
        for (int group = 0; group < _chosen.Count; group++)
        {
            for (int option = 0; option < _chosen[group].Length; option++)
            {
                Model.AddHint(_chosen[group][option], option == chosen[group]);
            }
        }

        int[] used = _model.Used(chosen);
        for (int resource = 0; resource < used.Length; resource++)
        {
            if (_bought[resource] is { } bought)
            {
                Model.AddHint(bought, Math.Max(0, used[resource] - _model.Resources[resource].Capacity));
            }
        }

        for (int bundle = 0; bundle < _achieved.Length; bundle++)
        {
            Model.AddHint(_achieved[bundle], _model.Achieves(chosen, bundle));
        }
    }

    private LinearExpr Sum(IEnumerable<long> worth) => LinearExpr.WeightedSum(_chosen.SelectMany(vars => vars), worth);

    private BoolVar[] Group(IReadOnlyList<Choice> options)
    {
        BoolVar[] vars = [.. options.Select(_ => Model.NewBoolVar(string.Empty))];
        Model.AddExactlyOne(vars);
        return vars;
    }

    private void LimitUses()
    {
        ILookup<int, (BoolVar Var, int Amount)> uses = _model.Groups
            .SelectMany((options, group) => options.SelectMany((option, i) => option.Uses
                .Select(use => (use.Resource, Use: (_chosen[group][i], use.Amount)))))
            .ToLookup(u => u.Resource, u => u.Use);
        for (int i = 0; i < _model.Resources.Count; i++)
        {
            Resource resource = _model.Resources[i];
            LinearExpr used = LinearExpr.WeightedSum(uses[i].Select(u => u.Var), uses[i].Select(u => (long)u.Amount));
            if (resource.CanBeBought)
            {
                _bought[i] = Model.NewIntVar(0, uses[i].Sum(u => (long)u.Amount), string.Empty);
                used -= _bought[i]!;
            }

            Model.Add(used <= resource.Capacity);
        }
    }

    private BoolVar Achieved(Bundle bundle)
    {
        BoolVar achieved = Model.NewBoolVar(string.Empty);
        foreach (Member member in bundle.Members)
        {
            IEnumerable<BoolVar> allowed = _chosen[member.Group].Where((_, option) => member.Allowed[option]);
            Model.Add(LinearExpr.Sum(allowed) >= achieved);
        }

        foreach (Pair pair in bundle.Pairs)
        {
            Limit(pair, bundle.Members.Single(m => m.Group == pair.First).Allowed, achieved);
        }

        return achieved;
    }

    /// <summary>
    /// Options of the first group that go with the same ones of the second share a constraint: if one of them is chosen
    /// and the bundle achieved, so is one of those.
    /// </summary>
    private void Limit(Pair pair, IReadOnlyList<bool> allowed, BoolVar achieved)
    {
        BoolVar[] first = _chosen[pair.First];
        BoolVar[] second = _chosen[pair.Second];
        var alike = Enumerable.Range(0, first.Length)
            .Where(option => allowed[option] && pair.Together[option].Contains(false))
            .GroupBy(option => string.Concat(pair.Together[option].Select(goes => goes ? '1' : '0')));
        foreach (IGrouping<string, int> options in alike)
        {
            IEnumerable<BoolVar> partners = second.Where((_, other) => options.Key[other] == '1');
            Model.Add(LinearExpr.Sum(options.Select(o => first[o])) + achieved <= LinearExpr.Sum(partners) + 1);
        }
    }
}
