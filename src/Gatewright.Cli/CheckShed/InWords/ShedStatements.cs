using Gatewright.Cli.Speaking;
using Gatewright.Words.Told;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.InWords;

/// <summary>The report in words alone.</summary>
internal static class ShedStatements
{
    public static Statements Of(ShedCheck shed, CheckRequest request)
    {
        var telling = new Telling(request.All, request.Explain, ShedCheck.HowToTellAll);
        return Statements.Of(English.Shed.Statements(shed.Told, telling));
    }
}
