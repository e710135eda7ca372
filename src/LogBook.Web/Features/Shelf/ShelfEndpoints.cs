using LogBook.Application.Shelf;
using LogBook.Web.Account;
using LogBook.Web.Security;

namespace LogBook.Web.Features.Shelf;

/// <summary>The reorder list as a file.</summary>
public static class ShelfEndpoints
{
    /// <summary>Maps the table.</summary>
    public static IEndpointRouteBuilder MapShelf(this IEndpointRouteBuilder endpoints)
    {
        endpoints.MapGet("/shelf/order.csv", TableAsync).RequireAuthorization(Policies.Firm);
        return endpoints;
    }

    private static async Task<IResult> TableAsync(string? site, string? person, string? product, HttpContext context, ViewerReader viewers, ShelfQuery shelf, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(context.User, cancellationToken) is not { } viewer)
        {
            return Results.Unauthorized();
        }

        static string? None(string? text) => string.IsNullOrEmpty(text) ? null : text;
        var list = await shelf.ListAsync(viewer, new ShelfFilter(None(site), None(person), None(product)), cancellationToken);
        return list is null
            ? Results.NotFound()
            : Results.File(ShelfTable.Of(list.ToOrder, viewer.Language), "text/csv; charset=utf-8", $"order-{ReadingLinks.Day(DateOnly.FromDateTime(list.Now))}.csv");
    }
}
