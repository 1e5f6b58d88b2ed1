using Gatewright.Core.Mending;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>A file's rows as entries of a club's journal.</summary>
/// <remarks>
/// Recording a file again adds nothing: what is in it has ids made of its content, and what the club has already is left
/// out. So the same row in two files, of the same day, is one reading; within a file it is two. Rows without a date are of
/// the day they are recorded, with two exceptions, so that the file is judged as before: what was told without a date
/// counts as told on the boat's first day in the file, and a mending without one is kept as a note, since nobody can say
/// which readings are from before it.
/// </remarks>
public static class ReadingsRecording
{
    /// <summary>The entries of a file of readings.</summary>
    /// <param name="input">The file, without errors.</param>
    /// <param name="club">The club as it is.</param>
    /// <param name="stamp">Who records it, and when.</param>
    /// <exception cref="ArgumentException">The file has errors.</exception>
    public static RecordedFile Entries(ReadingsInput input, Club club, RecordingStamp stamp)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(stamp);
        if (input.Errors.Count > 0)
        {
            throw new ArgumentException($"Nothing is recorded from a file with errors. The first: {input.Errors[0]}", nameof(input));
        }

        var pen = new RecordingPen(club, stamp);
        new ReadingsPen(pen, club).Write(input);
        return pen.Close();
    }

    /// <summary>The entries of a shelf that was counted: of each part whose count is another than the club has it.</summary>
    public static RecordedFile Entries(Stores stores, Club club, RecordingStamp stamp)
    {
        ArgumentNullException.ThrowIfNull(stores);
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(stamp);
        var pen = new RecordingPen(club, stamp);
        IReadOnlyDictionary<(string Part, decimal Size), int> known = Views.StoresView.Of(club);
        foreach (PartCount line in stores.Parts)
        {
            (string, decimal) part = (line.Part.Kind.Word(), ReadingsPen.Number(line.Part.Size));
            if (!known.TryGetValue(part, out int count) || count != line.Count)
            {
                pen.New(new Facts.StockCounted(part.Item1, part.Item2, line.Count));
            }
        }

        return pen.Close();
    }
}
