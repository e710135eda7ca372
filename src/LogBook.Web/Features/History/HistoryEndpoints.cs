using LogBook.Application.History;
using LogBook.Web.Account;
using LogBook.Web.Security;

namespace LogBook.Web.Features.History;

/// <summary>The history as a file.</summary>
public static class HistoryEndpoints
{
    /// <summary>Maps the table of a history.</summary>
    public static IEndpointRouteBuilder MapHistory(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapGet("/sites/{code}/systems/{system}/history.csv", TableAsync).RequireAuthorization(Policies.SignedIn);
        return endpoints;
    }

    private static async Task<IResult> TableAsync(string code, string system, string? from, string? to, HttpContext context, ViewerReader viewers, SiteHistoryQuery histories, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(context.User, cancellationToken) is not { } viewer)
        {
            return Results.Unauthorized();
        }

        var view = await histories.OfAsync(viewer, code, system, ReadingLinks.ParseDay(from), ReadingLinks.ParseDay(to), null, cancellationToken);
        return view is null
            ? Results.NotFound()
            : Results.File(HistoryTable.Of(view, viewer.Language), "text/csv; charset=utf-8", $"{view.Heading.SiteCode}-{view.Heading.SystemCode}-{ReadingLinks.Day(view.From)}.csv");
    }
}
