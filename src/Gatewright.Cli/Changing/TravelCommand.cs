using System.CommandLine;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Changing;
using Gatewright.Journal.Exchange.Changing;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Changing;

/// <summary><c>gatewright travel</c>: a boat taken to pieces for the road, and put together again.</summary>
internal static class TravelCommand
{
    public static Command Of(Terminal terminal)
    {
        var options = new ChangingOptions("The boat; it may be left out where there is one.");
        var command = new Command(
            "travel",
            "Make the sheet for a boat on the road: riggers off and on, which goes where, the order of loading, and the quick check when it stands again.");
        options.AddTo(command);
        command.SetAction(result =>
        {
            ChangingRequest request = options.Of(result);
            return ChangingTeller.Tell(terminal, request, rigs => Told(rigs, request.Boat));
        });
        return command;
    }

    private static Told? Told(KnownRigs rigs, string? boat)
    {
        if (rigs.Find("--boat", boat, null) is not { } rig)
        {
            return null;
        }

        var sheet = TravelSheet.Of(rig, rigs.StandardOf(rig.Name), ChangeSettings.Default);
        return new(ChangeJson.Text(ChangeMapping.Of(sheet)), [.. Lines(sheet)], ExitStatus.Good);
    }

    private static IEnumerable<string> Lines(TravelSheet sheet)
    {
        yield return $"{sheet.Rig.Name}, {sheet.Rig.Class}.";
        yield return string.Empty;
        yield return English.Travel.Off;
        foreach (TravellingRigger rigger in sheet.Off)
        {
            yield return $"{English.Travel.Rigger(rigger)}.";
        }

        yield return string.Empty;
        yield return English.Travel.Loading;
        yield return string.Empty;
        yield return English.Travel.On;
        yield return string.Empty;
        yield return $"{English.Travel.Check}:";
        foreach (QuickReading reading in sheet.Check)
        {
            yield return $"{English.Travel.Reading(reading)}.";
        }

        yield return English.Travel.Outside;
        yield return string.Empty;
        foreach (string caution in English.Cautions.Each(TravelSheet.Cautions))
        {
            yield return caution;
        }
    }
}
