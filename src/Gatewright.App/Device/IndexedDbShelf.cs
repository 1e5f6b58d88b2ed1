using System.Buffers.Binary;
using System.Text.Json;
using Gatewright.App.Frame;
using Gatewright.Replica.Shelves;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>The shelf in the browser's own database.</summary>
public sealed class IndexedDbShelf(IJSRuntime script, Texts<DeviceTexts> texts) : IDeviceShelf
{
    private Task<IJSObjectReference>? _module;

    /// <inheritdoc/>
    public async Task<ShelfFront> OpenAsync(string newDevice) =>
        JsonSerializer.Deserialize(await CallAsync<string>("open", newDevice), ShelfJson.Default.ShelfFront)!;

    /// <inheritdoc/>
    public async Task SetAsync(string name, string? value) => await CallAsync<object?>("set", name, value);

    /// <inheritdoc/>
    public async Task HoldAsync(HeldClub club) =>
        await CallAsync<object?>("hold", JsonSerializer.Serialize(club, ShelfJson.Default.HeldClub));

    /// <inheritdoc/>
    public async Task LetGoAsync(string club) => await CallAsync<object?>("letGo", club);

    /// <inheritdoc/>
    public async Task<KeptClub> ReadAsync(string club, ReadFrom from)
    {
        var packed = Packed.Of(await CallAsync<byte[]>("read", club, from.Number, from.Place, from.WithSnapshot));
        PackedClub head = JsonSerializer.Deserialize(packed.Head.Span, ShelfJson.Default.PackedClub)!;
        KeptSnapshot? snapshot = head.Snapshot is { } told ? new(told.Number, told.Place, packed.Next(told.Length), told.Vouched) : null;
        return new(head.Held, snapshot, [.. head.Blocks.Select(packed.Next)], head.Own);
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<long>> AddOwnAsync(string club, IReadOnlyList<string> texts) =>
        await CallAsync<long[]>("addOwn", club, texts.ToArray());

    /// <inheritdoc/>
    public async Task ChangeOwnAsync(string club, IReadOnlyList<OwnRecord> replaced, IReadOnlyList<long> removed) =>
        await CallAsync<object?>(
            "changeOwn", club, replaced.Select(r => r.Place).ToArray(), replaced.Select(r => r.Text).ToArray(), removed.ToArray());

    /// <inheritdoc/>
    public async Task<bool> AppendAsync(string club, PulledBlock block, IReadOnlyList<long> removed)
    {
        ArgumentNullException.ThrowIfNull(block);
        return await CallAsync<bool>("append", club, block.After, block.Last, block.Lines.ToArray(), removed.ToArray());
    }

    /// <inheritdoc/>
    public async Task StartOverAsync(string club, IReadOnlyList<string> own) =>
        await CallAsync<object?>("startOver", club, own.ToArray());

    /// <inheritdoc/>
    public async Task MoveAsync(string from, string to, IReadOnlyList<string> own) =>
        await CallAsync<object?>("move", from, to, own.ToArray());

    /// <inheritdoc/>
    public async Task PutSnapshotAsync(string club, KeptSnapshot snapshot)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        await CallAsync<object?>("putSnapshot", club, snapshot.Number, snapshot.Place, snapshot.Bytes.ToArray());
    }

    /// <inheritdoc/>
    public async Task PutPhotoAsync(string club, KeptPhoto photo)
    {
        ArgumentNullException.ThrowIfNull(photo);
        await CallAsync<object?>("putPhoto", club, photo.Sha256, photo.MediaType, photo.Bytes.ToArray(), photo.IsUnsent);
    }

    /// <inheritdoc/>
    public async Task<KeptPhoto?> PhotoAsync(string club, string sha256)
    {
        byte[] found = await CallAsync<byte[]>("photo", club, sha256);
        if (found.Length == 0)
        {
            return null;
        }

        var packed = Packed.Of(found);
        PackedPhoto head = JsonSerializer.Deserialize(packed.Head.Span, ShelfJson.Default.PackedPhoto)!;
        return new(sha256, head.MediaType, packed.Rest, head.Unsent);
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyDictionary<string, PhotoThere>> PhotosAsync(string club) =>
        JsonSerializer.Deserialize(await CallAsync<string>("photos", club), ShelfJson.Default.DictionaryStringPhotoThere)!;

    /// <inheritdoc/>
    public async Task PhotoSentAsync(string club, string sha256) => await CallAsync<object?>("photoSent", club, sha256);

    /// <inheritdoc/>
    public async Task RemovePhotosAsync(string club, IReadOnlyList<string> sha256) =>
        await CallAsync<object?>("removePhotos", club, sha256.ToArray());

    private async Task<T> CallAsync<T>(string name, params object?[] given)
    {
        try
        {
            IJSObjectReference module = await (_module ??= script.InvokeAsync<IJSObjectReference>("import", "./shelf.js").AsTask());
            return await module.InvokeAsync<T>(name, given);
        }
        catch (JSException broken)
        {
            throw ShelfFaults.Of(broken, texts);
        }
    }

    /// <summary>A description, and the bytes it describes, one after the other.</summary>
    private sealed class Packed(ReadOnlyMemory<byte> head, ReadOnlyMemory<byte> rest)
    {
        public ReadOnlyMemory<byte> Head { get; } = head;

        public ReadOnlyMemory<byte> Rest { get; private set; } = rest;

        public static Packed Of(byte[] whole)
        {
            int head = BinaryPrimitives.ReadInt32LittleEndian(whole);
            return new(whole.AsMemory(4, head), whole.AsMemory(4 + head));
        }

        public ReadOnlyMemory<byte> Next(int length)
        {
            ReadOnlyMemory<byte> next = Rest[..length];
            Rest = Rest[length..];
            return next;
        }
    }
}
