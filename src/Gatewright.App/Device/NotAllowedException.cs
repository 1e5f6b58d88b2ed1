using Gatewright.Replica.Copies;

namespace Gatewright.App.Device;

/// <summary>What was to be recorded is not for the member here to record; nothing of it was.</summary>
/// <param name="hasLeft">Whether they have left the club; else it is their role that does not record it.</param>
public sealed class NotAllowedException(bool hasLeft) : NotRecordedException([hasLeft ? "You have left this club." : "Your role does not record this."])
{
    /// <summary>Whether they have left the club; else it is their role that does not record it.</summary>
    public bool HasLeft { get; } = hasLeft;
}
