using Gatewright.Core;

namespace Gatewright.Journal.Reporting;

/// <summary>Where on a boat something happened.</summary>
public abstract record ReportPlace
{
    private ReportPlace()
    {
    }

    /// <summary>The side, where it has one.</summary>
    public abstract Side? Side { get; }

    /// <summary>At a gate.</summary>
    /// <param name="Gate">Which.</param>
    public sealed record AtGate(GatePlace Gate) : ReportPlace
    {
        /// <inheritdoc/>
        public override Side? Side => Gate.Side;
    }

    /// <summary>To one side of the whole boat.</summary>
    /// <param name="Of">Which.</param>
    public sealed record OnSide(Side Of) : ReportPlace
    {
        /// <inheritdoc/>
        public override Side? Side => Of;
    }

    /// <summary>Somewhere: nobody knows where, or it is at no gate.</summary>
    public sealed record Somewhere : ReportPlace
    {
        /// <inheritdoc/>
        public override Side? Side => null;
    }
}
