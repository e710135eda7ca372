using LogBook.Application.MoveIn;
using LogBook.Application.Sites;
using LogBook.Web.Account;
using LogBook.Web.Security;

namespace LogBook.Web.Features.SetUp.MoveIn;

/// <summary>The template workbook as a file.</summary>
public static class MoveInEndpoints
{
    /// <summary>Maps the template.</summary>
    public static IEndpointRouteBuilder MapMoveIn(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapGet("/setup/move-in/template.xlsx", TemplateAsync).RequireAuthorization(Policies.Supervisor);
        return endpoints;
    }

    private static async Task<IResult> TemplateAsync(HttpContext context, ViewerReader viewers, SetUpStore store, CancellationToken cancellationToken) =>
        await viewers.FindAsync(context.User, cancellationToken) is { } viewer && MoveInDesk.MayMoveIn(viewer)
            ? Results.File(MoveInTemplate.Make(await store.FirmAsync(viewer, cancellationToken: cancellationToken), viewer.Language), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "logbook-template.xlsx")
            : Results.NotFound();
}
