using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Members;

/// <summary>What a crew tells over its link: whoever reads the journal knows it for that, without a list of the links.</summary>
public static class CrewTold
{
    /// <summary>The device its entries are of; the member in them is the link's id.</summary>
    public const string Device = "crew-link";

    /// <summary>Whether a crew told it over its link.</summary>
    public static bool Is(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Device == Device;
    }
}
