using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Inputs;

/// <summary>A file that a person named.</summary>
internal static class InputFile
{
    /// <summary>The file opened, or null and an error in words.</summary>
    public static FileStream? TryOpen(string file, List<InputProblem> errors)
    {
        try
        {
            return File.OpenRead(file);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            errors.Add(new(file, null, null, null, Why(file, exception)));
            return null;
        }
    }

    private static string Why(string file, Exception exception) => exception switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file.",
        UnauthorizedAccessException when Directory.Exists(file) => "is a folder, not a file.",
        UnauthorizedAccessException => "may not be read by you.",
        _ => $"cannot be read: {exception.Message}",
    };
}
