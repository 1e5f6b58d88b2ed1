using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Store.Blobs;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace Gatewright.Server.Photos;

/// <summary>Pictures, kept by what they contain.</summary>
internal static class PhotoEndpoints
{
    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapPhotos(this RouteGroupBuilder club)
    {
        club.MapPut("/photos/{sha256}", PutAsync)
            .Accepts<Stream>("image/jpeg", "image/png", "image/webp")
            .WithMetadata(new RequestSizeLimitAttribute(BlobSettings.Default.MostBytes))
            .Needs(ClubRight.Record)
            .WithSummary("Keep a picture under the SHA-256 of its bytes. Keeping it again changes nothing.");
        club.MapGet("/photos/{sha256}", GetAsync)
            .Produces(StatusCodes.Status200OK, contentType: "image/jpeg")
            .Needs(ClubRight.ReadJournal)
            .WithSummary("A picture by the SHA-256 of its bytes.");
    }

    private static async Task<Results<NoContent, ProblemHttpResult>> PutAsync(HttpContext context, string sha256, BlobStore blobs)
    {
        using var bytes = new MemoryStream();
        await context.Request.Body.CopyToAsync(bytes, context.RequestAborted).ConfigureAwait(false);
        try
        {
            await blobs.PutAsync(ClubAccess.Of(context).Club, sha256, bytes.ToArray(), context.RequestAborted).ConfigureAwait(false);
            return TypedResults.NoContent();
        }
        catch (BlobRefusedException refused)
        {
            return Problem.Of(StatusCodes.Status400BadRequest, "This picture is not taken", refused.Message);
        }
    }

    private static async Task<Results<FileStreamHttpResult, ProblemHttpResult>> GetAsync(HttpContext context, string sha256, BlobStore blobs)
    {
        OpenedBlob? blob = await blobs.GetAsync(ClubAccess.Of(context).Club, sha256, context.RequestAborted).ConfigureAwait(false);
        if (blob is null)
        {
            return Problem.NotFound("picture");
        }

        // What a hash names never changes.
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return TypedResults.Stream(blob.Content, blob.About.MediaType);
    }
}
