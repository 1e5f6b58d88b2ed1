using Gatewright.Bench.Reporting;

// bench/run [PART…]: every bench, or those whose name has one of the parts in it.
IEnumerable<Type> benches = typeof(IBench).Assembly.GetTypes()
    .Where(type => type.IsClass && typeof(IBench).IsAssignableFrom(type))
    .Where(type => args.Length == 0 || args.Any(part => type.Name.Contains(part, StringComparison.OrdinalIgnoreCase)))
    .OrderBy(type => type.FullName, StringComparer.Ordinal);

Console.WriteLine(Machine.Describe());
Console.WriteLine(Report.Heading);
foreach (Type type in benches)
{
    foreach (Measured measured in ((IBench)Activator.CreateInstance(type)!).Measure())
    {
        Console.WriteLine(Report.Of(measured));
    }
}
