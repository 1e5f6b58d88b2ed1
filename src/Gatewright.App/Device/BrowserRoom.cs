using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.JSInterop;

namespace Gatewright.App.Device;

/// <summary>What this browser alone can say or do: how much room it gives, choices that hold before the program runs, files to keep.</summary>
public sealed partial class BrowserRoom(IJSRuntime script)
{
    private Task<IJSObjectReference>? _module;

    /// <summary>How much room there is, and whether it is kept for good.</summary>
    public async Task<Room> RoomAsync() => JsonSerializer.Deserialize(await (await ModuleAsync()).InvokeAsync<string>("room"), RoomJson.Default.Room)!;

    /// <summary>Asks the browser to keep what is here even when it runs short of room; whether it agrees is its own affair.</summary>
    public async Task<bool> PersistAsync() => await (await ModuleAsync()).InvokeAsync<bool>("persist");

    /// <summary>A choice that holds before the program runs: "language" or "ground"; null for none.</summary>
    public async Task<string?> ChosenAsync(string name) => await (await ModuleAsync()).InvokeAsync<string?>("chosen", name);

    /// <summary>Chooses the language of the next start; null for the browser's own.</summary>
    public async Task ChooseLanguageAsync(string? language)
    {
        await (await ModuleAsync()).InvokeVoidAsync("choose", "language", language);
        await ForgetShedAsync();
    }

    /// <summary>Chooses light or dark, at once; null for as the device has it.</summary>
    public async Task ChooseGroundAsync(string? ground) => await (await ModuleAsync()).InvokeVoidAsync("setGround", ground);

    /// <summary>Forgets the shed as it was last seen.</summary>
    public async Task ForgetShedAsync() => await (await ModuleAsync()).InvokeVoidAsync("forgetShed");

    /// <summary>Hands over a text as a file.</summary>
    public async Task SaveAsync(string name, string text) => await (await ModuleAsync()).InvokeVoidAsync("save", name, text, "text/plain");

    /// <summary>Hands over bytes as a file.</summary>
    public async Task SaveAsync(string name, byte[] bytes, string mediaType) => await (await ModuleAsync()).InvokeVoidAsync("save", name, bytes, mediaType);

    private Task<IJSObjectReference> ModuleAsync() => _module ??= script.InvokeAsync<IJSObjectReference>("import", "./device.js").AsTask();

    /// <summary>How the script writes it.</summary>
    [JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
    [JsonSerializable(typeof(Room))]
    private sealed partial class RoomJson : JsonSerializerContext;
}

/// <summary>How much room a browser gives.</summary>
/// <param name="Kept">Whether it keeps what is here for good.</param>
/// <param name="Used">Bytes used; below 0 where it does not say.</param>
/// <param name="Most">Bytes it gives at most; below 0 where it does not say.</param>
public sealed record Room(bool Kept, long Used, long Most);
