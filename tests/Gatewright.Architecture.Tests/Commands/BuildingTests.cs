namespace Gatewright.Architecture.Tests.Commands;

/// <summary>What the command at the root says while it builds, with a dotnet that only plays at building.</summary>
public sealed class BuildingTests : IDisposable
{
    // What dotnet 10 says of a build, in short; the pause is longer than the patience that the tests ask for.
    private const string Dotnet =
        """
        #!/bin/bash
        case $1 in
          --version) echo 10.0.100 ;;
          publish)
            echo '  Determining projects to restore...'
            echo '  Restored /a/src/Gatewright.Core/Gatewright.Core.csproj (in 4 ms).'
            echo '  Restored /a/src/Gatewright.Journal/Gatewright.Journal.csproj (in 4 ms).'
            sleep "${PAUSE:-0}"
            [[ ! -v BROKEN ]] || { echo 'Broken.cs(1,1): error CS0000'; exit 1; }
            echo '  Gatewright.Journal -> /a/bin/Gatewright.Journal.dll'
            echo '  Gatewright.Server -> /a/bin/gatewright-server.dll'
            echo '  Optimizing assemblies for size. This process might take a while.'
            while [[ $1 != --output ]]; do shift; done
            mkdir -p "$2" ;;
          *) echo "ran ${1##*/} ${*:2}" ;;
        esac
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("a folder with blanks ").FullName;

    public BuildingTests()
    {
        foreach (string file in new[] { "gatewright", "global.json", "Directory.Build.props", "Directory.Packages.props", ".ci/dotnet.sh" })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, file))!);
            File.Copy(Path.Combine(Repository.Root, file), Path.Combine(_folder, file));
        }

        Directory.CreateDirectory(Path.Combine(_folder, "src"));
        Directory.CreateDirectory(Path.Combine(_folder, "bin"));
        string dotnet = Path.Combine(_folder, "bin", "dotnet");
        File.WriteAllText(dotnet, Dotnet);
        Shell.Run(_folder, string.Empty, "chmod", "u+x", dotnet);
    }

    [Fact]
    public void In_a_pipe_the_build_is_a_line_at_its_start_and_one_at_its_end()
    {
        string[] said = Lines("./gatewright serve --demo 2>&1");

        Assert.Equal(3, said.Length);
        Assert.Equal("Building Gatewright (first use, or sources changed): about two minutes the first time…", said[0]);
        Assert.Matches(@"^Built in \d+ s\.$", said[1]);
        Assert.Equal("ran gatewright-server.dll --demo", said[2]);
        Assert.Contains("Determining projects", File.ReadAllText(Path.Combine(_folder, ".build/gatewright.log")), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_of_it_stands_among_what_the_program_says() => Assert.Equal(["ran gatewright.dll check a.csv"], Lines("./gatewright check a.csv 2>/dev/null"));

    [Fact]
    public void What_is_built_is_not_built_again_and_says_nothing()
    {
        Lines("./gatewright check 2>&1");

        Assert.Equal(["ran gatewright.dll check"], Lines("./gatewright check 2>&1"));
    }

    [Fact]
    public void At_a_terminal_each_step_is_told_once_with_its_second_and_that_a_long_one_goes_on()
    {
        string[] said = Lines("script --quiet --return --command './gatewright serve' /dev/null", "PAUSE=1.5", "GATEWRIGHT_PATIENCE=1");

        Assert.Equal(
            ["getting the packages that are not here yet…", "compiling…", "still compiling…", "compiling what stands on it…", "packing…", "making the app small…"],
            said[1..^2].Select(line => line.Split(" s  ", 2)[1]));
        Assert.All(said[1..^2], line => Assert.Matches(@"^ *\d+ s  ", line));
        Assert.DoesNotContain(said, line => line.Contains("Restored", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("./gatewright serve 2>&1")]
    [InlineData("script --quiet --return --command './gatewright serve' /dev/null")]
    public void A_build_that_fails_says_why_and_does_not_say_that_it_is_built(string command)
    {
        (int status, string output) = Run(command, "BROKEN=1");

        Assert.Equal(70, status);
        Assert.Contains("error CS0000", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Built in", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_call_that_waits_for_the_build_of_another_says_so()
    {
        // The lock is the shell's own until the call has said something.
        string[] said = Lines(
            """
            mkdir .build && exec 8>.build/lock && flock 8
            ./gatewright check 2>said 8>&- &
            for _ in {1..200}; do [[ -s said ]] && break; sleep 0.1; done
            flock --unlock 8
            wait
            cat said
            """);

        Assert.StartsWith("ran gatewright.dll", said[0], StringComparison.Ordinal);
        Assert.Equal("Gatewright is being built by another call: waiting for it…", said[1]);
        Assert.StartsWith("Building Gatewright", said[2], StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string[] Lines(string command, params string[] settings)
    {
        (int status, string output) = Run(command, settings);
        Assert.Equal(0, status);
        return output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private (int Status, string Output) Run(string command, params string[] settings) => Shell.Run(
        _folder, string.Empty, "env",
        [$"PATH={Path.Combine(_folder, "bin")}:{Environment.GetEnvironmentVariable("PATH")}", .. settings, "bash", "-c", command]);
}
