namespace Gatewright.Printing.Faces;

/// <summary>A typeface to print with: two files, one upright and one bold.</summary>
/// <param name="Name">What it is called: "DejaVu Sans".</param>
/// <param name="Regular">The file of the upright letters.</param>
/// <param name="Bold">The file of the bold ones.</param>
public sealed record Face(string Name, string Regular, string Bold)
{
    /// <summary>
    /// The faces that will do, the best first: sans serif, legible in poor light, TrueType outlines, figures of one width,
    /// licences that let anybody embed them; last those that come with a system.
    /// </summary>
    private static readonly (string Name, string Regular, string Bold)[] Known =
    [
        ("DejaVu Sans", "DejaVuSans.ttf", "DejaVuSans-Bold.ttf"),
        ("Liberation Sans", "LiberationSans-Regular.ttf", "LiberationSans-Bold.ttf"),
        ("Noto Sans", "NotoSans-Regular.ttf", "NotoSans-Bold.ttf"),
        ("Verdana", "verdana.ttf", "verdanab.ttf"),
        ("Verdana", "Verdana.ttf", "Verdana Bold.ttf"),
        ("Arial", "arial.ttf", "arialbd.ttf"),
        ("Arial", "Arial.ttf", "Arial Bold.ttf"),
    ];

    /// <summary>The best face that the folders have, in themselves or in folders below.</summary>
    /// <exception cref="MissingFaceException">They have none.</exception>
    public static Face Find(IReadOnlyList<string> folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string file in folders.SelectMany(Files))
        {
            files.TryAdd(Path.GetFileName(file), file);
        }

        foreach ((string name, string regular, string bold) in Known)
        {
            if (files.TryGetValue(regular, out string? upright) && files.TryGetValue(bold, out string? heavy))
            {
                return new(name, upright, heavy);
            }
        }

        throw new MissingFaceException(folders);
    }

    // A folder of somebody else's, or one that goes while it is looked through, has nothing for us.
    private static IEnumerable<string> Files(string folder) => Directory.Exists(folder)
        ? Directory.EnumerateFiles(
            folder, "*.ttf", new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true, MaxRecursionDepth = 6 })
        : [];
}
