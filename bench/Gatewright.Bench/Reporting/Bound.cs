namespace Gatewright.Bench.Reporting;

public enum Bound
{
    AtLeast,
    AtMost,
}
