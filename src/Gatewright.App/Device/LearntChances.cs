using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Device;

/// <summary>
/// What a club's jobs have taught, as it was last counted on this device: the count goes over the whole journal, and nobody
/// should wait for it before a boat is judged.
/// </summary>
/// <param name="device">The device, which remembers it.</param>
/// <param name="club">The club's id.</param>
/// <param name="breath">What it takes between its pieces.</param>
internal sealed partial class LearntChances(Replica.Device device, string club, Breath breath)
{
    private const string Setting = "chances";
    private ChancesView? _counted;

    /// <summary>Whether a count is under way: the next goes on from what it will have counted.</summary>
    public bool IsCounting { get; private set; }

    /// <summary>What was found by the last count; null while there was none.</summary>
    public FoundCauses? Remembered => device.Of(club, Setting) is { } text ? Read(text) : null;

    /// <summary>What was found by the count that boats are judged by now; null while there was none.</summary>
    public FoundCauses? Found => _counted?.Found ?? Remembered;

    /// <summary>Counts, a little at a time, and remembers it.</summary>
    public async Task<PriorChances> CountAsync(Club grown)
    {
        IsCounting = true;
        try
        {
            _counted = await ChancesView.OfAsync(grown, _counted, breath.TakeAsync);
        }
        finally
        {
            IsCounting = false;
        }

        if (_counted.Found != Remembered)
        {
            try
            {
                await device.SetAsync(club, Setting, JsonSerializer.Serialize(_counted.Found, FoundJson.Default.FoundCauses));
            }
            catch (Replica.Shelves.ShelfException)
            {
                // It is counted once more when the club is opened again.
            }
        }

        return ClubSettings.Chances(_counted);
    }

    private static FoundCauses? Read(string text)
    {
        try
        {
            FoundCauses? found = JsonSerializer.Deserialize(text, FoundJson.Default.FoundCauses);
            if (found is not null)
            {
                // Counts that contradict each other are none.
                ClubSettings.Chances(found);
            }

            return found;
        }
        catch (Exception wrong) when (wrong is JsonException or ArgumentException)
        {
            return null;
        }
    }

    [JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
    [JsonSerializable(typeof(FoundCauses))]
    private sealed partial class FoundJson : JsonSerializerContext;
}
