namespace Gatewright.Journal.Exchange.StoresFiles;

/// <summary>The parts on the shelf as CSV: what a spreadsheet saves.</summary>
/// <remarks>The format is in docs/stores.md. Reading does not depend on the culture.</remarks>
public static class StoresCsv
{
    /// <summary>Reads a file of stores to its end, or as far as it can be read.</summary>
    /// <remarks>Never fails over what the file holds; a stream that cannot be read throws as streams do.</remarks>
    /// <param name="name">The file as messages call it.</param>
    /// <param name="content">Its bytes. Read once from where it stands, and left open.</param>
    public static StoresInput Read(string name, Stream content)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        return StoresReader.Read(name, content);
    }
}
