using System.Text;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Journal.Tests.Exchange.StoresFiles;

/// <summary>Files of stores for tests, and what comes of reading them.</summary>
internal static class Shelf
{
    public const string Header = "part,size,count,note";

    public static StoresInput Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    public static StoresInput Read(byte[] file) => StoresCsv.Read("stores.csv", new MemoryStream(file));

    /// <summary>Rows under the header of the format.</summary>
    public static string Rows(params string[] rows) => Csv.Lines([Header, .. rows]);

    /// <summary>All errors of a file. That a file with errors gives no part is part of every check.</summary>
    public static string ErrorsOf(string text)
    {
        StoresInput input = Read(text);
        Assert.Empty(input.Stores.Parts);
        return Csv.Messages([.. input.Errors.Select(e => e.ToString())]);
    }

    public static string WarningsOf(string text) => Csv.Messages([.. Read(text).Warnings.Select(w => w.ToString())]);

    /// <summary>The parts of a file without an error: "3 × insert 4°, 0 × pin".</summary>
    public static string PartsOf(string text) => PartsOf(Read(text));

    public static string PartsOf(StoresInput input)
    {
        Assert.Equal("", Csv.Messages([.. input.Errors.Select(e => e.ToString())]));
        return string.Join(", ", input.Stores.Parts);
    }
}
