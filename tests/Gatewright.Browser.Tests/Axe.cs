using System.Text.Json;
using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>
/// Has axe look at a page. It is brought there once and stays; the package's own way brings it anew each time and sums up in a page
/// of its own, which takes three times as long as looking. The pages have no frames, for which that is made.
/// </summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();
    private static readonly JsonSerializerOptions AsWritten = new(JsonSerializerDefaults.Web);

    /// <summary>What violates the rules asked for: those of some tags, or single ones.</summary>
    /// <param name="page">The page.</param>
    /// <param name="type">"tag" or "rule".</param>
    /// <param name="values">Which.</param>
    public static async Task<IReadOnlyList<Violation>> FindAsync(this IPage page, string type, IReadOnlyList<string> values)
    {
        if (!await page.EvaluateAsync<bool>("typeof axe === 'object'"))
        {
            // What the script leaves behind last is itself, which is too much to be sent back.
            await page.EvaluateAsync(Script + ";0");
        }

        string found = await page.EvaluateAsync<string>(
            """
            async runOnly => {
              if (document.querySelector('iframe, frame')) {
                throw new Error('This page has frames, which are not looked into.');
              }

              const all = await axe.run(document, { runOnly, resultTypes: ['violations'] });
              return JSON.stringify(all.violations);
            }
            """,
            new { type, values });
        return JsonSerializer.Deserialize<List<Violation>>(found, AsWritten)!;
    }

    /// <summary>A rule that is violated.</summary>
    public sealed record Violation(string Id, string Help, IReadOnlyList<Node> Nodes);

    /// <summary>Where.</summary>
    public sealed record Node(string Html, IReadOnlyList<Check> Any);

    /// <summary>What of it failed.</summary>
    public sealed record Check(string Message);
}
