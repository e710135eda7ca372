using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Web.Account;
using Microsoft.AspNetCore.Mvc;

namespace LogBook.Web.Api;

/// <summary>The HTTP interface: the same intake, queries and wall as the pages.</summary>
public static class ApiEndpoints
{
    /// <summary>Base of all addresses.</summary>
    public const string Base = "/api/v1";

    /// <summary>Largest visit document, in bytes.</summary>
    public const int MostVisitBytes = 4 * 1024 * 1024;

    /// <summary>Maps the interface.</summary>
    public static void MapLogBookApi(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup(Base).AddEndpointFilter<SameOriginFilter>().DisableAntiforgery().WithTags("LogBook");

        api.MapPost("/visits", PostVisitAsync).RequireAuthorization(ApiPolicies.Visits)
            .WithSummary("Hands in one visit. Sending it again gives the same receipt; other content under its key is a conflict that keeps both.")
            .Accepts<ExchangeDocument>("application/json")
            .Produces<VisitReceipt>(StatusCodes.Status201Created).Produces<VisitReceipt>()
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status409Conflict).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        api.MapGet("/visits/{id:guid}", GetVisitAsync).RequireAuthorization(ApiPolicies.Read)
            .WithSummary("One visit in the exchange format, in its current version or the one asked for.")
            .Produces<string>(StatusCodes.Status200OK, "application/json").ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/round", GetRoundAsync).RequireAuthorization(ApiPolicies.Round)
            .WithSummary("What a tablet needs for today's round: set-up, and the last visits of each site; with whole=true of all sites of the firm.")
            .Produces<string>(StatusCodes.Status200OK, "application/json");
        api.MapGet("/findings", GetFindingsAsync).RequireAuthorization(ApiPolicies.FirmRead)
            .WithSummary("Findings as they stand, or as they stood at a moment.")
            .Produces<string>(StatusCodes.Status200OK, "application/json").ProducesProblem(StatusCodes.Status400BadRequest);
        api.MapPost("/imports", PostImportAsync).RequireAuthorization(ApiPolicies.Import)
            .WithSummary("Imports an exchange document: all or nothing, or with partial=true the good visits.")
            .Accepts<ExchangeDocument>("application/json")
            .Produces<ImportOutcome>().ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        api.MapGet("/export", GetExportAsync).RequireAuthorization(ApiPolicies.FirmRead)
            .WithSummary("Set-up, visits and, if asked for, findings as one exchange document.")
            .Produces<string>(StatusCodes.Status200OK, "application/json").ProducesProblem(StatusCodes.Status404NotFound);
        api.MapGet("/photos/{id:guid}", GetPhotoAsync).RequireAuthorization(ApiPolicies.Read)
            .WithSummary("The picture of a photo that a visit names, as it is kept; with small=true a small one.")
            .Produces<byte[]>(StatusCodes.Status200OK, "image/jpeg").ProducesProblem(StatusCodes.Status404NotFound);
        api.MapPost("/photos/{id:guid}", PostPhotoAsync).RequireAuthorization(ApiPolicies.Visits)
            .WithSummary("Hands in the picture of a photo that a visit names: JPEG or PNG, at most 10 MiB and 24 million pixels. What is kept is made anew, without location.")
            .Accepts<byte[]>("image/jpeg", "image/png")
            .Produces(StatusCodes.Status201Created).Produces(StatusCodes.Status200OK)
            .ProducesProblem(StatusCodes.Status404NotFound).ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        routes.MapOpenApi(Base + "/openapi.json").AllowAnonymous();
    }

    private static async Task<IResult> PostVisitAsync(
        HttpRequest request, [FromHeader(Name = "Idempotency-Key")] string? key, ViewerReader viewers, VisitIntake intake, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(request.HttpContext.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        if (string.IsNullOrWhiteSpace(key))
        {
            return Problems.Of(StatusCodes.Status400BadRequest, "key-missing", "Idempotency-Key is missing.", "Send the visit's id and version, as in 0197…/1.");
        }

        if (await ReadAsync(request, MostVisitBytes, cancellationToken) is not { } json)
        {
            return Problems.Of(StatusCodes.Status413PayloadTooLarge, "too-large", "The document is too large.", "One visit may have 4 MiB at most.");
        }

        if (VisitKey.Of(json) is { } own && !string.Equals(own, key.Trim().Trim('"'), StringComparison.OrdinalIgnoreCase))
        {
            return Problems.Of(StatusCodes.Status400BadRequest, "key-differs", "Idempotency-Key is not that of the document.", "The document's key is " + own + ".");
        }

        var source = request.HttpContext.User.Identity?.AuthenticationType == TokenHandler.SchemeName ? IntakeSource.Api : IntakeSource.Tablet;
        return Answer(await intake.ReceiveAsync(viewer, json, source, cancellationToken));
    }

    private static IResult Answer(IntakeOutcome outcome) => outcome switch
    {
        IntakeOutcome.Stored stored => Results.Json(
            new VisitReceipt(stored.VisitId, stored.Version, stored.Sha256, stored.AlreadyKnown, stored.Warnings),
            statusCode: stored.AlreadyKnown ? StatusCodes.Status200OK : StatusCodes.Status201Created),
        IntakeOutcome.Refused refused => Problems.Refused(refused.Issues),
        IntakeOutcome.Conflict conflict => Results.Problem(
            "Another content stands under this key. What was sent is kept for a person to settle.",
            statusCode: StatusCodes.Status409Conflict,
            title: "The visit is there already with another content.",
            type: "urn:logbook:problem:conflict",
            extensions: new Dictionary<string, object?>
            {
                ["visit"] = conflict.VisitId,
                ["currentVersion"] = conflict.CurrentVersion,
                ["currentSha256"] = conflict.CurrentSha256,
                ["keptSha256"] = conflict.KeptSha256,
            }),
        _ => Problems.NotFound(),
    };

    private static async Task<IResult> GetVisitAsync(Guid id, int? version, HttpContext http, ViewerReader viewers, VisitReader visits, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        return await visits.FindAsync(viewer, id, version, cancellationToken) is { } found ? Document(ExchangeWriter.CanonicalOf(found.Visit)) : Problems.NotFound();
    }

    private static async Task<IResult> GetRoundAsync(bool? whole, int? visits, HttpContext http, ViewerReader viewers, RoundQuery round, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        return Document(ExchangeWriter.Write(await round.DocumentAsync(viewer, Math.Clamp(visits ?? RoundQuery.VisitsPerSite, 1, RoundQuery.VisitsPerSite), whole == true, cancellationToken)));
    }

    private static async Task<IResult> GetFindingsAsync(
        string? site, string? asOf, HttpContext http, ViewerReader viewers, FindingsQuery findings, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        if (!TryMoment(asOf, out var moment))
        {
            return BadMoment(nameof(asOf));
        }

        var list = await findings.ListAsync(viewer, site, moment, cancellationToken: cancellationToken);
        return Document(ExchangeWriter.Write(new ExchangeDocument { Format = "logbook-exchange", Version = 1, Findings = list }));
    }

    private static async Task<IResult> GetPhotoAsync(
        Guid id, bool? small, HttpContext http, ViewerReader viewers, PhotoStore photos, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        if (await photos.FindAsync(viewer, id, small == true, cancellationToken) is not { } picture)
        {
            return Problems.NotFound();
        }

        // A picture must not outlive the sign-in in the browser of a machine that is shared.
        http.Response.Headers.CacheControl = "private, no-store";
        return Results.Bytes(picture, "image/jpeg");
    }

    private static async Task<IResult> PostPhotoAsync(Guid id, HttpRequest request, ViewerReader viewers, PhotoStore photos, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(request.HttpContext.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        return await photos.KeepAsync(viewer, id, request.Body, cancellationToken) switch
        {
            PhotoOutcome.Stored => Results.StatusCode(StatusCodes.Status201Created),
            PhotoOutcome.AlreadyKnown => Results.StatusCode(StatusCodes.Status200OK),
            PhotoOutcome.TooLarge => Problems.Of(StatusCodes.Status413PayloadTooLarge, "too-large", "The picture is too large.", "10 MiB at most."),
            PhotoOutcome.NotAPicture => Problems.Of(StatusCodes.Status415UnsupportedMediaType, "not-a-picture", "This is not a picture that can be read.", "JPEG or PNG is expected, told by the content."),
            PhotoOutcome.TooManyPixels => Problems.Of(StatusCodes.Status422UnprocessableEntity, "too-many-pixels", "The picture has too many pixels.", "24 million at most."),
            PhotoOutcome.OtherHash => Problems.Of(StatusCodes.Status422UnprocessableEntity, "other-hash", "This is not the picture that the visit names.", "Its SHA-256 differs from the one in the visit."),
            PhotoOutcome.Forbidden => Problems.Of(StatusCodes.Status422UnprocessableEntity, "photos-forbidden", "The site forbids photos."),
            _ => Problems.NotFound(),
        };
    }

    private static async Task<IResult> PostImportAsync(
        bool? partial, bool? update, HttpRequest request, ViewerReader viewers, ExchangeImport import, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(request.HttpContext.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        var outcome = await import.ImportAsync(viewer, request.Body, partial == true, update == true, cancellationToken: cancellationToken);
        return outcome.Written || !outcome.Issues.Any(issue => issue.Blocks) ? Results.Json(outcome) : Problems.Refused(outcome.Issues);
    }

    private static async Task<IResult> GetExportAsync(
        string? site, string? from, string? to, string? asOf, bool? findings, HttpContext http, ViewerReader viewers, ExchangeExport export, CancellationToken cancellationToken)
    {
        if (await viewers.FindAsync(http.User, cancellationToken) is not { } viewer)
        {
            return SignedOut();
        }

        if (!TryMoment(from, out var first))
        {
            return BadMoment(nameof(from));
        }

        if (!TryMoment(to, out var last))
        {
            return BadMoment(nameof(to));
        }

        if (!TryMoment(asOf, out var moment))
        {
            return BadMoment(nameof(asOf));
        }

        var document = await export.ExportAsync(viewer, site, first, last, moment, findings == true, cancellationToken);
        return document is null ? Problems.NotFound() : Document(ExchangeWriter.Write(document));
    }

    private static IResult Document(string json) => Results.Text(json, "application/json", Encoding.UTF8);

    // Signed in by an account that may not be used any more.
    internal static IResult SignedOut() => Problems.Of(StatusCodes.Status401Unauthorized, "signed-out", "Nobody is signed in.");

    private static IResult BadMoment(string name) =>
        Problems.Of(StatusCodes.Status400BadRequest, "moment", $"{name} is not a moment.", "Write it as 2026-12-31T08:00:00Z, with its offset.");

    private static bool TryMoment(string? text, out DateTime? utc)
    {
        utc = null;
        if (string.IsNullOrEmpty(text))
        {
            return true;
        }

        if (!Moment.TryParse(text, out var moment))
        {
            return false;
        }

        utc = moment.Utc;
        return true;
    }

    private static async Task<string?> ReadAsync(HttpRequest request, int mostBytes, CancellationToken cancellationToken)
    {
        if (request.ContentLength > mostBytes)
        {
            return null;
        }

        using var kept = new MemoryStream();
        var buffer = new byte[16 * 1024];
        int read;
        while ((read = await request.Body.ReadAsync(buffer, cancellationToken)) > 0)
        {
            if (kept.Length + read > mostBytes)
            {
                return null;
            }

            kept.Write(buffer, 0, read);
        }

        return Encoding.UTF8.GetString(kept.GetBuffer(), 0, (int)kept.Length);
    }
}
