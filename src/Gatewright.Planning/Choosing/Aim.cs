namespace Gatewright.Planning.Choosing;

/// <summary>One thing that is wanted of a choice, as a sum that is to be as large or as small as can be.</summary>
/// <param name="Name">What it is called in the account of the solution.</param>
/// <param name="IsMost">Whether the sum is to be large.</param>
internal abstract record Aim(string Name, bool IsMost)
{
    /// <summary>What no choice can better, whatever it costs otherwise: met, there is nothing to look for.</summary>
    public abstract long Ideal { get; }

    /// <summary>What a choice makes of it.</summary>
    public abstract long Of(ChoiceModel model, IReadOnlyList<int> chosen);

    /// <summary>The account of it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="chosen">The choice that was found.</param>
    /// <param name="bound">What is proven that no choice can better.</param>
    public virtual IEnumerable<AimResult> Account(ChoiceModel model, IReadOnlyList<int> chosen, long bound) =>
        [new(Name, Of(model, chosen), bound)];

    /// <summary>What the options are worth, each by itself.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="IsMost">Whether the sum is to be large.</param>
    /// <param name="Worth">Of each group and option, its part in the sum.</param>
    public sealed record OfOptions(string Name, bool IsMost, IReadOnlyList<IReadOnlyList<int>> Worth) : Aim(Name, IsMost)
    {
        /// <inheritdoc/>
        public override long Ideal => Worth.Sum(worth => (long)(IsMost ? worth.Max() : worth.Min()));

        /// <inheritdoc/>
        public override long Of(ChoiceModel model, IReadOnlyList<int> chosen) =>
            Worth.Select((worth, group) => (long)worth[chosen[group]]).Sum();
    }

    /// <summary>How many of some bundles are achieved: as many as can be.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Bundles">Which.</param>
    public sealed record OfBundles(string Name, IReadOnlyList<int> Bundles) : Aim(Name, true)
    {
        /// <inheritdoc/>
        public override long Ideal => Bundles.Count;

        /// <inheritdoc/>
        public override long Of(ChoiceModel model, IReadOnlyList<int> chosen) =>
            Bundles.Count(bundle => model.Achieves(chosen, bundle));
    }

    /// <summary>How much is bought beyond what there is: as little as can be.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record OfPurchases(string Name) : Aim(Name, false)
    {
        /// <inheritdoc/>
        public override long Ideal => 0;

        /// <inheritdoc/>
        public override long Of(ChoiceModel model, IReadOnlyList<int> chosen) =>
            model.Used(chosen).Select((used, i) => (long)Math.Max(0, used - model.Resources[i].Capacity)).Sum();
    }
}
