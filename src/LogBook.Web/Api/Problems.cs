using LogBook.Domain.Outcomes;

namespace LogBook.Web.Api;

/// <summary>Refusals as problem details (RFC 9457).</summary>
public static class Problems
{
    private const string Kind = "urn:logbook:problem:";

    /// <summary>A refusal without issues.</summary>
    public static IResult Of(int status, string kind, string title, string? detail = null) =>
        Results.Problem(detail, statusCode: status, title: title, type: Kind + kind);

    /// <summary>Nothing was written; every fault is listed.</summary>
    public static IResult Refused(IReadOnlyList<Issue> issues) => Results.Problem(
        "Nothing was written. Each issue names its place in the document.",
        statusCode: StatusCodes.Status422UnprocessableEntity,
        title: "The document was refused.",
        type: Kind + "refused",
        extensions: new Dictionary<string, object?> { ["issues"] = issues });

    /// <summary>The caller knows no such record: the same words for one that is not there and for one that is not the caller's.</summary>
    public static IResult NotFound() => Of(StatusCodes.Status404NotFound, "not-found", "There is no such record.");
}
