using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>Photos as they are taken here: made small in the browser, kept on this device until they are sent.</summary>
public sealed class Photos(IJSRuntime script, ThisDevice device, ClubInHand inHand)
{
    /// <summary>The longer side at most, pixels: small enough for a shed's network, large enough to see a crack.</summary>
    public const int LongestSide = 1600;

    private const string MediaType = "image/jpeg";
    private Task<IJSObjectReference>? _module;

    /// <summary>The picture that was chosen in a file input, made small.</summary>
    /// <returns>A JPEG; null where none was chosen.</returns>
    /// <exception cref="PhotoException">It is no picture that this browser can read, or stays too large.</exception>
    public async Task<byte[]?> TakeAsync(ElementReference input)
    {
        byte[]? bytes;
        try
        {
            IJSObjectReference module = await (_module ??= script.InvokeAsync<IJSObjectReference>("import", "./photo.js").AsTask());
            bytes = await module.InvokeAsync<byte[]?>("picture", input, LongestSide);
        }
        catch (JSException broken)
        {
            throw new PhotoException(broken);
        }

        return bytes is { Length: 0 or > EntryRules.LargestPhoto } ? throw new PhotoException(null) : bytes;
    }

    /// <summary>Keeps a picture and records that it was taken: both, or neither.</summary>
    /// <param name="bytes">The picture.</param>
    /// <param name="thing">What it is of: <see cref="Things.Boat"/> or <see cref="Things.Gate"/>.</param>
    /// <param name="key">Which.</param>
    /// <returns>The ids of the entries.</returns>
    /// <exception cref="NotRecordedException">It is not for the member here to record.</exception>
    /// <exception cref="ShelfException">It is not kept.</exception>
    public async Task<IReadOnlyList<Guid>> RecordAsync(byte[] bytes, string thing, string key)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        string club = inHand.Held.Club;
        string sha256 = await device.Device.AddPhotoAsync(club, bytes, MediaType);
        try
        {
            return await inHand.RecordAsync(new PhotoTaken(thing, key, sha256, bytes.Length, MediaType));
        }
        catch (Exception refused) when (refused is ShelfException or NotRecordedException)
        {
            // A picture that nothing tells of would take its room for ever.
            if (!inHand.Club.All().Any(r => r.Fact is PhotoTaken taken && taken.Sha256 == sha256))
            {
                await device.Device.DiscardPhotosAsync(club, [sha256]);
            }

            throw;
        }
    }
}

/// <summary>What was chosen is no picture that can be kept.</summary>
/// <param name="cause">What the browser said; null where it said nothing.</param>
public sealed class PhotoException(Exception? cause) : Exception("This picture cannot be read.", cause);
