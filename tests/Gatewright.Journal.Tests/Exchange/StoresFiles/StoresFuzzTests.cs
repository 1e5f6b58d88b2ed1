using System.Text;
using FsCheck.Xunit;
using Gatewright.Journal.Exchange.StoresFiles;

namespace Gatewright.Journal.Tests.Exchange.StoresFiles;

public sealed class StoresFuzzTests
{
    private static readonly byte[] s_good = Encoding.UTF8.GetBytes(Shelf.Rows("insert,4,3,", "shim,0.5,8,\"left; drawer\"", "pin,,1,"));

    [Property(MaxTest = 2_000)]
    public void Whatever_a_file_holds_it_gives_parts_or_errors_and_never_both(int seed)
    {
        var random = new Random(seed);
        byte[] bytes = [.. s_good];
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            bytes[random.Next(bytes.Length)] = (byte)(random.Next(3) == 0 ? random.Next(256) : ",;\"\n 0-"[random.Next(7)]);
        }

        StoresInput input = Shelf.Read(bytes);

        Assert.True(input.Errors.Count == 0 || input.Stores.Parts.Count == 0);
        Assert.All(input.Stores.Parts, p => Assert.InRange(p.Count, 0, StoresFormat.MostOfAPart));
    }
}
