using Gatewright.Cli.Rigs;
using Gatewright.Cli.Rigs.InWords;
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
        var statements = new Statements();
        foreach (ShedRig rig in shed.Rigs)
        {
            RigStatements.Add(statements, rig);
        }

        foreach (string statement in English.Shed.Statements(shed.Told, telling))
        {
            statements.Add(statement);
        }

        return statements;
    }
}
