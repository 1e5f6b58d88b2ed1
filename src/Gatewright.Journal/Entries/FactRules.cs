using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Exchange.StoresFiles;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Entries;

/// <summary>The rules of each kind of fact. Ranges are those of the files, so that what entered can leave as a file again.</summary>
internal static class FactRules
{
    internal const int LongestStep = 500;
    private const int QuarterTurn = 90;

    public static void Check(Fact fact, RuleBook book)
    {
        switch (fact)
        {
            case ThingSet set: ThingRules.Check(set, book); break;
            case RoundStarted started: Keys(book, ("round", started.Round), ("standard", started.Standard)); break;
            case RoundEnded ended: book.Key("round", ended.Round); break;
            case BoatLaid laid: Check(laid, book); break;
            case ReadingTaken reading: Check(reading, book); break;
            case RackLevelRead level: Check(level, book); break;
            case GaugeReversed reversed: Check(reversed, book); break;
            case Reported report: Check(report, book); break;
            case Held held: Check(held, book); break;
            case Released released: Check(released, book); break;
            case JobPlanned job: Check(job, book); break;
            case StepDone step: Check(step, book); break;
            case JobDone done: Check(done, book); break;
            case JobDropped dropped: Check(dropped, book); break;
            case GateMended mended: Check(mended, book); break;
            case StockChanged changed: Check(changed, book); break;
            case StockCounted counted: Check(counted, book); break;
            case Noted note: Check(note, book); break;
            case PhotoTaken photo: Check(photo, book); break;
            case MeasureTaken measure: Check(measure, book); break;
            case OarRead read: OarRules.Check(read, book); break;
            case ChangePlanned change: ChangeRules.Check(change, book); break;
            case MeasureSet set: Check(set, book); break;
            case ReadingKept kept: book.Boat("boat", kept.Boat); break;
        }
    }

    private static void Check(BoatLaid laid, RuleBook book)
    {
        book.Boat("boat", laid.Boat);
        Keys(book, ("lying", laid.Lying), ("rack", laid.Rack), ("round", laid.Round));
        book.Degrees("bowHigh", laid.BowHigh, ReadingsFormat.MostOfALevel);
        book.Degrees("portLow", laid.PortLow, ReadingsFormat.MostOfALevel);
        book.Date(laid.Date);
        if (laid.Level == LevelBasis.Rack && laid.Rack is null)
        {
            book.Say("rack", null, "name the rack whose level is meant");
        }

        if (laid.Level == LevelBasis.Read && laid is { BowHigh: null, PortLow: null })
        {
            book.Say("bowHigh", null, "give the level that was read");
        }
    }

    private static void Check(ReadingTaken reading, RuleBook book)
    {
        book.Boat("boat", reading.Boat);
        Keys(book, ("lying", reading.Lying), ("gauge", reading.Gauge), ("job", reading.Job));
        book.Seat(reading.Seat);
        book.Degrees("value", reading.Value, reading.Item == ReadItem.Gate ? ReadingsFormat.MostOfAGate : ReadingsFormat.MostOfAnother);
        book.Degrees("angle", reading.Angle, QuarterTurn);
        if (reading.Item != ReadItem.Gate && (reading.Station is not null || reading.Angle is not null))
        {
            book.Say(
                reading.Station is null ? "angle" : "station",
                reading.Station?.Word() ?? reading.Angle?.ToString(CultureInfo.InvariantCulture),
                "only a gate's face is read at a station or an angle; leave it out");
        }

        if (reading is { Station: not null, Angle: not null })
        {
            book.Say("angle", reading.Angle?.ToString(CultureInfo.InvariantCulture), "give a station or an angle, not both");
        }
    }

    private static void Check(RackLevelRead level, RuleBook book)
    {
        book.Key("rack", level.Rack);
        book.Degrees("bowHigh", level.BowHigh, ReadingsFormat.MostOfALevel);
        book.Degrees("portLow", level.PortLow, ReadingsFormat.MostOfALevel);
        book.Date(level.Date);
    }

    private static void Check(GaugeReversed reversed, RuleBook book)
    {
        book.Key("gauge", reversed.Gauge);
        book.Degrees("first", reversed.First, ReadingsFormat.MostOfAnother);
        book.Degrees("turned", reversed.Turned, ReadingsFormat.MostOfAnother);
    }

    private static void Check(Reported report, RuleBook book)
    {
        book.Boat("boat", report.Boat);
        book.Text("text", report.Text, EntryRules.LongestText);
        book.Date(report.Date);
        if (report.Kind != ReportKind.DownToOneSide)
        {
            book.Gate(report.Seat, report.Side);
            return;
        }

        if (report.Side is null)
        {
            book.Say("side", null, "give the side the boat sits down to");
        }

        if (report.Seat is { } seat)
        {
            book.Say("seat", seat.ToString(CultureInfo.InvariantCulture), "the boat sits down as a whole; leave the seat out");
        }
    }

    private static void Check(Held held, RuleBook book)
    {
        Reason(held.Boat, held.Reason, book);
        book.Languages("reasons", held.Reasons, EntryRules.LongestText);
    }

    private static void Check(Released released, RuleBook book)
    {
        Reason(released.Boat, released.Reason, book);
        book.Items("lifts", released.Lifts?.Count ?? 0);
    }

    private static void Reason(string boat, string reason, RuleBook book)
    {
        book.Boat("boat", boat);
        book.Text("reason", reason, EntryRules.LongestText);
    }

    private static void Check(JobPlanned job, RuleBook book)
    {
        book.Boat("boat", job.Boat);
        Keys(book, ("job", job.Job), ("remedy", job.Remedy));
        book.Gate(job.Seat, job.Side);
        book.Gate(job.OtherSeat, job.OtherSide, "otherSeat", "otherSide");
        if (job.OtherSeat is { } other && (job.Seat is null || (other == job.Seat && job.OtherSide == job.Side)))
        {
            book.Say("otherSeat", other.ToString(CultureInfo.InvariantCulture), "give seat and side of one gate, and here of another");
        }

        book.Items("steps", job.Steps.Count);
        book.Items("parts", job.Parts.Count);
        book.Items("expected", job.Expected.Count);
        foreach (string? step in job.Steps.Take(EntryRules.MostItems))
        {
            Present("steps", step, book);
            book.Text("steps", step, LongestStep);
        }

        Parts(job.Parts, book);
        foreach (ExpectedAt? at in job.Expected.Take(EntryRules.MostItems))
        {
            Present("expected", at, book);
            book.Degrees("expected.value", at?.Value, QuarterTurn);
            book.Degrees("expected.from", at?.From, QuarterTurn);
            book.Degrees("expected.to", at?.To, QuarterTurn);
        }
    }

    private static void Check(StepDone step, RuleBook book)
    {
        book.Key("job", step.Job);
        book.Within("step", step.Step, 0, ChangeRules.Most - 1);
    }

    private static void Check(JobDone done, RuleBook book)
    {
        book.Key("job", done.Job);
        book.Items("also", done.Also?.Count ?? 0);
        if (done.Also is { } also && (done.Found is null || also.Append(done.Found.Value).Distinct().Count() != also.Count + 1))
        {
            book.Say("also", string.Join(", ", also.Select(c => c.Code())), "give what was found first as \"found\", and what else each once");
        }
    }

    private static void Check(JobDropped dropped, RuleBook book)
    {
        book.Key("job", dropped.Job);
        book.Text("reason", dropped.Reason, EntryRules.LongestText);
    }

    private static void Check(GateMended mended, RuleBook book)
    {
        book.Boat("boat", mended.Boat);
        book.Seat(mended.Seat);
        book.Date(mended.Date);
    }

    private static void Check(StockChanged changed, RuleBook book)
    {
        Part("", changed.Part, changed.Size, book);
        book.Within("change", changed.Change, -StoresFormat.MostOfAPart, StoresFormat.MostOfAPart);
        book.Key("job", changed.Job);
    }

    private static void Check(StockCounted counted, RuleBook book)
    {
        Part("", counted.Part, counted.Size, book);
        book.Within("count", counted.Count, 0, StoresFormat.MostOfAPart);
    }

    private static void Check(Noted note, RuleBook book)
    {
        Keys(book, ("thing", note.Thing), ("key", note.Key));
        book.Text("text", note.Text, EntryRules.LongestText);
        if (note.Damage is { } damage)
        {
            book.Gate(damage.Seat, damage.Side);
            book.Text("damage.text", damage.Text, EntryRules.LongestText);
        }
    }

    private static void Check(PhotoTaken photo, RuleBook book)
    {
        Keys(book, ("thing", photo.Thing), ("key", photo.Key));
        book.Within("bytes", photo.Bytes, 1, EntryRules.LargestPhoto);
        if (photo.Sha256.Length != 64 || !photo.Sha256.All(char.IsAsciiHexDigitLower))
        {
            book.Say("sha256", photo.Sha256, "give the picture's SHA-256 as 64 digits from 0 to 9 and a to f");
        }

        if (!EntryRules.PhotoTypes.Contains(photo.MediaType))
        {
            book.Say("mediaType", photo.MediaType, $"give one of {string.Join(", ", EntryRules.PhotoTypes)}");
        }
    }

    private static void Check(MeasureTaken measure, RuleBook book)
    {
        book.Boat("boat", measure.Boat);
        book.Seat(measure.Seat);
        book.Date(measure.Date);
        MeasureRules.Check(measure, book);
    }

    private static void Check(MeasureSet set, RuleBook book)
    {
        book.Boat("boat", set.Boat);
        book.Seat(set.Seat);
        book.Date(set.Date);
        MeasureRules.Check(set, book);
    }

    internal static void Parts(IReadOnlyList<PartUsed> parts, RuleBook book)
    {
        foreach (PartUsed? used in parts.Take(EntryRules.MostItems))
        {
            Present("parts", used, book);
            if (used is not null)
            {
                Part("parts.", used.Part, used.Size, book);
                book.Within("parts.count", used.Count, 1, StoresFormat.MostOfAPart);
            }
        }
    }

    private static void Part(string field, string part, decimal size, RuleBook book)
    {
        if (StoresFormat.Parts.Find(part) is not { } kind || part != kind.Word())
        {
            book.Say($"{field}part", part, $"give one of {StoresFormat.Parts.Choice}");
            return;
        }

        (decimal least, decimal most) = kind switch
        {
            PartKind.Insert => (0m, StoresFormat.MostDegrees),
            PartKind.Pin => (0m, 0m),
            _ => (0.01m, StoresFormat.MostMillimetres),
        };
        book.Within($"{field}size", size, least, most);
    }

    /// <summary>JSON can put a null into a list that is said to hold none.</summary>
    internal static void Present(string field, object? item, RuleBook book)
    {
        if (item is null)
        {
            book.Say(field, null, "leave empty items out");
        }
    }

    private static void Keys(RuleBook book, params ReadOnlySpan<(string Field, string? Key)> keys)
    {
        foreach ((string field, string? key) in keys)
        {
            book.Key(field, key);
        }
    }
}
