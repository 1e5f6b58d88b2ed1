using Gatewright.Store.Faults;

namespace Gatewright.Store.Opening;

/// <summary>The folder a store in one file is kept in.</summary>
public static class DataFolder
{
    /// <summary>The file's name: gatewright.db.</summary>
    public const string FileName = "gatewright.db";

    /// <summary>
    /// Where the store is when nothing is said: "gatewright" in the user's data folder, which is $XDG_DATA_HOME or
    /// ~/.local/share on Linux, and what the platform says elsewhere.
    /// </summary>
    public static string Usual => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
        "gatewright");

    /// <summary>The store in a folder, which is made if it is missing.</summary>
    /// <param name="path">The folder; null for <see cref="Usual"/>.</param>
    /// <exception cref="StoreException">The folder is a file, cannot be made or cannot be written.</exception>
    public static StoreLocation Locate(string? path = null)
    {
        if (path is not null && string.IsNullOrWhiteSpace(path))
        {
            throw new StoreException(StoreFault.Missing, "The data folder has no name.", "Give the path of a folder after --data.");
        }

        string folder = Path.GetFullPath(path ?? Usual);
        if (File.Exists(folder))
        {
            throw new StoreException(
                StoreFault.NotAStore, $"The data folder {folder} is a file.", "Name a folder, such as the one that file is in.");
        }

        try
        {
            Make(folder);
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(
                StoreFault.Missing, $"The data folder {folder} cannot be made: {thrown.Message}",
                "Name another with --data, or make it and let this program's user write it.", thrown);
        }

        TryWriting(folder);
        return StoreLocation.File(Path.Combine(folder, FileName));
    }

    /// <summary>For its user alone: accounts are in it.</summary>
    private static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Rights and mounts are too many to ask after: only writing tells.</summary>
    private static void TryWriting(string folder)
    {
        try
        {
            string probe = Path.Combine(folder, $".{Guid.NewGuid():N}");
            new FileStream(probe, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose).Dispose();
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(
                StoreFault.ReadOnly, $"The data folder {folder} cannot be written: {thrown.Message}",
                "Let this program's user write it, or name another with --data.", thrown);
        }
    }
}
