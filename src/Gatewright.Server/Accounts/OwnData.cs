using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Store;
using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Server.Accounts;

/// <summary>All that is held on one person, as one JSON document.</summary>
internal sealed class OwnData(StoreDb db, JournalStore store)
{
    private const int Page = 2000;

    /// <summary>Writes it, the journals read page by page.</summary>
    public async Task WriteAsync(string accountId, Stream to, CancellationToken cancellation)
    {
        Account account = await db.Users.AsNoTracking().FirstAsync(a => a.Id == accountId, cancellation).ConfigureAwait(false);
        List<MembershipRow> memberships = await db.Memberships.AsNoTracking()
            .Where(m => m.AccountId == accountId).ToListAsync(cancellation).ConfigureAwait(false);
        await using var json = new Utf8JsonWriter(to, new() { Indented = true });
        json.WriteStartObject();
        json.WriteString("format", "gatewright.own-data/1");
        json.WriteStartObject("account");
        json.WriteString("signInName", account.UserName);
        json.WriteString("displayName", account.DisplayName);
        json.WriteString("password", "kept only as a hash that it cannot be read from");
        json.WriteEndObject();
        await WriteSignInsAsync(json, accountId, cancellation).ConfigureAwait(false);
        json.WriteStartArray("memberships");
        foreach (MembershipRow membership in memberships)
        {
            await WriteMembershipAsync(json, membership, cancellation).ConfigureAwait(false);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        await json.FlushAsync(cancellation).ConfigureAwait(false);
    }

    private async Task WriteSignInsAsync(Utf8JsonWriter json, string account, CancellationToken cancellation)
    {
        json.WriteStartArray("signIns");
        List<SignInRow> rows = await db.SignIns.AsNoTracking()
            .Where(s => s.AccountId == account).OrderBy(s => s.AtTicks).ToListAsync(cancellation).ConfigureAwait(false);
        foreach (SignInRow row in rows)
        {
            json.WriteStartObject();
            json.WriteString("at", new DateTimeOffset(row.AtTicks, TimeSpan.Zero));
            json.WriteString("outcome", row.Outcome);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private async Task WriteMembershipAsync(Utf8JsonWriter json, MembershipRow membership, CancellationToken cancellation)
    {
        json.WriteStartObject();
        json.WriteString("club", membership.Club);
        json.WriteString("member", membership.Member);
        json.WriteString("role", membership.Role);
        json.WriteStartArray("entries");
        long after = 0;
        IReadOnlyList<Numbered> page;
        do
        {
            page = await store.ReadAsync(membership.Club, after, Page, cancellation).ConfigureAwait(false);
            foreach (Numbered numbered in page)
            {
                after = numbered.Number;
                if (numbered.Entry.Member == membership.Member)
                {
                    EntryJson.Write(json, numbered.Entry);
                }
            }

            await json.FlushAsync(cancellation).ConfigureAwait(false);
        }
        while (page.Count == Page);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
