using System.Globalization;
using Gatewright.App.Device;
using Gatewright.Core.Rig;
using Gatewright.Journal.Entries;

namespace Gatewright.App.Rig;

/// <summary>How this device measures rigs: in which unit, which measures, and the walk that is under way.</summary>
public sealed class RigHere(ThisDevice device, ClubInHand inHand)
{
    private const string UnitSetting = "rig-unit";
    private const string MeasuresSetting = "rig-measures";
    private const string WalkSetting = "rig-walk";

    /// <summary>Whether lengths are read and typed in inches here; else in centimetres.</summary>
    public bool IsInInches => Setting(UnitSetting) == RigUnit.Inches.Word();

    /// <summary>The measures that were chosen last; spread and span and heights before anybody chose.</summary>
    public IReadOnlyList<RigMeasure> Measures => Setting(MeasuresSetting) is { } words
        ? [.. words.Split(',').Select(RigMeasures.OfWord).OfType<RigMeasure>()]
        : [RigMeasure.Spread, RigMeasure.Span, RigMeasure.Height];

    /// <summary>The unit in which a measure is shown and entered here.</summary>
    public RigUnit Unit(RigMeasure measure) => !measure.IsAngle() && IsInInches ? RigUnit.Inches : measure.Unit();

    /// <summary>The boat that is being measured here, and the club's time when that began; null for none.</summary>
    public (string Boat, HybridTime Since)? Walk =>
        (device.IsOpen ? device.Device.Of(inHand.Held.Club, WalkSetting) : null)?.Split('/', 3) is [{ } time, { } counter, { } boat]
            && long.TryParse(time, NumberStyles.None, CultureInfo.InvariantCulture, out long milliseconds)
            && int.TryParse(counter, NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            ? (boat, new(milliseconds, count))
            : null;

    /// <summary>Remembers the unit.</summary>
    public Task SetInchesAsync(bool isInInches) =>
        device.Device.SetAsync(UnitSetting, isInInches ? RigUnit.Inches.Word() : null);

    /// <summary>Begins to measure a boat.</summary>
    public async Task BeginAsync(string boat, IReadOnlyList<RigMeasure> measures)
    {
        (string club, HybridTime since) = (inHand.Held.Club, inHand.Club.Last);
        await device.Device.SetAsync(MeasuresSetting, string.Join(',', measures.Select(m => m.Word())));
        await device.Device.SetAsync(club, WalkSetting, string.Create(CultureInfo.InvariantCulture, $"{since.Milliseconds}/{since.Counter}/{boat}"));
    }

    /// <summary>Ends it: what was taken is on record anyway.</summary>
    public Task EndAsync() => device.Device.SetAsync(inHand.Held.Club, WalkSetting, null);

    private string? Setting(string name) => device.IsOpen ? device.Device.Settings.GetValueOrDefault(name) : null;
}
