using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances;

/// <summary>A table of chances, and what was done to it.</summary>
/// <param name="File">Its file; null for the defaults.</param>
/// <param name="Table">The table as it is now.</param>
internal abstract record Told(string? File, ClubChances Table)
{
    /// <summary>What was odd about the input.</summary>
    public virtual IReadOnlyList<InputProblem> Warnings => [];

    /// <summary>Nothing was done to it.</summary>
    public sealed record Shown(string? File, ClubChances Table) : Told(File, Table);

    /// <summary>It learnt from jobs.</summary>
    /// <param name="File">Its file.</param>
    /// <param name="Table">The table as it is now.</param>
    /// <param name="Before">The table as it was.</param>
    /// <param name="Added">How many jobs were new.</param>
    /// <param name="Again">How many rows told a job that was known.</param>
    /// <param name="Odd">What was odd about the jobs.</param>
    public sealed record Learnt(string File, ClubChances Table, ClubChances Before, int Added, int Again, IReadOnlyList<InputProblem> Odd)
        : Told(File, Table)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<InputProblem> Warnings => Odd;
    }

    /// <summary>It was set back to the defaults.</summary>
    /// <param name="File">Its file.</param>
    /// <param name="Forgotten">The table as it was.</param>
    /// <param name="Copy">Where the table as it was is kept.</param>
    public sealed record Reset(string File, ClubChances Forgotten, string Copy) : Told(File, ClubChances.Default);
}
