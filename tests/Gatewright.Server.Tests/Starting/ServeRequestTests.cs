using Gatewright.Server.Hosting;
using Gatewright.Server.Starting;
using Gatewright.Store;

namespace Gatewright.Server.Tests.Starting;

public class ServeRequestTests
{
    private static readonly StoreLocation Demo = StoreLocation.File("demo.db");
    private static readonly ServeRequest Usual = new(null, "Host=db", ["http://127.0.0.1:5380"], null, false, false, false);

    [Fact]
    public void On_one_machine_cookies_need_no_https()
    {
        ServeOptions options = Read(Usual);

        Assert.True(options.IsLoopback);
        Assert.False(options.IsHttps);
    }

    [Fact]
    public void Behind_a_proxy_with_a_certificate_they_do()
    {
        ServeOptions options = Read(Usual with { PublicAddress = "https://gates.example.org", IsBehindProxy = true });

        Assert.True(options.IsHttps);
    }

    [Theory]
    [InlineData("http://0.0.0.0:80", null, "--public-address")]
    [InlineData("http://0.0.0.0:80", "http://gates.example.org", "https alone")]
    [InlineData("http://127.0.0.1:5380/under", null, "without a path")]
    [InlineData("ftp://127.0.0.1", null, "without a path")]
    [InlineData("here", null, "without a path")]
    public void What_would_send_passwords_in_the_open_or_makes_no_sense_is_refused(string listen, string? seen, string said) =>
        Assert.Contains(Problems(Usual with { Listen = [listen], PublicAddress = seen }), p => p.Contains(said, StringComparison.Ordinal));

    [Fact]
    public void Everything_that_is_wrong_is_told_at_once()
    {
        IReadOnlyList<string> problems = Problems(Usual with
        {
            Data = "folder", Listen = ["nowhere", "http://10.0.0.1:1"], PublicAddress = "gates", Demo = true, NewClub = true,
        });

        Assert.Equal(6, problems.Count);
    }

    [Theory]
    [InlineData("http://10.0.0.1:1", null)]
    [InlineData("http://127.0.0.1:1", "https://gates.example.org")]
    public void The_demo_which_lets_in_whoever_asks_is_for_this_machine_alone(string listen, string? seen) =>
        Assert.Contains(
            Problems(Usual with { Database = null, Listen = [listen], PublicAddress = seen, Demo = true }),
            p => p.Contains("this machine alone", StringComparison.Ordinal));

    private static ServeOptions Read(ServeRequest request)
    {
        (ServeOptions? options, IReadOnlyList<string> problems) = request.Read(null);
        Assert.Empty(problems);
        return options!;
    }

    private static IReadOnlyList<string> Problems(ServeRequest request)
    {
        (ServeOptions? options, IReadOnlyList<string> problems) = request.Read(Demo);
        Assert.Null(options);
        return problems;
    }
}
