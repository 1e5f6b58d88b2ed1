namespace Gatewright.Server.Tests.Hosting;

/// <summary>Requests made by hand: no cookies but those given, no redirects followed, nothing added.</summary>
internal static class Bare
{
    private static readonly HttpClient Client = new(new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false });

    public static async Task<HttpResponseMessage> SendAsync(
        Uri server, HttpMethod method, string path, HttpContent? content = null, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, new Uri(server, path)) { Content = content };
        foreach ((string name, string value) in headers)
        {
            if (name == "Host")
            {
                request.Headers.Host = value;
            }
            else
            {
                Assert.True(request.Headers.TryAddWithoutValidation(name, value));
            }
        }

        return await Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    /// <summary>The cookies that somebody has, as a header.</summary>
    public static (string, string) Cookies(Visitor visitor, Uri server) => ("Cookie", visitor.Cookies.GetCookieHeader(server));
}
