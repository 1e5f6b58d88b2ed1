using System.Diagnostics;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Microsoft.Data.Sqlite;

namespace Gatewright.Store.Tests.Faults;

/// <summary>The disk under a store in one file is full, or may not be written.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class DiskTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_full_disk_is_told_loses_nothing_and_appending_goes_on_once_there_is_room()
    {
        using var disk = SmallDisk.Mount(stores.NewFolder());
        StoreLocation location = DataFolder.Locate(Path.Combine(disk.Folder, "data"));
        string ballast = Path.Combine(disk.Folder, "ballast");
        await File.WriteAllBytesAsync(ballast, new byte[3 << 20], Cancellation);
        await using AppendingProcess process = AppendingProcess.Start(location, 1);
        await process.UntilAsync(() => process.Told(StoreFault.Full) > 0);
        long full = process.Acknowledged;
        Assert.True(full > 0);

        File.Delete(ballast);
        await process.UntilAsync(() => process.Acknowledged > full + 30);
        await process.KillAsync();

        await Acknowledged.IsKeptAsync(location, process.Acknowledged);
    }

    [Fact]
    public async Task A_store_that_may_not_be_written_is_told()
    {
        Assert.SkipUnless(Environment.UserName == "root", "rights are taken from another user, which only root can be");
        string folder = stores.NewFolder();
        StoreLocation location = DataFolder.Locate(folder);
        await StoreOpening.OpenAsync(location, Cancellation);
        await new JournalStore(location).AppendAsync("club", Made.Entries(1, 3), Cancellation);
        SqliteConnection.ClearAllPools();
        Readable(folder);

        await using AppendingProcess process = AppendingProcess.Start(location, 4, "runuser", "-u", "nobody", "--");
        await process.UntilAsync(() => process.Told(StoreFault.ReadOnly) > 0);
        await process.KillAsync();

        Assert.Equal(0, process.Acknowledged);
        Assert.Equal(3, await Acknowledged.IsKeptAsync(location, 3));
    }

    [Fact]
    public async Task A_store_that_is_opened_to_be_read_only_is_told()
    {
        StoreLocation location = await stores.NewAsync(Engine.Sqlite);
        await new JournalStore(location).AppendAsync("club", Made.Entries(1, 3), Cancellation);
        var reading = new StoreLocation(
            Engine.Sqlite, new SqliteConnectionStringBuilder(location.ConnectionString) { Mode = SqliteOpenMode.ReadOnly }.ConnectionString);

        StoreException said = await Assert.ThrowsAsync<StoreException>(
            () => new JournalStore(reading).AppendAsync("club", Made.Entries(4, 3), Cancellation));

        Assert.Equal(StoreFault.ReadOnly, said.Fault);
        Assert.Equal(3, await Acknowledged.IsKeptAsync(location, 3));
    }

    [Fact]
    public async Task A_store_that_another_program_holds_is_a_matter_of_trying_again()
    {
        StoreLocation location = await stores.NewAsync(Engine.Sqlite);
        var hasty = new StoreLocation(
            Engine.Sqlite, new SqliteConnectionStringBuilder(location.ConnectionString) { DefaultTimeout = 1 }.ConnectionString);
        await using var other = new SqliteConnection(location.ConnectionString);
        await other.OpenAsync(Cancellation);
        await using (SqliteTransaction held = other.BeginTransaction())
        {
            StoreUnavailableException said = await Assert.ThrowsAsync<StoreUnavailableException>(
                () => new JournalStore(hasty).AppendAsync("club", Made.Entries(1, 3), Cancellation));
            Assert.Equal(StoreFault.Busy, said.Fault);
        }

        Assert.Equal([1, 2, 3], await new JournalStore(hasty).AppendAsync("club", Made.Entries(1, 3), Cancellation));
    }

    /// <summary>Others may look at all of it and write none of it.</summary>
    private static void Readable(string folder)
    {
        for (DirectoryInfo? up = new(folder); up is not null && up.FullName.Contains("gw-store-", StringComparison.Ordinal); up = up.Parent)
        {
            Run("chmod", "755", up.FullName);
        }

        foreach (string file in Directory.GetFiles(folder))
        {
            Run("chmod", "644", file);
        }
    }

    private static void Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
