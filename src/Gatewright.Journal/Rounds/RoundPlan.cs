using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;

namespace Gatewright.Journal.Rounds;

/// <summary>
/// What a device remembers of its rounds: the boats of the one under way, and how the last was read, so that the next
/// begins with one tap. What was read is not here but in the journal.
/// </summary>
/// <param name="Round">The key of the round under way; null for none.</param>
/// <param name="Day">The day it began.</param>
/// <param name="Boats">Its boats' keys, in the order in which they are read.</param>
/// <param name="Stations">The stations that are read.</param>
/// <param name="Gauge">The gauge's key; null for one that is not named.</param>
public sealed record RoundPlan(
    string? Round, DateOnly? Day, IReadOnlyList<string> Boats, IReadOnlyList<Station> Stations, string? Gauge)
{
    /// <summary>No round yet: abeam, a gauge without a name.</summary>
    public static RoundPlan None { get; } = new(null, null, [], [Station.Abeam], null);

    /// <summary>A plan as it was written; none where it is not there or cannot be read.</summary>
    public static RoundPlan Read(string? text)
    {
        try
        {
            RoundPlan plan = text is null ? None : JsonSerializer.Deserialize(text, RoundPlanJson.Default.RoundPlan) ?? None;
            return plan.Stations.Count == 0 ? plan with { Stations = None.Stations } : plan;
        }
        catch (JsonException)
        {
            // The choices of last time are lost, and no reading with them.
            return None;
        }
    }

    /// <summary>The plan as text.</summary>
    public string Write() => JsonSerializer.Serialize(this, RoundPlanJson.Default.RoundPlan);

    /// <summary>A round that begins.</summary>
    public RoundPlan Begun(string round, DateOnly day, IReadOnlyList<string> boats) =>
        this with { Round = round, Day = day, Boats = boats };

    /// <summary>The same round with a boat more, if it has not that boat.</summary>
    public RoundPlan With(string boat) => Boats.Contains(boat) ? this : this with { Boats = [.. Boats, boat] };

    /// <summary>After its round: how it was read is kept for the next.</summary>
    public RoundPlan Ended() => this with { Round = null, Day = null, Boats = [] };

    /// <summary>The boat that comes after one: the next in order of which nothing was read; null when there is none.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="isRead">Whether anything was read of a boat.</param>
    public string? After(string boat, Func<string, bool> isRead)
    {
        int from = Boats.ToList().IndexOf(boat) + 1;
        return Boats.Skip(from).Concat(Boats.Take(from)).FirstOrDefault(b => b != boat && !isRead(b));
    }
}

/// <summary>How the plan is written on the device.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    Converters = [typeof(JsonStringEnumConverter<Station>)])]
[JsonSerializable(typeof(RoundPlan))]
internal sealed partial class RoundPlanJson : JsonSerializerContext;
