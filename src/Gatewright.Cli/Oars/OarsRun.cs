using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Judging;
using Gatewright.Core.Oars;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Oars;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Oars;

/// <summary>Runs <c>gatewright oars</c>: read everything, then compare, then tell; or say all that is wrong and compare nothing.</summary>
internal sealed class OarsRun(Terminal terminal)
{
    public int Run(OarsRequest request) =>
        request.Place is null ? Show(request) : StoreErrors.Guard(request.Form, terminal, () => Show(request));

    private int Show(OarsRequest request)
    {
        OarsSource source = OarsSource.Read(request, terminal);
        if (source.Errors.Count > 0)
        {
            return InputErrors.Tell(source.Errors, source.Beyond, request.Form, terminal);
        }

        Tell(source, request);
        return source.Sets.Any(s => s.Verdict is { } verdict && verdict != Verdict.Good) ? ExitStatus.Attention : ExitStatus.Good;
    }

    private void Tell(OarsSource source, OarsRequest request) =>
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => CheckJson.Text(Document(source, request)),
            () => InWords(source, request),
            width => Drawn(source, request, width),
            SetTable.LeastWidth);

    private static MatchedOars? Match(OarsSource source, OarsRequest request, int count)
    {
        IEnumerable<OarView> asked = request.Sets.Count > 0 ? source.Sets.SelectMany(s => s.Oars) : source.View.All.Where(o => !o.IsOutOfUse);
        return OarMatching.Best([.. asked.Select(o => o.Oar)], count);
    }

    private static OarsDocument Document(OarsSource source, OarsRequest request)
    {
        OarsDocument told = Sets(source);
        return request.Match is { } count ? told with { Match = OarsMapping.Of(Match(source, request, count), count) } : told;
    }

    private static OarsDocument Sets(OarsSource source)
    {
        OarsDocument all = OarsMapping.Of(source.Club, source.View, [.. source.Warnings.Select(CheckedProblem.Of)]);
        var asked = source.Sets.Select(s => s.Title).ToHashSet();
        return source.Sets.Count == source.View.Sets.Count
            ? all
            : all with { Sets = [.. all.Sets.Where(s => asked.Contains(s.Set))], Oars = [.. all.Oars.Where(o => o.Set is { } set && asked.Contains(set))] };
    }

    private static Page Drawn(OarsSource source, OarsRequest request, int width)
    {
        var page = new Page(width);
        foreach (OarSetView set in source.Sets)
        {
            SetTable.Write(page, set);
        }

        foreach (string sentence in AtTheEnd(source, request))
        {
            page.Paragraph(sentence);
        }

        return page;
    }

    private static Statements InWords(OarsSource source, OarsRequest request)
    {
        var statements = new Statements();
        foreach (OarSetView set in source.Sets)
        {
            statements.Add($"The set {set.Title}, {Figures.Count(set.Oars.Count, "oar")}: {set.Verdict?.Word() ?? "not compared"}.");
            foreach (OarView oar in set.Oars)
            {
                string figures = string.Join(", ", OarItems.All.Where(i => oar.Oar[i] is not null)
                    .Select(i => $"{English.Oars.Item(i)} {English.Oars.Figure(i, oar.Oar[i]!.Value, oar.Oar[i]!.U)}"));
                statements.Add($"{oar.Title}: {(figures.Length > 0 ? figures : "nothing read")}; {set.VerdictOf(oar.Key)?.Word() ?? "not compared"}.");
            }

            foreach (string sentence in SetWords.Of(set))
            {
                statements.Add(sentence);
            }

            statements.Pause();
        }

        foreach (string sentence in AtTheEnd(source, request))
        {
            statements.Add(sentence);
        }

        return statements;
    }

    private static IEnumerable<string> AtTheEnd(OarsSource source, OarsRequest request)
    {
        if (source.Sets.Count == 0)
        {
            yield return "There are no sets of oars: name a set for each oar, so that it has others to be compared with.";
        }

        if (request.Match is { } count)
        {
            yield return English.Oars.Matched(Match(source, request, count), count);
        }

        foreach (string warning in source.Warnings.Select(w => w.ToString()))
        {
            yield return $"Warning: {warning}";
        }

        yield return English.Oars.Rough;
    }
}
