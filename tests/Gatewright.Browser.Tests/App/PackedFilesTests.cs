using System.IO.Compression;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;

namespace Gatewright.Browser.Tests.App;

/// <summary>The published files, as they go over the wire.</summary>
public sealed partial class PackedFilesTests(DemoSite demo) : IClassFixture<DemoSite>
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Each_file_comes_as_its_asker_can_unpack_it_and_is_the_same()
    {
        using var client = new HttpClient(new SocketsHttpHandler { AutomaticDecompression = System.Net.DecompressionMethods.None }) { BaseAddress = demo.Site.Address };
        string list = System.Text.Encoding.UTF8.GetString((await GetAsync(client, "/app/_framework/dotnet.js", null)).Bytes);
        string native = "/app/_framework/" + Native().Match(list).Value;
        foreach ((string path, string type) in new[]
        {
            ("/gatewright.css", "text/css"), ("/app/look.css", "text/css"), ("/app/run.js", "text/javascript"),
            ("/app/manifest.webmanifest", "application/manifest+json"), (native, "application/wasm"),
        })
        {
            (byte[] plain, HttpContentHeaders asIs, _) = await GetAsync(client, path, null);
            (byte[] brotli, HttpContentHeaders ofBrotli, string? cache) = await GetAsync(client, path, "gzip;q=0.5, br");
            (byte[] gzip, HttpContentHeaders ofGzip, _) = await GetAsync(client, path, "gzip, br;q=0");

            Assert.Equal(type, asIs.ContentType!.MediaType);
            Assert.Equal(type, ofBrotli.ContentType!.MediaType);
            Assert.Empty(asIs.ContentEncoding);
            Assert.Equal(["br"], ofBrotli.ContentEncoding);
            Assert.Equal(["gzip"], ofGzip.ContentEncoding);
            Assert.True(brotli.Length < plain.Length);
            Assert.Equal(plain, Unpacked(new BrotliStream(new MemoryStream(brotli), CompressionMode.Decompress)));
            Assert.Equal(plain, Unpacked(new GZipStream(new MemoryStream(gzip), CompressionMode.Decompress)));

            // A name that holds a part of what the file holds may be kept for good; any other is asked for anew.
            Assert.Equal(path == native, cache!.Contains("immutable", StringComparison.Ordinal));
        }
    }

    /// <summary>What binds a page would be a hundredth of a first load, said once for each part of the runtime.</summary>
    [Fact]
    public async Task A_part_of_the_program_says_what_binds_a_part_and_a_page_in_its_place_what_binds_a_page()
    {
        using var client = new HttpClient(new SocketsHttpHandler { AutomaticDecompression = System.Net.DecompressionMethods.All }) { BaseAddress = demo.Site.Address };
        string list = await client.GetStringAsync(new Uri("/app/_framework/dotnet.js", UriKind.Relative), Cancellation);
        foreach ((string path, bool isPart) in new[]
        {
            ("_framework/" + Native().Match(list).Value, true), ("_framework/dotnet.js", true), ("run.js", true), ("look.css", true),
            ("_framework/nowhere", false), ("_framework/no.wasm", false), ("index.html", false), ("icons/plumb.svg", false),
            ("service-worker.js", false),
        })
        {
            using HttpResponseMessage answer = await client.GetAsync(new Uri("/app/" + path, UriKind.Relative), Cancellation);
            Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
            Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Resource-Policy"));
            Assert.Equal(!isPart, answer.Headers.Contains("Content-Security-Policy"));
            Assert.Equal(!isPart, answer.Headers.Contains("X-Frame-Options"));
        }
    }

    private static async Task<(byte[] Bytes, HttpContentHeaders Headers, string? Cache)> GetAsync(HttpClient client, string path, string? accepted)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (accepted is not null)
        {
            request.Headers.TryAddWithoutValidation("Accept-Encoding", accepted);
        }

        using HttpResponseMessage answer = await client.SendAsync(request, Cancellation);
        answer.EnsureSuccessStatusCode();
        return (await answer.Content.ReadAsByteArrayAsync(Cancellation), answer.Content.Headers, answer.Headers.CacheControl?.ToString());
    }

    private static byte[] Unpacked(Stream packed)
    {
        using (packed)
        {
            using var plain = new MemoryStream();
            packed.CopyTo(plain);
            return plain.ToArray();
        }
    }

    [GeneratedRegex(@"dotnet\.native\.[a-z0-9]+\.wasm")]
    private static partial Regex Native();
}
