namespace Gatewright.Bench.WholeRuns;

/// <summary>Work that is measured in a process of its own.</summary>
internal interface IAlone
{
    void Do(string argument);
}
