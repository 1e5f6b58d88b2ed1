using System.Text.Json.Serialization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;

namespace Gatewright.Journal.Facts;

/// <summary>How bodies are written and read: camel case, enumerations as words, nothing null.</summary>
/// <remarks>Descriptions of the types alone: writers for each beside them would make every phone's first load longer.</remarks>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    Converters =
    [
        typeof(KebabEnumConverter<Side>),
        typeof(KebabEnumConverter<Lie>),
        typeof(KebabEnumConverter<Station>),
        typeof(KebabEnumConverter<Cause>),
        typeof(KebabEnumConverter<ReportKind>),
        typeof(KebabEnumConverter<ReadItem>),
        typeof(KebabEnumConverter<LevelBasis>),
        typeof(KebabEnumConverter<OarItem>),
        typeof(KebabEnumConverter<OarLaid>),
    ])]
[JsonSerializable(typeof(ThingSet))]
[JsonSerializable(typeof(Retracted))]
[JsonSerializable(typeof(RoundStarted))]
[JsonSerializable(typeof(RoundEnded))]
[JsonSerializable(typeof(BoatLaid))]
[JsonSerializable(typeof(ReadingTaken))]
[JsonSerializable(typeof(RackLevelRead))]
[JsonSerializable(typeof(GaugeReversed))]
[JsonSerializable(typeof(Reported))]
[JsonSerializable(typeof(Held))]
[JsonSerializable(typeof(Released))]
[JsonSerializable(typeof(JobPlanned))]
[JsonSerializable(typeof(StepDone))]
[JsonSerializable(typeof(JobDone))]
[JsonSerializable(typeof(JobDropped))]
[JsonSerializable(typeof(GateMended))]
[JsonSerializable(typeof(StockChanged))]
[JsonSerializable(typeof(StockCounted))]
[JsonSerializable(typeof(Noted))]
[JsonSerializable(typeof(PhotoTaken))]
[JsonSerializable(typeof(MeasureTaken))]
[JsonSerializable(typeof(OarRead))]
[JsonSerializable(typeof(ChangePlanned))]
[JsonSerializable(typeof(MeasureSet))]
[JsonSerializable(typeof(ReadingKept))]
internal sealed partial class FactJson : JsonSerializerContext;
