using System.Text;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Replay;

/// <summary>Everything that can be seen of a club, as text: two clubs are the same when their pictures are.</summary>
internal static class ClubPicture
{
    private static readonly System.Globalization.CultureInfo Inv = System.Globalization.CultureInfo.InvariantCulture;

    public static string Of(Club club)
    {
        var text = new StringBuilder();
        text.AppendLine(Inv, $"{club.Count} entries, last {club.Last}");
        foreach (Recorded record in club.All())
        {
            text.AppendLine(Inv, $"{record.Entry.Id} {(club.IsRetracted(record) ? "retracted" : "holds")}");
        }

        foreach (string boat in (string[])["heron", "teal"])
        {
            var view = new BoatView(club, boat);
            text.AppendLine(Inv, $"{boat}: name {view.Properties["name"]}, rack {view.Properties["rack"]}, {view.Holds.Count} holds");
            foreach (string field in (string[])["name", "rack"])
            {
                text.AppendLine(string.Join("; ", view.Properties.History(field).Select(v => $"{v.Value} by {v.Entry.Id} {v.Holds}")));
            }
        }

        foreach (((string part, decimal size), int count) in StoresView.Of(club).OrderBy(s => s.Key))
        {
            text.AppendLine(Inv, $"{part} {size}: {count}");
        }

        return text.ToString();
    }
}
