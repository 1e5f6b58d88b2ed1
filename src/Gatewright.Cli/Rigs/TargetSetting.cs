using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rigging;

namespace Gatewright.Cli.Rigs;

/// <summary>A target as a command line sets it: "span=159+-1", "height/port=6.3±0.5in", "spread/3=86+-1"; "span=" takes it away.</summary>
internal static class TargetSetting
{
    private const string Expected = "expected MEASURE=VALUE+-TOLERANCE, such as span=159+-1, height/port=16+-1, height/sides=1+-1 or spread/3=34+-0.5in; MEASURE= takes the club's own away";

    /// <summary>What sets the targets; what cannot be read is an error.</summary>
    /// <param name="texts">As they were written.</param>
    /// <param name="owner">The beginning of the key: "boat/teal", "crew/2x/women".</param>
    /// <param name="errors">Where errors go.</param>
    public static IReadOnlyList<ThingSet> Read(IReadOnlyList<string> texts, string owner, List<InputProblem> errors)
    {
        var set = new List<ThingSet>();
        foreach (string text in texts)
        {
            if (Read(text, owner, out string problem) is { } one)
            {
                set.Add(one);
            }
            else
            {
                errors.Add(new("--set", null, null, text, problem));
            }
        }

        return set;
    }

    private static ThingSet? Read(string text, string owner, out string problem)
    {
        problem = $"is no target: {Expected}.";
        if (text.Split('=', 2, StringSplitOptions.TrimEntries) is not [var what, var figures]
            || TargetKey.Parse($"{owner}/{what.ToLowerInvariant()}") is not { } key)
        {
            return null;
        }

        if (figures.Length == 0)
        {
            return key.Cleared();
        }

        if (figures.Replace("+-", "±", StringComparison.Ordinal).Split('±', StringSplitOptions.TrimEntries) is not [var value, var rest])
        {
            return null;
        }

        string tolerance = rest.TrimEnd([.. "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ°\"″ "]);
        string word = rest[tolerance.Length..].Trim();
        RigUnit? unit = word.Length == 0 ? key.Measure.Unit() : RigUnits.OfWord(word);
        if (unit is not { } known || !key.Measure.Takes(known) || Number(value) is not { } target || Number(tolerance) is not { } off)
        {
            return null;
        }

        if (key.Aspect == RigAspect.Value && !key.Measure.CanBe(known.InOwn((double)target)))
        {
            (double least, double most) = key.Measure.Plausible();
            problem = FormattableString.Invariant($"is a target that no {key.Measure.Word()} can have: give {known.FromOwn(least):0.#} to {known.FromOwn(most):0.#} {known.Word()}.");
            return null;
        }

        return key.Set(target, off, known);
    }

    private static decimal? Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
            ? number
            : null;
}
