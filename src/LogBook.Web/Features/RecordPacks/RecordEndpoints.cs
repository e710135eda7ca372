using LogBook.Application.RecordPacks;
using LogBook.Web.Account;
using LogBook.Web.Security;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Record packs as files.</summary>
public static class RecordEndpoints
{
    /// <summary>Maps the file of a pack that was made.</summary>
    public static IEndpointRouteBuilder MapRecords(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapGet("/sites/{code}/records/{ticket:guid}", FileAsync).RequireAuthorization(Policies.SignedIn);
        return endpoints;
    }

    private static async Task<IResult> FileAsync(string code, Guid ticket, HttpContext context, ViewerReader viewers, RecordDesk desk, RecordPackReader reader, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(context.User, cancellationToken) is not { } viewer)
        {
            return Results.Unauthorized();
        }

        // The wall is asked again: the account may have lost the site since the pack was made.
        return await reader.PreviewAsync(viewer, code, null, null, cancellationToken) is not null && desk.Take(viewer, code, ticket) is { } file
            ? Results.File(file.Content, "application/zip", file.Name)
            : Results.NotFound();
    }
}
