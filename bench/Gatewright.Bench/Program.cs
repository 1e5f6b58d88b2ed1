using Gatewright.Bench.Reporting;
using Gatewright.Bench.WholeRuns;

if (args is [Alone.Switch, var work, var argument])
{
    Alone.Do(work, argument);
    return 0;
}

// bench/run [PART…]: every bench, or those whose name has one of the parts in it.
List<Type> all = [.. typeof(IBench).Assembly.GetTypes()
    .Where(type => type.IsClass && typeof(IBench).IsAssignableFrom(type))
    .OrderBy(type => type.FullName, StringComparer.Ordinal)];
List<Type> chosen = args.Length == 0
    ? all
    : all.FindAll(type => args.Any(part => type.Name.Contains(part, StringComparison.OrdinalIgnoreCase)));
if (chosen.Count == 0)
{
    Console.Error.WriteLine($"There is no such bench; there are {string.Join(", ", all.Select(type => type.Name))}.");
    return 2;
}

Console.WriteLine(Machine.Describe());
Console.WriteLine(Report.Heading);
foreach (Type bench in chosen)
{
    foreach (Measured measured in ((IBench)Activator.CreateInstance(bench)!).Measure())
    {
        Console.WriteLine(Report.Of(measured));
    }
}

return 0;
