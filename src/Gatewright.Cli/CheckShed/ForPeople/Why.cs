using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Words.Suspected;
using Gatewright.Words;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>The second question: what probably is wrong, which rests on what is usual among gates and is no reading.</summary>
internal static class Why
{
    private const int Indent = 10;
    private const char Bar = '▪';

    public static void Write(Page page, BoatCheck check)
    {
        page.Add(Heading.Of("Why, probably", "from all readings of the boat and what is usual", page.Width));
        WriteWholeBoat(page, check);
        ILookup<bool, GateDiagnosis> gates = CauseChoice.Gates(check).ToLookup(CauseChoice.IsProbablyRight);
        foreach (GateDiagnosis gate in gates[false])
        {
            Write(page, English.Names.Gate(gate.Gate), English.Causes.Of(gate));
            page.Paragraph(English.Causes.ProbablyIs(gate), Indent);
        }

        foreach (string twins in English.Causes.Twins(check))
        {
            page.Paragraph(twins, Indent);
        }

        if (gates[true].Any())
        {
            string places = English.Names.Gates(gates[true].Select(gate => gate.Gate));
            string least = Figures.Percent(1 - gates[true].Max(gate => gate.Wrong));
            page.Paragraph($"{Sentence.Capital(places)}: probably nothing is wrong there itself ({least} or more each).", Indent, new());
        }
    }

    private static void WriteWholeBoat(Page page, BoatCheck check)
    {
        string? lay = English.Shared.HowItLay(check);
        if (lay is not null || English.Shared.Of(check).Any())
        {
            Write(page, English.Names.WholeBoat, English.Shared.Of(check));
        }

        if (lay is not null)
        {
            page.Paragraph(lay, Indent);
        }
    }

    private static void Write(Page page, string place, IEnumerable<Likely> causes)
    {
        const int Tenths = 10;
        page.Add(new Line().Add(" ").Add(place, Ink.Strong));
        foreach ((string words, double probability) in causes)
        {
            Line bar = new Line().To(Indent)
                .Add(new string(Bar, (int)Math.Ceiling(probability * Tenths)).PadRight(Tenths + 1))
                .Add(Figures.Percent(probability).PadLeft(9) + "  ");
            page.Paragraph(words, bar.Width, bar);
        }
    }
}
