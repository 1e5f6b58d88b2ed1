using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Diagnosing;

namespace Gatewright.App.Boat;

/// <summary>Where one gets to from a boat.</summary>
internal static class BoatLinks
{
    /// <summary>The boat, today or as it was on a day.</summary>
    public static string Boat(string key, DateOnly? day = null) => $"boat/{Escaped(key)}{On(day)}";

    /// <summary>One of its gates.</summary>
    public static string Gate(string key, GatePlace gate, DateOnly? day = null) =>
        string.Create(CultureInfo.InvariantCulture, $"boat/{Escaped(key)}/gate/{gate.Seat}/{gate.Side.Word()}{On(day)}");

    /// <summary>A round of the boat alone; with a choice, to that reading.</summary>
    public static string Round(string key, ReadingChoice? choice = null)
    {
        string link = $"round?boat={Escaped(key)}";
        if (choice?.Gate is { } gate)
        {
            link += Of(gate);
        }

        if (choice is not null)
        {
            link += $"&item={choice.Item.Code()}";
        }

        return choice?.At is { } at
            ? link + "&at=" + (at.Station?.Word() ?? at.Angle.Degrees.ToString("0.####", CultureInfo.InvariantCulture))
            : link;
    }

    /// <summary>What a change of its rig does.</summary>
    public static string Stroke(string key) => $"boat/{Escaped(key)}/stroke";

    /// <summary>The boat on the water.</summary>
    public static string Water(string key) => $"boat/{Escaped(key)}/water";

    /// <summary>A job to be planned, for a cause where one is meant.</summary>
    public static string NewJob(string key, Cause? cause = null, GatePlace? gate = null) =>
        $"job/new?boat={Escaped(key)}"
        + (cause is { } c ? $"&cause={c.Code()}" : string.Empty)
        + (gate is { } g ? Of(g) : string.Empty);

    /// <summary>A job.</summary>
    public static string Job(string id) => $"job/{Escaped(id)}";

    /// <summary>A change of the rig that is kept among the jobs.</summary>
    public static string Change(string id) => $"change/{Escaped(id)}";

    private static string Of(GatePlace gate) =>
        string.Create(CultureInfo.InvariantCulture, $"&seat={gate.Seat}&side={gate.Side.Word()}");

    private static string On(DateOnly? day) =>
        day is { } d ? string.Create(CultureInfo.InvariantCulture, $"?day={d:yyyy-MM-dd}") : string.Empty;

    private static string Escaped(string text) => Uri.EscapeDataString(text);
}
