using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>One boat of the report: short where nothing is wrong.</summary>
internal static class BoatSection
{
    private const int Indent = 10;

    public static void Write(Page page, BoatCheck check, CheckRequest request)
    {
        bool sound = check.Verdict.Verdict == Verdict.Good;
        if (sound && !request.All)
        {
            page.Add(SoundBoat.Draw(check, page.Width));
        }
        else
        {
            page.Add(BoatHeading.Of(check.Verdict, page.Width));
            page.Paragraph(English.Levels.HowRead(check) + ".", ink: Ink.Quiet);
            page.Blank();
            page.Add(BoatPlan.Draw(check.Verdict, page.Width));
        }

        foreach (string notice in English.Boats.Notices(check))
        {
            page.Paragraph($"{notice}.", Indent, new Line().Add(" ").Add("notice", Ink.Strong));
        }

        if (!sound)
        {
            page.Blank();
            WhatIsIt.Write(page, check, request.All);
            page.Blank();
            Why.Write(page, check);
            page.Blank();
            WhatToDo.Write(page, check, request.All);
            Caution(page, check.Verdict);
        }

        if (request.Explain)
        {
            page.Blank();
            BudgetTable.Write(page, check);
        }

        page.Blank();
    }

    private static void Caution(Page page, BoatVerdict boat)
    {
        if (English.Cautions.For(boat) is { } caution)
        {
            page.Blank();
            page.Paragraph(caution, Indent, new Line().Add(" ").Add(boat.Verdict.Sign(), boat.Verdict.Ink()));
        }
    }
}
