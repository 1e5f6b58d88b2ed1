using System.Text.Json.Serialization;

namespace Gatewright.Replica.Exchanging;

/// <summary>How the server's answers are read; made when the program is built, so that nothing of it is trimmed away.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(SessionAnswer))]
[JsonSerializable(typeof(PushAnswer))]
[JsonSerializable(typeof(ProblemAnswer))]
internal sealed partial class ExchangeJson : JsonSerializerContext;

/// <summary>What went wrong, as RFC 9457 has it.</summary>
internal sealed record ProblemAnswer(string? Title = null, string? Detail = null);
