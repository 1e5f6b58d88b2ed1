using System.Text.Json;

namespace Gatewright.Bench.Browsing;

/// <summary>How a program started in a browser, in seconds from when its address was called.</summary>
/// <param name="Seen">When the screen as it was last seen was painted; null where there was none.</param>
/// <param name="Drawn">When the program's own heading was painted.</param>
/// <param name="Usable">When the answer to a first touch was painted, which came as soon as the heading stood there.</param>
/// <param name="Listed">When the boats of the shed stood there as the journal tells them; null where there is none.</param>
internal sealed record StartTimes(double? Seen, double Drawn, double Usable, double? Listed)
{
    /// <summary>Calls an address and waits until a touch was answered, and where there is a shed, until its boats are listed.</summary>
    public static async Task<StartTimes> OfAsync(Phone phone, Uri address, bool hasShed = false)
    {
        await phone.Page.GotoAsync(address.ToString());
        await phone.Page.WaitForFunctionAsync(hasShed ? "() => measured.listed !== null" : "() => measured.answered !== null");
        JsonElement marks = JsonElement.Parse(await phone.Page.EvaluateAsync<string>("() => JSON.stringify(measured)"));
        double? Seconds(string name) => marks.GetProperty(name) is { ValueKind: JsonValueKind.Number } ms ? ms.GetDouble() / 1000 : null;
        return new(Seconds("seen"), Seconds("drawn")!.Value, Seconds("answered")!.Value, Seconds("listed"));
    }
}
