namespace Gatewright.Journal.Tests.Exchange;

/// <summary>Folders of the repository, found from where the tests run.</summary>
internal static class Repository
{
    public static string Folder(string name)
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "global.json")))
        {
            folder = folder.Parent;
        }

        Assert.NotNull(folder);
        return Path.Combine(folder.FullName, name);
    }
}
