using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>What was told of boats, beside what was read.</summary>
public sealed class ToldTests
{
    private const string Header = "boat,class,seat,side,item,at,reading,bow_high,port_low,date\n";
    private const string High = "Kestrel,4-,3,starboard,gate,abeam,5.5,0,0,2026-05-04\n";
    private const string Sound = "Kestrel,4-,1,starboard,gate,abeam,4,0,0,2026-05-04\nKestrel,4-,2,port,gate,abeam,4,0,0,2026-05-04\n";
    private const string Knock = "Kestrel,4-,3,starboard,knock,,,,,2026-05-03\n";

    [Fact]
    public void A_knock_is_said_and_makes_the_rigger_the_likelier_cause()
    {
        string without = Plain(Header + Sound + High);
        string with = Plain(Header + Sound + High + Knock);

        Assert.Contains("told: a knock at seat 3 starboard", with, StringComparison.Ordinal);
        Assert.DoesNotContain("told:", without, StringComparison.Ordinal);
        Assert.Contains("likely: rigger knocked or mounted wrong", with, StringComparison.Ordinal);
        Assert.DoesNotContain("likely: rigger knocked or mounted wrong", without, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Hobby,2-,1,port,knock,,,,,2026-05-03\n", "was told of and not read")]
    [InlineData(
        "Hobby,2-,1,port,gate,abeam,4,0,0,2026-05-01\nHobby,2-,1,port,mended,,,,,2026-05-02\n",
        "was not read since its gates were last changed")]
    public void A_boat_that_cannot_be_judged_is_named_and_needs_attention(string rows, string why)
    {
        ProgramRun run = ProgramRun.Of(["check", "-", "--plain"], new(Header + Sound + rows));

        Assert.Equal(1, run.Status);
        Assert.Contains($"'Hobby' {why}. Read its gates, then check again.", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Boat Hobby", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gate_of_a_file_that_was_mended_under_its_floor_and_not_read_since_keeps_its_boat_ashore()
    {
        const string Hobby = "Hobby,2-,1,port,gate,abeam,-3,0,0,2026-05-01\nHobby,2-,2,starboard,gate,abeam,4,0,0,2026-05-01\nHobby,2-,1,port,mended,,,,,2026-05-02\n";

        string said = Plain(Header + Hobby);

        Assert.Contains("Boat Hobby, class 2-: good.", said, StringComparison.Ordinal);
        Assert.Contains(
            "'Hobby' stays ashore until it is read again, by what was read before: seat 1 port was mended on 2026-05-02 and not read since.", said, StringComparison.Ordinal);
        Assert.Contains("Treat as stop until read again: Hobby", said, StringComparison.Ordinal);

        // Rigged on the other side since, there is no such gate any more.
        Assert.DoesNotContain("stays ashore", Plain(Header + Hobby + "Hobby,2-,1,starboard,gate,abeam,4,0,0,2026-05-03\n"), StringComparison.Ordinal);
    }

    private static string Plain(string file) => ProgramRun.Of(["check", "-", "--plain"], new(file)).Output;
}
