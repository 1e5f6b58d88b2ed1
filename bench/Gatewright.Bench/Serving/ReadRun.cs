namespace Gatewright.Bench.Serving;

/// <summary>What a process of its own is to read, and where to write how long each answer took.</summary>
public sealed record ReadRun(Uri Server, string Cookies, string Club, IReadOnlyList<string> Paths, int ASecond, int Seconds, string Results);

/// <summary>How long answers took, in milliseconds, each from the moment its request was due.</summary>
public sealed record ReadTimes(double Middle, double P99, double Longest, int Count);
