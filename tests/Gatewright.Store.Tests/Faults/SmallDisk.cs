using System.Diagnostics;

namespace Gatewright.Store.Tests.Faults;

/// <summary>A disk of 4 MiB in memory; the test is left out where none can be mounted.</summary>
internal sealed class SmallDisk : IDisposable
{
    private SmallDisk(string folder) => Folder = folder;

    public string Folder { get; }

    public static SmallDisk Mount(string folder)
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && Run("mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", folder),
            "a small disk cannot be mounted here");
        return new(folder);
    }

    public void Dispose() => Run("umount", "-l", Folder);

    private static bool Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
