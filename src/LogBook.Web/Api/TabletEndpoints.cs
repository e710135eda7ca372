using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Sites;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Components.Parts;
using LogBook.Web.Features;

namespace LogBook.Web.Api;

/// <summary>What only a tablet asks for: to be registered, today's round in words, and how far a visit has come.</summary>
public static class TabletEndpoints
{
    /// <summary>Scopes of a tablet: it reads rounds and single visits and hands visits in; findings and exports are not for it.</summary>
    private static readonly string[] Scopes = [TokenScopes.Visits, TokenScopes.Tablet];

    /// <summary>Maps the addresses.</summary>
    public static void MapTablets(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup(ApiEndpoints.Base).AddEndpointFilter<SameOriginFilter>().DisableAntiforgery().WithTags("Tablets");
        api.MapPost("/tablets", RegisterAsync).RequireAuthorization(ApiPolicies.Tablets)
            .WithSummary("Registers a tablet for the person who is signed in on it. Its credential ends with the account, or when it is revoked.")
            .Produces<TabletCredential>().ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapGet("/round/stops", StopsAsync).RequireAuthorization(ApiPolicies.Round)
            .WithSummary("Today's round in words of each language: sites, due first, and what changed there since; and the firm's own quick phrases.")
            .Produces<TabletRound>();
        api.MapGet("/visits/{id:guid}/standing", StandingAsync).RequireAuthorization(ApiPolicies.Visits)
            .WithSummary("How far a visit has come: its version on the server, and its mails.")
            .Produces<VisitStanding>().ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static async Task<IResult> RegisterAsync(
        TabletName tablet, HttpContext http, ViewerReader viewers, TokenStore tokens, SetUpStore setUp, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        var person = viewer.PersonCode is { } code ? (await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).People.GetValueOrDefault(code) : null;
        return await tokens.CreateAsync(viewer, tablet.Name, Scopes, TokenStore.MostDays, cancellationToken) is { } token
            ? Results.Json(new TabletCredential(token.Text, Moment.OfUtc(token.ExpiresAt).Text, viewer.PersonCode ?? viewer.Who, person?.Name ?? viewer.Who, LanguageCodes.Of(viewer.Language)))
            : Problems.Of(StatusCodes.Status400BadRequest, "tablet-name", "The tablet's name is missing or too long.", "1 to 100 characters.");
    }

    private static async Task<IResult> StopsAsync(
        HttpContext http, ViewerReader viewers, TodaysRoundQuery rounds, PhraseStore phrases, TimeProvider clock, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        var round = await rounds.OfAsync(viewer, cancellationToken);
        using var own = JsonDocument.Parse((await phrases.InUseAsync(viewer, cancellationToken)).Write());
        return Results.Json(new TabletRound(
            Moment.OfUtc(clock.GetUtcNow().UtcDateTime).Text,
            [.. (round?.Stops ?? []).Select(StopOf)],
            own.RootElement.Clone()));
    }

    private static TabletStop StopOf(RoundStop stop) => new(
        stop.Site.Code,
        stop.Site.Name,
        DueWords.UrgentShape(stop.Site) switch
        {
            StateKind.Act => "late",
            StateKind.Plan => "due",
            StateKind.Watch => "soon",
            _ => "later",
        },
        TabletWords.Of(language => DueWords.UrgentWithReason(stop.Site, language)),
        TabletWords.Of(language => stop.Site.LastVisit is { } day ? $"{Shown.Day(day, language)}, {DueWords.Ago(stop.Site, language)}" : DueWords.Ago(stop.Site, language)),
        [.. stop.Since.Select(entry => TabletWords.Of(language => $"{Shown.Day(entry.Day, language)}: {entry.Words.In(language)}"))]);

    private static async Task<IResult> StandingAsync(Guid id, HttpContext http, ViewerReader viewers, VisitStandingQuery standing, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        return await standing.FindAsync(viewer, id, cancellationToken) is { } found ? Results.Json(found) : Problems.NotFound();
    }
}
