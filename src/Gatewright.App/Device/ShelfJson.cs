using System.Text.Json.Serialization;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Device;

/// <summary>How the shelf's script writes what it describes.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(ShelfFront))]
[JsonSerializable(typeof(HeldClub))]
[JsonSerializable(typeof(PackedClub))]
[JsonSerializable(typeof(PackedPhoto))]
[JsonSerializable(typeof(Dictionary<string, PhotoThere>))]
internal sealed partial class ShelfJson : JsonSerializerContext;

/// <summary>What a run of bytes that was read for a club consists of.</summary>
internal sealed record PackedClub(HeldClub? Held, PackedSnapshot? Snapshot, int[] Blocks, OwnRecord[] Own);

/// <summary>A snapshot in it.</summary>
internal sealed record PackedSnapshot(long Number, long Place, int Length, bool Vouched);

/// <summary>What a run of bytes that was read for a picture consists of.</summary>
internal sealed record PackedPhoto(string MediaType, bool Unsent);
