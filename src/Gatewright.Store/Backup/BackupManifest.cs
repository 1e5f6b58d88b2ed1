using System.Text.Json.Serialization;

namespace Gatewright.Store.Backup;

/// <summary>What a backup says of itself.</summary>
/// <param name="Format">The format: <see cref="Current"/>.</param>
/// <param name="TakenUtc">When it was taken.</param>
/// <param name="Tables">What is in it.</param>
internal sealed record BackupManifest(int Format, DateTimeOffset TakenUtc, IReadOnlyList<BackupPart> Tables)
{
    /// <summary>The format this program writes; it reads this one and those before.</summary>
    public const int Current = 1;

    public const string FileName = "backup.json";
}

/// <summary>A table in a backup.</summary>
/// <param name="Name">The table; its rows are in the file of that name with ".jsonl".</param>
/// <param name="Rows">How many rows.</param>
/// <param name="Sha256">The SHA-256 of the file, in lower-case hexadecimal.</param>
internal sealed record BackupPart(string Name, long Rows, string Sha256);

/// <summary>The manifest as JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(BackupManifest))]
internal sealed partial class BackupJson : JsonSerializerContext;
