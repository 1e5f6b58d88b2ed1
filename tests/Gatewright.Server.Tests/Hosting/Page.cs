using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Gatewright.Server.Tests.Hosting;

/// <summary>A page as a browser reads it.</summary>
internal static class Page
{
    /// <summary>Fetches and reads one.</summary>
    public static async Task<IHtmlDocument> OpenAsync(Visitor visitor, string path) => await ReadAsync(await visitor.GetAsync(path));

    public static async Task<IHtmlDocument> ReadAsync(HttpResponseMessage answer)
    {
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, $"{answer.StatusCode} {text}");
        return new HtmlParser().ParseDocument(text);
    }

    /// <summary>Fills in the form of a name and sends it, with the hidden fields that it has.</summary>
    public static async Task<HttpResponseMessage> SendFormAsync(
        Visitor visitor, string path, string handler, params (string Name, string Value)[] fields)
    {
        IHtmlDocument page = await OpenAsync(visitor, path);
        IElement form = page.QuerySelectorAll("form").Single(f => f.QuerySelector($"input[name=_handler][value='{handler}']") is not null);
        IEnumerable<KeyValuePair<string, string>> hidden = form.QuerySelectorAll("input[type=hidden]")
            .Select(i => KeyValuePair.Create(i.GetAttribute("name")!, i.GetAttribute("value") ?? string.Empty));
        return await visitor.Client.PostAsync(
            path,
            new FormUrlEncodedContent([.. hidden, .. fields.Select(f => KeyValuePair.Create(f.Name, f.Value))]),
            TestContext.Current.CancellationToken);
    }

    /// <summary>Whether a script is a file of the site's own.</summary>
    private static bool IsOurs(IElement script) =>
        script.TextContent.Length == 0
        && script.GetAttribute("src") is ['/', not '/', ..] file
        && file.EndsWith(".js", StringComparison.Ordinal);

    /// <summary>Whatever in a page could run, or be styled, against the policy of its header.</summary>
    public static IEnumerable<string> Live(IHtmlDocument page)
    {
        foreach (IElement element in page.All)
        {
            if ((element.LocalName == "script" && !IsOurs(element)) || element.LocalName is "style" or "iframe" or "object" or "embed" or "base")
            {
                yield return element.OuterHtml;
            }

            foreach (IAttr attribute in element.Attributes)
            {
                bool isLive = attribute.Name.StartsWith("on", StringComparison.Ordinal) || attribute.Name is "style" or "srcdoc";
                bool isScript = attribute.Name is "href" or "src" or "action" or "formaction"
                    && attribute.Value.TrimStart().StartsWith("javascript:", StringComparison.OrdinalIgnoreCase);
                if (isLive || isScript)
                {
                    yield return $"<{element.LocalName} {attribute.Name}=\"{attribute.Value}\">";
                }
            }
        }
    }
}
