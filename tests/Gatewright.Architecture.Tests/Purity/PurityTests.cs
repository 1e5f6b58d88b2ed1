using Gatewright.Architecture.Tests.Layers;

namespace Gatewright.Architecture.Tests.Purity;

public class PurityTests
{
    [Fact]
    public void Core_reaches_no_file_no_network_no_clock_no_chance_and_no_terminal() =>
        Rule.Holds(Impure.Among(ForeignSymbols.Of(typeof(Core.Side).Assembly)));

    // This assembly reads files itself, and Samples.Impurities does the rest.
    [Theory]
    [InlineData("System.IO.File")]
    [InlineData("System.Net.Http.HttpClient")]
    [InlineData("System.DateTime.get_UtcNow")]
    [InlineData("System.DateTimeOffset.get_Now")]
    [InlineData("System.TimeProvider")]
    [InlineData("System.Guid.NewGuid")]
    [InlineData("System.Random")]
    [InlineData("System.Console")]
    [InlineData("System.Environment.get_NewLine")]
    [InlineData("System.Threading.Interlocked")]
    [InlineData("System.Globalization.CultureInfo.get_CurrentCulture")]
    public void Reaching_out_is_found(string symbol) =>
        Assert.Contains(symbol, Impure.Among(ForeignSymbols.Of(typeof(PurityTests).Assembly)));

    [Fact]
    public void An_iterator_is_pure() =>
        Assert.Empty(Impure.Among(["System.Environment", "System.Environment.get_CurrentManagedThreadId", "System.String.Concat"]));

    [Fact]
    public void The_compiler_refuses_banned_symbols_in_Core()
    {
        var core = ProjectFile.Parse("Gatewright.Core.csproj", Repository.Read("src/Gatewright.Core/Gatewright.Core.csproj"));

        Assert.Contains("Microsoft.CodeAnalysis.BannedApiAnalyzers", core.Packages);
        Assert.Contains("BannedSymbols.txt", core.AdditionalFiles);
    }

    [Theory]
    [InlineData("P:System.DateTime.UtcNow")]
    [InlineData("P:System.DateTimeOffset.UtcNow")]
    [InlineData("M:System.Guid.NewGuid")]
    [InlineData("T:System.Random")]
    [InlineData("T:System.Console")]
    [InlineData("N:System.IO")]
    [InlineData("P:System.Globalization.CultureInfo.CurrentCulture")]
    public void The_list_of_banned_symbols_names(string symbol) =>
        Assert.Contains(
            Repository.Read("src/Gatewright.Core/BannedSymbols.txt").Split('\n'),
            line => line.StartsWith(symbol + ";", StringComparison.Ordinal));

    [Fact]
    public void Nobody_silences_the_ban()
    {
        IEnumerable<string> settings = [.. Repository.Files("src", "*.cs"), .. Repository.Files("src", "*.csproj"),
            .. Repository.Files("src", "*.props"), "Directory.Build.props", ".editorconfig"];

        Rule.Holds([.. settings.Where(path => Repository.Read(path).Contains("RS0030", StringComparison.Ordinal))]);
    }
}
