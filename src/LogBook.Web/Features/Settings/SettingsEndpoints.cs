using LogBook.Application.Settings;
using LogBook.Application.Sites;
using LogBook.Web.Account;
using LogBook.Web.Security;

namespace LogBook.Web.Features.Settings;

/// <summary>The re-entry sheet as a file.</summary>
public static class SettingsEndpoints
{
    /// <summary>Maps the sheet.</summary>
    public static IEndpointRouteBuilder MapSettings(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapGet("/sites/{code}/systems/{system}/re-entry.pdf", SheetAsync).RequireAuthorization(Policies.Firm);
        return endpoints;
    }

    private static async Task<IResult> SheetAsync(
        string code, string system, string? on, HttpContext context, ViewerReader viewers, SettingsQuery settings, SetUpStore setUp, TimeProvider clock, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(context.User, cancellationToken) is not { } viewer)
        {
            return Results.Unauthorized();
        }

        if (await settings.ReEntryAsync(viewer, code, system, ReadingLinks.ParseDay(on), cancellationToken) is not { Sheet.Groups.Count: > 0 } view)
        {
            return Results.NotFound();
        }

        var firm = await setUp.FirmRowAsync(viewer, cancellationToken);
        return Results.File(
            ReEntryPaper.Of(view, firm?.Name ?? "", viewer.Language, clock.GetUtcNow().UtcDateTime),
            "application/pdf",
            $"{view.Heading.SiteCode}-{view.Heading.SystemCode}-{ReadingLinks.Day(view.Sheet.On)}-re-entry.pdf");
    }
}
