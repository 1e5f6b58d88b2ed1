using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;
using Microsoft.Net.Http.Headers;

namespace Gatewright.Server.Hosting;

/// <summary>The files of the pages and the app, as they were packed when the program was published.</summary>
/// <remarks>
/// The framework's own way keeps an endpoint for each file in each packing: for the app's some 700 of them, and 8 MB of a
/// small machine's memory.
/// </remarks>
internal static class PackedFiles
{
    // Names there hold a part of what the file holds: another version has another name.
    private const string NamedByContent = AppFiles.Parts + "/";

    private static readonly (string Encoding, string Extension)[] Packings = [("br", ".br"), ("gzip", ".gz")];

    /// <summary>Answers each address that is a file's with it, packed as the asker can unpack it.</summary>
    public static void UsePackedFiles(this WebApplication app)
    {
        IFileProvider files = app.Environment.WebRootFileProvider;
        app.Use((context, next) =>
        {
            if (HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method))
            {
                Choose(context.Request, files);
            }

            return next(context);
        });
        app.UseStaticFiles(new StaticFileOptions { ContentTypeProvider = new TypeOfUnpacked(), OnPrepareResponse = Describe });
    }

    private static void Choose(HttpRequest request, IFileProvider files)
    {
        if (!request.Path.HasValue || request.Path.Value.EndsWith('/'))
        {
            return;
        }

        IList<StringWithQualityHeaderValue> taken = request.GetTypedHeaders().AcceptEncoding;
        foreach ((string encoding, string extension) in Packings)
        {
            bool isTaken = taken.Any(t => t.Value.Equals(encoding, StringComparison.OrdinalIgnoreCase) && t.Quality is not 0);
            if (isTaken && files.GetFileInfo(request.Path.Value + extension).Exists)
            {
                request.Path += extension;
                return;
            }
        }
    }

    private static void Describe(StaticFileResponseContext context)
    {
        IHeaderDictionary headers = context.Context.Response.Headers;
        string path = context.Context.Request.Path.Value!;
        foreach ((string encoding, string extension) in Packings)
        {
            if (path.EndsWith(extension, StringComparison.Ordinal))
            {
                headers.ContentEncoding = encoding;
                path = path[..^extension.Length];
            }
        }

        headers.Vary = HeaderNames.AcceptEncoding;
        headers.CacheControl = path.StartsWith(NamedByContent, StringComparison.Ordinal) && IsNamedByContent(path)
            ? "max-age=31536000, immutable"
            : "no-cache";
    }

    // "dotnet.native.b6l13xorvf.js", but not "dotnet.js", which says what the others are called.
    private static bool IsNamedByContent(string path) => path[NamedByContent.Length..].Split('.') is [.., { Length: 10 }, _];

    /// <summary>The type of what is packed.</summary>
    private sealed class TypeOfUnpacked : IContentTypeProvider
    {
        private readonly FileExtensionContentTypeProvider _types = new() { Mappings = { [".dat"] = "application/octet-stream", [".pdb"] = "application/octet-stream" } };

        public bool TryGetContentType(string subpath, out string contentType)
        {
            string? packing = Packings.Select(p => p.Extension).FirstOrDefault(e => subpath.EndsWith(e, StringComparison.Ordinal));
            return _types.TryGetContentType(packing is null ? subpath : subpath[..^packing.Length], out contentType!);
        }
    }
}
