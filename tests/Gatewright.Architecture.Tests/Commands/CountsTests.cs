namespace Gatewright.Architecture.Tests.Commands;

/// <summary>The sum that ./test closes with, on summaries as the test platform writes them.</summary>
public class CountsTests
{
    [Fact]
    public void Each_test_is_counted_as_what_it_was() => Assert.Equal("9 1 2", Counts(
        """
        Test run summary: Failed!
          Gatewright.Core.Tests.dll (net10.0|x64) failed with 1 error(s) (324ms)

          total: 12
          failed: 1
          succeeded: 9
          skipped: 2
          duration: 906ms
        """));

    [Fact]
    public void A_host_that_crashed_counts_as_a_failure() => Assert.Equal("3 2 0", Counts(
        """
        Test run summary: Failed!

          error: 1

          total: 4
          failed: 1
          succeeded: 3
          skipped: 0
        """));

    [Fact]
    public void What_a_test_printed_is_not_counted() => Assert.Equal("1 0 0", Counts(
        """
          failed: 7
        Test run summary: Passed!
          total: 1
          failed: 0
          succeeded: 1
          skipped: 0
        """));

    [Fact]
    public void Without_a_summary_nothing_is_counted() => Assert.Equal("0 0 0", Counts("Unhandled exception."));

    private static string Counts(string log) =>
        Shell.Run(Repository.Root, log, "awk", "-f", ".ci/counts.awk").Output.Trim();
}
