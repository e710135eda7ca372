using System.Security.Cryptography;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Sites;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Components.Parts;
using LogBook.Web.Features;
using LogBook.Web.Hosting;
using LogBook.Web.Security;
using Microsoft.AspNetCore.DataProtection;

namespace LogBook.Web.Api;

/// <summary>What only a tablet asks for: to be registered, today's round in words, and how far a visit has come.</summary>
public static class TabletEndpoints
{
    /// <summary>Scopes of a tablet: it reads rounds and single visits and hands visits in; findings and exports are not for it.</summary>
    private static readonly string[] Scopes = [TokenScopes.Visits, TokenScopes.Tablet];

    private const int KeyBytes = 32;

    /// <summary>Maps the addresses.</summary>
    public static void MapTablets(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup(ApiEndpoints.Base).AddEndpointFilter<SameOriginFilter>().DisableAntiforgery().WithTags("Tablets");
        api.MapPost("/tablets", RegisterAsync).RequireAuthorization(ApiPolicies.Tablets)
            .WithSummary("Registers a tablet for the person who is signed in on it. Its credential ends with the account, or when it is revoked.")
            .Produces<TabletCredential>().ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapGet("/round/stops", StopsAsync).RequireAuthorization(ApiPolicies.Round)
            .WithSummary("Today's round in words of each language: sites, due first, and what changed there since; the firm's own quick phrases and thresholds; and actions that stand.")
            .Produces<TabletRound>();
        api.MapPut("/tablets/keys/{id}", KeepKeyAsync).RequireAuthorization(ApiPolicies.TabletKeys)
            .WithSummary("Keeps the second key to a person's drafts on a tablet, under its SHA-256.")
            .Produces(StatusCodes.Status204NoContent).ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapPost("/tablets/keys/{id}/requests", AskKeyAsync).RequireAuthorization(ApiPolicies.TabletKeys)
            .WithSummary("Asks a supervisor to release the second key, because the PIN is forgotten.")
            .Produces(StatusCodes.Status202Accepted).ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/tablets/keys/{id}", FindKeyAsync).RequireAuthorization(ApiPolicies.TabletKeys)
            .WithSummary("The second key, for an hour after a supervisor has released it.")
            .Produces<TabletSecondKey>().ProducesProblem(StatusCodes.Status404NotFound);
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

    private static async Task<IResult> KeepKeyAsync(
        string id, TabletSecondKey given, HttpContext http, ViewerReader viewers, TabletKeyStore keys, IDataProtectionProvider protection, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        // Under its own hash, so that no other key can take its place.
        var key = new byte[KeyBytes];
        var isKey = Convert.TryFromBase64String(given.Key, key, out var length) && length == KeyBytes && Convert.ToHexStringLower(SHA256.HashData(key)) == id;
        return isKey && await keys.KeepAsync(viewer, id, given.Tablet?.Trim() ?? "", protection.CreateProtector(TabletKeyPurpose.Name).Protect(given.Key), given.Replaces, cancellationToken)
            ? Results.NoContent()
            : Problems.Of(StatusCodes.Status400BadRequest, "tablet-key", "This is no key of a tablet.", "32 bytes in base64 under their SHA-256, and the tablet's name.");
    }

    private static async Task<IResult> AskKeyAsync(string id, HttpContext http, ViewerReader viewers, TabletKeyStore keys, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        return await keys.AskAsync(viewer, id, cancellationToken) ? Results.Accepted() : Problems.NotFound();
    }

    private static async Task<IResult> FindKeyAsync(
        string id, HttpContext http, ViewerReader viewers, TabletKeyStore keys, IDataProtectionProvider protection, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return ApiEndpoints.SignedOut();
        }

        if (await keys.FindReleasedAsync(viewer, id, cancellationToken) is not { } kept)
        {
            return Problems.NotFound();
        }

        http.Response.Headers.CacheControl = "no-store";
        try
        {
            return Results.Json(new TabletSecondKey(protection.CreateProtector(TabletKeyPurpose.Name).Unprotect(kept)));
        }
        catch (CryptographicException)
        {
            // The key ring of the installation was lost since: the key is gone with it.
            return Problems.NotFound();
        }
    }

    private static async Task<IResult> StopsAsync(
        HttpContext http, ViewerReader viewers, TodaysRoundQuery rounds, PhraseStore phrases, SettingStore settings, StandingActionsQuery standing, FirmNames firm, TimeProvider clock, CancellationToken cancellationToken)
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
            own.RootElement.Clone(),
            firm.Name,
            await settings.InUseAsync(viewer, cancellationToken),
            [.. (await standing.OfAsync(viewer, cancellationToken: cancellationToken)).Select(ActionOf)]));
    }

    private static TabletAction ActionOf(StandingAction standing) =>
        new(standing.Site, standing.System, Moment.OfUtc(standing.Since).Text, JsonSerializer.SerializeToElement(standing.Action, ExchangeJson.Default.VisitAction));

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
