using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.Archive;

namespace Gatewright.Cli.Clubs.Exporting;

/// <summary>A file that is written whole or not at all: beside its place first, then into it.</summary>
internal sealed class NewFile
{
    private readonly string _file;
    private readonly bool _replace;

    private NewFile(string file, bool replace) => (_file, _replace) = (file, replace);

    /// <summary>The file, unless something is there already that is not to be replaced.</summary>
    public static NewFile? TryAt(string file, bool replace, List<InputProblem> errors)
    {
        if (Directory.Exists(file))
        {
            errors.Add(new(file, null, null, null, "is a folder: name a file."));
            return null;
        }

        if (!replace && File.Exists(file))
        {
            errors.Add(Taken(file));
            return null;
        }

        return new(file, replace);
    }

    /// <summary>That something is there already.</summary>
    public static InputProblem Taken(string file) =>
        new(file, null, null, null, "is there already, and is left as it is: name another, or add --replace.");

    /// <summary>Writes it.</summary>
    public async Task<bool> TryWriteAsync(Func<Stream, Task> write, List<InputProblem> errors)
    {
        string beside = $"{_file}.{Guid.NewGuid():N}.part";
        try
        {
            var to = new FileStream(beside, FileMode.CreateNew, FileAccess.ReadWrite);
            await using (to.ConfigureAwait(false))
            {
                await write(to).ConfigureAwait(false);
                to.Flush(flushToDisk: true);
            }

            File.Move(beside, _file, _replace);
            return true;
        }
        catch (Exception cannot) when (IsOfTheFile(cannot))
        {
            errors.Add(new(_file, null, null, null, $"cannot be written: {cannot.Message}"));
            return false;
        }
        catch (ArchiveException damaged)
        {
            errors.Add(new(_file, null, null, null, $"was not written: {damaged.Message} Look the store through with gatewright club verify."));
            return false;
        }
        finally
        {
            if (File.Exists(beside))
            {
                File.Delete(beside);
            }
        }
    }

    /// <summary>Whether a file, not the program, is the cause.</summary>
    public static bool IsOfTheFile(Exception exception) =>
        exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;
}
