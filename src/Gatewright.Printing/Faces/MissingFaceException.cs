namespace Gatewright.Printing.Faces;

/// <summary>No typeface was found to print with. The message says what to install.</summary>
public sealed class MissingFaceException : Exception
{
    /// <summary>Made with the folders that were looked through.</summary>
    public MissingFaceException(IEnumerable<string> folders)
        : base(
            "No typeface was found to print with: on Debian, sudo apt-get install fonts-dejavu-core. "
            + $"Or name a folder that has DejaVuSans.ttf and DejaVuSans-Bold.ttf in the environment variable {FaceFolders.Variable}. "
            + $"Looked in {string.Join(", ", folders)}.")
    {
    }
}
