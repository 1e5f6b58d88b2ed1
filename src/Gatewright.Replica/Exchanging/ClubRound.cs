using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Exchanging;

/// <summary>One club's part of an exchange: a page first, for the server's clock; then what is here is sent; then the rest is fetched.</summary>
/// <param name="server">The server.</param>
/// <param name="device">The device.</param>
/// <param name="size">How much goes at once.</param>
/// <param name="isSure">Whether who is signed in was asked a moment ago.</param>
/// <param name="photosRefused">Pictures that the server does not take, with why.</param>
internal sealed class ClubRound(Server server, Device device, BatchSize size, bool isSure, IDictionary<string, string> photosRefused)
{
    // A clock that is put right again and again is beyond help.
    private const int MostRepairs = 3;

    public async Task RunAsync(ClubCopy copy, CancellationToken cancellation)
    {
        PulledPage page = await PageAsync(copy, cancellation).ConfigureAwait(true);
        await CompareAsync(page.Now).ConfigureAwait(true);
        await TakeAsync(copy, page, cancellation).ConfigureAwait(true);
        await PushAsync(copy, cancellation).ConfigureAwait(true);
        await PullAsync(copy, cancellation).ConfigureAwait(true);
        await SendPhotosAsync(copy, cancellation).ConfigureAwait(true);
    }

    /// <summary>Entries whose clock is found wrong are moved before anybody has them.</summary>
    private async Task CompareAsync(DateTimeOffset right)
    {
        if (device.Clock.IsWrong(right))
        {
            foreach (ClubCopy copy in device.Open.Where(c => c.Held.Home == ClubHome.Server))
            {
                await copy.Exchanged.RestampAsync(right, all: false).ConfigureAwait(true);
            }
        }

        device.Clock.Compare(right);
    }

    private async Task PushAsync(ClubCopy copy, CancellationToken cancellation)
    {
        int repairs = 0;
        while (copy.Exchanged.Unsent(copy.Held.Member) is { Count: > 0 } unsent)
        {
            var batch = PushBatch.Of(unsent, size.Lines);
            if (await SentAsync(copy, batch, cancellation).ConfigureAwait(true) is not { } answer)
            {
                continue;
            }

            var outcome = PushOutcome.Of(batch, answer, unsent.Select(o => o.Entry.Id).ToHashSet());
            await copy.Exchanged.SettleAsync(outcome.Settled).ConfigureAwait(true);
            if (outcome.IsOtherMember)
            {
                await OtherMemberAsync(copy, batch, answer).ConfigureAwait(true);
            }

            if (outcome.IsClockAhead)
            {
                await RepairAsync(copy, DateTimeOffset.FromUnixTimeMilliseconds(answer.Now), ++repairs).ConfigureAwait(true);
            }

            if (outcome.Conflicts.Count > 0)
            {
                await PullAsync(copy, cancellation).ConfigureAwait(true);
                await copy.Exchanged.ResolveAsync(outcome.Conflicts).ConfigureAwait(true);
            }

            bool moved = outcome.Settled.Count > 0 || outcome.IsClockAhead || outcome.IsOtherMember || outcome.Conflicts.Count > 0;
            if (!moved && outcome.Early.Count > 0)
            {
                // What they retract did not go either.
                await copy.Exchanged.SettleAsync(outcome.Early).ConfigureAwait(true);
            }
            else if (!moved)
            {
                throw new ServerException(ServerTrouble.Refused, "The server did not say what became of what was sent.");
            }
        }
    }

    /// <summary>Null where it was too much at once: then less is sent, or what is too much alone is refused.</summary>
    private async Task<PushAnswer?> SentAsync(ClubCopy copy, PushBatch batch, CancellationToken cancellation)
    {
        try
        {
            PushAnswer answer = await server.PushAsync(copy.Held.Club, batch.Lines, cancellation).ConfigureAwait(true);
            size.Grow();
            return answer;
        }
        catch (ServerException cannot) when (cannot.Trouble == ServerTrouble.TooLarge && batch.Entries.Count > 1)
        {
            size.Cut(batch.Entries.Count);
            return null;
        }
        catch (ServerException cannot) when (cannot.Trouble == ServerTrouble.TooLarge)
        {
            await copy.Exchanged.SettleAsync([PushOutcome.Refused(batch.Entries[0], RefusalCode.TooLarge, [cannot.Message])]).ConfigureAwait(true);
            return null;
        }
    }

    /// <summary>Somebody else may have signed in meanwhile. Where that was just asked, it is as the server says.</summary>
    private Task OtherMemberAsync(ClubCopy copy, PushBatch batch, PushAnswer answer) => isSure
        ? copy.Exchanged.SettleAsync([.. answer.Refused
            .Where(r => r.Code == RefusalCode.OtherMember && r.Line > 0 && r.Line <= batch.Entries.Count)
            .Select(r => PushOutcome.Refused(batch.Entries[r.Line - 1], r.Code, r.Reasons))])
        : throw new ServerException(ServerTrouble.Session, "Somebody else is signed in.");

    private async Task RepairAsync(ClubCopy copy, DateTimeOffset right, int repairs)
    {
        if (repairs > MostRepairs)
        {
            throw new ServerException(ServerTrouble.Refused, "The clock of this device changes too much to send anything: put it right.");
        }

        device.Clock.Compare(right);
        await copy.Exchanged.RestampAsync(right, all: true).ConfigureAwait(true);
    }

    private async Task PullAsync(ClubCopy copy, CancellationToken cancellation) =>
        await TakeAsync(copy, await PageAsync(copy, cancellation).ConfigureAwait(true), cancellation).ConfigureAwait(true);

    private async Task<PulledPage> PageAsync(ClubCopy copy, CancellationToken cancellation)
    {
        PulledPage page = await server.PullAsync(copy.Held.Club, copy.Number, size.Lines, cancellation).ConfigureAwait(true);
        size.Grow();
        return page;
    }

    /// <summary>Takes a page, and goes on until there are no more.</summary>
    private async Task TakeAsync(ClubCopy copy, PulledPage page, CancellationToken cancellation)
    {
        if (page.Last < page.After)
        {
            await copy.Exchanged.StartOverAsync().ConfigureAwait(true);
            page = await PageAsync(copy, cancellation).ConfigureAwait(true);
        }

        while (true)
        {
            await TakeAsync(copy, page).ConfigureAwait(true);
            if (copy.Number >= page.Last)
            {
                return;
            }

            if (copy.Number <= page.After)
            {
                throw new ServerException(ServerTrouble.Unreachable, "A page of the journal came empty.");
            }

            page = await PageAsync(copy, cancellation).ConfigureAwait(true);
        }
    }

    private static async Task TakeAsync(ClubCopy copy, PulledPage page)
    {
        try
        {
            await copy.Exchanged.TakeAsync(page.Lines).ConfigureAwait(true);
        }
        catch (FormatException broken)
        {
            throw new ServerException(ServerTrouble.Unreachable, broken.Message, cause: broken);
        }
    }

    private async Task SendPhotosAsync(ClubCopy copy, CancellationToken cancellation)
    {
        string club = copy.Held.Club;
        foreach ((string sha256, PhotoThere there) in await device.Shelf.PhotosAsync(club).ConfigureAwait(true))
        {
            if (!there.IsUnsent || photosRefused.ContainsKey(sha256) || await device.PhotoAsync(club, sha256).ConfigureAwait(true) is not { } photo)
            {
                continue;
            }

            try
            {
                await server.SendPhotoAsync(club, photo, cancellation).ConfigureAwait(true);
                await device.Shelf.PhotoSentAsync(club, sha256).ConfigureAwait(true);
            }
            catch (ServerException cannot) when (cannot.Trouble is ServerTrouble.TooLarge or ServerTrouble.Refused || (isSure && cannot.Trouble == ServerTrouble.Session))
            {
                photosRefused[sha256] = cannot.Message;
            }
        }
    }
}
