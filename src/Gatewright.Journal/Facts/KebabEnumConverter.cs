using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gatewright.Journal.Facts;

/// <summary>Enumerations as the words used in files: PinAft → "pin-aft". Numbers are refused.</summary>
internal sealed class KebabEnumConverter<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
