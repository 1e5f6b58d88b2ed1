using System.Text.Json;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange.JobsFiles;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>Reads one job on record.</summary>
internal sealed class ChancesJob(JsonReporter report, string path, JsonElement job)
{
    private static readonly string[] s_atGate = ["checked", "boat", "class", "seat", "side", "date", "found"];
    private static readonly string[] s_ofBoat = ["checked", "boat", "date", "found"];
    private static readonly string[] s_ofGauge = ["checked", "gauge", "date", "found"];

    /// <summary>The job, or null when it has reported an error.</summary>
    public FinishedJob? Read()
    {
        if (job.ValueKind != JsonValueKind.Object)
        {
            report.Error(path, job, "is not a job: expected an object, { \"checked\": ... }.");
            return null;
        }

        int before = report.Errors.Count;
        CheckedKind? kind = Word("checked", JobsFormat.Kinds.Choice, text => JobsFormat.Kinds.Find(text));
        if (kind is null)
        {
            return null;
        }

        report.CheckKeys(path, job, kind switch
        {
            CheckedKind.Gate or CheckedKind.Oar => s_atGate,
            CheckedKind.Level => s_ofBoat,
            _ => s_ofGauge,
        });
        CheckedThing thing = Thing(kind.Value);
        DateOnly? day = Word("date", "a day such as \"2026-05-02\"", text => DateText.Find(text));
        IReadOnlyList<Cause> found = Found(kind.Value);
        return report.Errors.Count == before ? FinishedJob.Of(thing, day!.Value, found) : null;
    }

    private CheckedThing Thing(CheckedKind kind)
    {
        string name = Name(kind == CheckedKind.Gauge ? "gauge" : "boat");
        if (kind is CheckedKind.Level or CheckedKind.Gauge)
        {
            return kind == CheckedKind.Level ? new CheckedThing.OfLevel(name) : new CheckedThing.OfGauge(name);
        }

        BoatClass? boatClass = Text("class", Vocabulary.Classes) is { } text ? BoatClass.TryParse(text) : null;
        if (boatClass is null && job.TryGetProperty("class", out JsonElement wrong) && wrong.ValueKind == JsonValueKind.String)
        {
            report.Error($"{path}.class", wrong, $"is not a class of boat: expected {Vocabulary.Classes}.");
        }

        var gate = new GatePlace(Seat(boatClass), Word("side", Vocabulary.Sides.Choice, text => Vocabulary.Sides.Find(text)) ?? Side.Port);
        boatClass ??= BoatClass.All[0];
        return kind == CheckedKind.Gate ? new CheckedThing.OfGate(name, boatClass, gate) : new CheckedThing.OfOar(name, boatClass, gate);
    }

    private IReadOnlyList<Cause> Found(CheckedKind kind)
    {
        if (Text("found", JobsMessages.Found) is not { } text || text == Causes.NoneCode)
        {
            return [];
        }

        JsonElement element = job.GetProperty("found");
        if (JobsFormat.CausesOf(text) is not { } found)
        {
            report.Error($"{path}.found", element, $"is nothing that is found: expected {JobsMessages.Found}.");
            return [];
        }

        foreach (Cause cause in found.Where(c => CheckedKinds.In(c) != kind))
        {
            report.Error($"{path}.found", element, $"goes with {JobsFormat.Kinds.Word(CheckedKinds.In(cause))}, and what was checked is {JobsFormat.Kinds.Word(kind)}: correct one of the two.");
        }

        return found;
    }

    private string Name(string key)
    {
        string? text = Text(key, "a name");
        // No spreadsheet reads this file: what looks like a shield is a part of the name.
        string name = NameText.Tidy(NameText.Shielded(CellText.Trim(text).ToString()));
        if (text is not null && (name.Length is 0 or > NameText.Longest || NameText.HasHiddenCharacters(name)))
        {
            report.Error($"{path}.{key}", job.GetProperty(key), FormattableString.Invariant(
                $"is not a name: expected text of 1 to {NameText.Longest} visible characters, in quote marks."));
        }

        return name;
    }

    private int Seat(BoatClass? boatClass)
    {
        int most = boatClass?.Seats ?? GateCells.MostSeats;
        string expected = FormattableString.Invariant($"expected a whole number from 1 (bow) to {most}.");
        if (!job.TryGetProperty("seat", out JsonElement element))
        {
            report.Missing($"{path}.seat", $"missing: {expected}");
            return 1;
        }

        if (element.ValueKind != JsonValueKind.Number || !element.TryGetInt32(out int seat) || seat < 1 || seat > most)
        {
            report.Error($"{path}.seat", element, $"is not a seat of {boatClass?.Name ?? "any boat"}: {expected}");
            return 1;
        }

        return seat;
    }

    private T? Word<T>(string key, string expected, Func<string, T?> find)
        where T : struct
    {
        if (Text(key, expected) is not { } text)
        {
            return null;
        }

        T? meaning = find(text);
        if (meaning is null)
        {
            report.Error($"{path}.{key}", job.GetProperty(key), $"is not understood: expected {expected}.");
        }

        return meaning;
    }

    /// <summary>The text of a key, or null when it has reported an error.</summary>
    private string? Text(string key, string expected)
    {
        if (!job.TryGetProperty(key, out JsonElement element))
        {
            report.Missing($"{path}.{key}", $"missing: expected {expected}.");
            return null;
        }

        if (element.ValueKind == JsonValueKind.String)
        {
            return element.GetString();
        }

        report.Error($"{path}.{key}", element, $"is not text: expected {expected}, in quote marks.");
        return null;
    }
}
