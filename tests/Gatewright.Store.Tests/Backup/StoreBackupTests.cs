using System.IO.Compression;
using System.Text;
using Gatewright.Journal.Entries;
using Gatewright.Store.Backup;
using Gatewright.Store.Blobs;
using Gatewright.Store.Checking;
using Gatewright.Store.Faults;
using Gatewright.Store.Schema;
using Gatewright.Store.Tests.Blobs;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Tests.Backup;

public sealed class StoreBackupTests(Stores stores)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(Engine.Sqlite, Engine.Sqlite)]
    [InlineData(Engine.Sqlite, Engine.Postgres)]
    [InlineData(Engine.Postgres, Engine.Sqlite)]
    [InlineData(Engine.Postgres, Engine.Postgres)]
    public async Task What_is_restored_is_what_was_there_whichever_engine_it_goes_to(Engine from, Engine to)
    {
        StoreLocation first = await FilledAsync(from);
        StoreLocation second = await stores.PlaceAsync(to);
        string backup = NewFile();
        string again = NewFile();

        StoreReport taken = await TakeAsync(first, backup);
        StoreReport restored = await StoreRestore.RunAsync(backup, second, Cancellation);
        await TakeAsync(second, again);

        Assert.True(taken.IsSound);
        Assert.Equal((2, 620, 1), (restored.Clubs, restored.Entries, restored.Blobs));
        Dictionary<string, string> expected = await FilesAsync(backup);
        Assert.Equal(expected, await FilesAsync(again));
        foreach (string table in (string[])["clubs", "entries", "blobs", "memberships", "invitations", "sign_ins", "AspNetUsers", "AspNetUserClaims", "AspNetUserPasskeys"])
        {
            Assert.NotEmpty(expected[$"{table}.jsonl"]);
        }

        Assert.DoesNotContain("snapshots.jsonl", expected.Keys);
        Assert.DoesNotContain("data_protection_keys.jsonl", expected.Keys);
    }

    [Theory]
    [EveryEngine]
    public async Task A_restored_store_goes_on_where_it_was(Engine engine)
    {
        string backup = NewFile();
        await TakeAsync(await FilledAsync(engine), backup);
        StoreLocation location = await stores.PlaceAsync(engine);
        await StoreRestore.RunAsync(backup, location, Cancellation);

        Assert.Equal([601, 5], await new JournalStore(location).AppendAsync("club", [Made.Entry(601), Made.Entry(5)], Cancellation));
        await using StoreDb db = location.Open();
        db.UserClaims.Add(new() { UserId = "a1", ClaimType = "later", ClaimValue = "x" });
        await db.SaveChangesAsync(Cancellation);
        Assert.True((await StoreCheck.RunAsync(location, cancellation: Cancellation)).IsSound);
    }

    [Theory]
    [EveryEngine]
    public async Task A_backup_taken_during_appends_is_a_beginning_that_has_all_acknowledged_before(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        var journal = new JournalStore(location);
        await journal.AppendAsync("club", Made.Entries(1, 2000), Cancellation);
        using var done = new CancellationTokenSource();
        long acknowledged = 2000;
        var appending = Task.Run(async () =>
        {
            for (int next = 2001; !done.IsCancellationRequested; next += 5)
            {
                await journal.AppendAsync("club", Made.Entries(next, 5), Cancellation);
                Interlocked.Exchange(ref acknowledged, next + 4);
            }
        }, Cancellation);
        for (int run = 0; run < 3; run++)
        {
            long before = Interlocked.Read(ref acknowledged);
            string backup = NewFile();
            Assert.Empty((await TakeAsync(location, backup)).Findings);
            StoreLocation restored = await stores.PlaceAsync(Engine.Sqlite);
            await StoreRestore.RunAsync(backup, restored, Cancellation);

            var there = new JournalStore(restored);
            long last = await there.LastAsync("club", Cancellation);
            Assert.InRange(last, before, long.MaxValue);
            Assert.Equal(0, last % 5);
            Assert.Equal(
                (await journal.ReadAsync("club", 0, (int)last, Cancellation)).Select(n => EntryJson.ToLine(n.Entry)),
                (await there.ReadAsync("club", 0, int.MaxValue, Cancellation)).Select(n => EntryJson.ToLine(n.Entry)));
        }

        await done.CancelAsync();
        await appending;
        Assert.True(Interlocked.Read(ref acknowledged) > 2000);
    }

    [Theory]
    [EveryEngine]
    public async Task Only_an_empty_store_is_restored_into(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine);
        string backup = NewFile();
        await TakeAsync(location, backup);

        Assert.Equal(StoreFault.NotEmpty, (await RefusedAsync(backup, location)).Fault);
        Assert.Equal(600, await new JournalStore(location).LastAsync("club", Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task A_backup_that_was_changed_is_refused_and_nothing_of_it_stays(Engine engine)
    {
        string backup = NewFile();
        await TakeAsync(await FilledAsync(Engine.Sqlite), backup);
        StoreLocation location = await stores.NewAsync(engine);

        await ChangedAsync("entries.jsonl", text => text.Replace("\"m1\"", "\"m2\"", StringComparison.Ordinal));
        await ChangedAsync("entries.jsonl", text => text[..(text.Length / 2)]);
        await ChangedAsync("entries.jsonl", text => text[..text.IndexOf('\n', StringComparison.Ordinal)]);
        await ChangedAsync("clubs.jsonl", _ => string.Empty);
        await ChangedAsync("clubs.jsonl", text => text.Replace("\"Last\"", "\"Latest\"", StringComparison.Ordinal));
        await ChangedAsync("sign_ins.jsonl", text => text.Replace("\"Id\":\"", "\"Id\":\"z", StringComparison.Ordinal));
        await ChangedAsync("AspNetUsers.jsonl", text => text + text);
        await ChangedAsync("backup.json", text => text.Replace("blobs", "globs", StringComparison.Ordinal), StoreFault.Damaged);
        await ChangedAsync("backup.json", text => text.Replace("\"format\": 1", "\"format\": 2", StringComparison.Ordinal), StoreFault.Newer);
        await ChangedAsync("backup.json", _ => "{}", StoreFault.NotAStore);

        await StoreRestore.RunAsync(backup, location, Cancellation);

        async Task ChangedAsync(string file, Func<string, string> change, StoreFault fault = StoreFault.Damaged)
        {
            string changed = NewFile();
            File.Copy(backup, changed);
            await using (ZipArchive zip = await ZipFile.OpenAsync(changed, ZipArchiveMode.Update, Cancellation))
            {
                string text = await TextAsync(zip.GetEntry(file)!);
                zip.GetEntry(file)!.Delete();
                await using Stream stream = await zip.CreateEntry(file).OpenAsync(Cancellation);
                await stream.WriteAsync(Encoding.UTF8.GetBytes(change(text)), Cancellation);
            }

            Assert.Equal(fault, (await RefusedAsync(changed, location)).Fault);
            await using StoreDb db = location.Open();
            Assert.False(await db.Clubs.AnyAsync(Cancellation) || await db.Users.AnyAsync(Cancellation) || await db.Entries.AnyAsync(Cancellation));
        }
    }

    [Fact]
    public async Task A_backup_with_bytes_turned_over_is_refused()
    {
        string backup = NewFile();
        await TakeAsync(await FilledAsync(Engine.Sqlite), backup);
        byte[] whole = await File.ReadAllBytesAsync(backup, Cancellation);
        StoreLocation location = await stores.NewAsync(Engine.Sqlite);
        for (int part = 1; part < 8; part++)
        {
            byte[] turned = [.. whole];
            Array.Fill(turned, (byte)0x55, whole.Length * part / 8, 16);
            string changed = NewFile();
            await File.WriteAllBytesAsync(changed, turned, Cancellation);

            await RefusedAsync(changed, location);
        }

        await File.WriteAllBytesAsync(backup, whole[..(whole.Length / 2)], Cancellation);
        Assert.Equal(StoreFault.NotAStore, (await RefusedAsync(backup, location)).Fault);
    }

    [Fact]
    public async Task A_file_of_that_name_is_left_as_it_is_and_a_failure_leaves_none()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite);
        string taken = NewFile();
        await File.WriteAllTextAsync(taken, "kept", Cancellation);

        Assert.Equal(StoreFault.NotEmpty, (await Assert.ThrowsAsync<StoreException>(() => TakeAsync(location, taken))).Fault);
        Assert.Equal("kept", await File.ReadAllTextAsync(taken, Cancellation));
        string nowhere = Path.Combine(stores.NewFolder(), "nowhere", "backup.zip");
        Assert.Equal(StoreFault.Disk, (await Assert.ThrowsAsync<StoreException>(() => TakeAsync(location, nowhere))).Fault);
        Assert.Equal([taken], Directory.GetFiles(Path.GetDirectoryName(taken)!));
        Assert.Equal(StoreFault.Missing, (await RefusedAsync(nowhere, location)).Fault);
    }

    private static Task<StoreReport> TakeAsync(StoreLocation location, string path) =>
        StoreBackup.TakeAsync(location, path, DateTimeOffset.UnixEpoch, Cancellation);

    private static Task<StoreException> RefusedAsync(string backup, StoreLocation location) =>
        Assert.ThrowsAsync<StoreException>(() => StoreRestore.RunAsync(backup, location, Cancellation));

    private string NewFile() => Path.Combine(stores.NewFolder(), "backup.zip");

    private static async Task<Dictionary<string, string>> FilesAsync(string backup)
    {
        await using ZipArchive zip = await ZipFile.OpenReadAsync(backup, Cancellation);
        var files = new Dictionary<string, string>();
        foreach (ZipArchiveEntry entry in zip.Entries)
        {
            files.Add(entry.FullName, await TextAsync(entry));
        }

        return files;
    }

    private static async Task<string> TextAsync(ZipArchiveEntry entry)
    {
        await using Stream stream = await entry.OpenAsync(Cancellation);
        using var reader = new StreamReader(stream);
        return await reader.ReadToEndAsync(Cancellation);
    }

    private async Task<StoreLocation> FilledAsync(Engine engine)
    {
        StoreLocation location = await stores.NewAsync(engine);
        byte[] picture = Pictures.Jpeg(1);
        var journal = new JournalStore(location);
        await journal.AppendAsync("club", Made.Entries(1, 600), Cancellation);
        await journal.AppendAsync("other", Made.Entries(1, 20, "other"), Cancellation);
        await new BlobStore(location).PutAsync("club", Pictures.Hash(picture), picture, Cancellation);
        await using StoreDb db = location.Open();
        db.Users.Add(new()
        {
            Id = "a1", UserName = "keeper", NormalizedUserName = "KEEPER", DisplayName = "Zoë \"the pin\"\nkeeper", PasswordHash = "hash",
            SecurityStamp = "s", ConcurrencyStamp = "c", LockoutEnabled = true, AccessFailedCount = 2,
            LockoutEnd = new DateTimeOffset(2026, 3, 1, 12, 30, 15, 250, TimeSpan.Zero),
        });
        db.UserClaims.Add(new() { UserId = "a1", ClaimType = "kind", ClaimValue = "value" });
        db.UserPasskeys.Add(new()
        {
            UserId = "a1", CredentialId = [1, 2, 254, 255],
            Data = new()
            {
                PublicKey = [3, 4], Name = "the \"phone\"", CreatedAt = new(2026, 3, 1, 12, 30, 15, TimeSpan.Zero), SignCount = 3,
                Transports = ["internal"], IsUserVerified = true, AttestationObject = [5], ClientDataJson = [6],
            },
        });
        db.Memberships.Add(new() { Club = "club", Member = "m1", AccountId = "a1", Role = "keeper" });
        db.Memberships.Add(new() { Club = "club", Member = "m2", AccountId = null, Role = "helper" });
        db.Invitations.Add(new() { Club = "club", Invitation = "i1", SecretHash = new string('a', 64), Role = "crew", Boats = "[\"b1\"]", MadeTicks = 5, ExpiresTicks = 6 });
        db.SignIns.Add(new() { Id = Guid.Parse("01900000-0000-7000-8000-00000000000a"), AtTicks = 7, AccountId = "a1", Outcome = "signed-in" });
        await db.SaveChangesAsync(Cancellation);
        return location;
    }
}
