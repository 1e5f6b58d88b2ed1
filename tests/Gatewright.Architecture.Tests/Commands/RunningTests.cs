namespace Gatewright.Architecture.Tests.Commands;

/// <summary>The command at the root, which may build the whole program first.</summary>
public class RunningTests
{
    [Fact(Skip = LongRun.Why, SkipUnless = nameof(LongRun.IsAsked), SkipType = typeof(LongRun))]
    public void Gatewright_runs_from_any_folder_and_through_a_link()
    {
        string folder = Directory.CreateTempSubdirectory("a folder with blanks ").FullName;
        try
        {
            File.CreateSymbolicLink(Path.Combine(folder, "linked"), Path.Combine(Repository.Root, "gatewright"));

            (int status, string output) = Shell.Run(folder, string.Empty, Path.Combine(folder, "linked"), "--version");

            Assert.Equal(0, status);
            Assert.Matches(@"^\d+\.\d+\.\d+", output);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
