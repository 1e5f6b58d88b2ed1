using System.Text;
using Gatewright.Journal.Exchange.ChancesFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Exchange.ChancesFiles;

/// <summary>Files of chances for tests, and what comes of reading them.</summary>
internal static class Tables
{
    public const string Format = "\"format\": \"gatewright.chances/1\"";

    public static ChancesInput Read(string text) => ChancesFile.Read("club.json", new MemoryStream(Encoding.UTF8.GetBytes(text)));

    /// <summary>The table of a file without an error.</summary>
    public static ClubChances Of(string text)
    {
        ChancesInput input = Read(text);
        Assert.Equal("", Csv.Messages([.. input.Errors.Select(e => e.ToString())]));
        return input.Table!;
    }

    /// <summary>All errors of a file. That a file with errors gives no table is part of every check.</summary>
    public static string ErrorsOf(string text)
    {
        ChancesInput input = Read(text);
        Assert.Null(input.Table);
        return Csv.Messages([.. input.Errors.Select(e => e.ToString())]);
    }

    /// <summary>Whether two tables say the same.</summary>
    public static void AssertSame(ClubChances expected, ClubChances actual)
    {
        Assert.Equal(expected.Before, actual.Before);
        Assert.Equal(expected.Reports, actual.Reports);
        Assert.Equal(expected.Jobs.Jobs, actual.Jobs.Jobs);
    }
}
