using System.Globalization;
using System.Text;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>Files of readings made up in a test.</summary>
internal static class Readings
{
    /// <summary>A single, level, with the same readings at both gates: catch, abeam, finish.</summary>
    public static string Single(string boat, double atCatch = 4, double abeam = 4, double atFinish = 4)
    {
        var text = new StringBuilder("boat,class,seat,side,at,reading,bow_high,port_low\n");
        foreach (string side in (string[])["port", "starboard"])
        {
            foreach ((string at, double reading) in new[] { ("catch", atCatch), ("abeam", abeam), ("finish", atFinish) })
            {
                text.Append(CultureInfo.InvariantCulture, $"\"{boat.Replace("\"", "\"\"", StringComparison.Ordinal)}\",1x,1,{side},{at},{reading:0.0},0.0,0.0\n");
            }
        }

        return text.ToString();
    }
}
