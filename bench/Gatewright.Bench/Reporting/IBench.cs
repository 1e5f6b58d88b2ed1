namespace Gatewright.Bench.Reporting;

/// <summary>
/// Something that is measured against targets. To add one, add a class that implements this: the program finds it.
/// </summary>
public interface IBench
{
    IEnumerable<Measured> Measure();
}
