using LogBook.Application.Data;

namespace LogBook.Web.Features.SetUp;

/// <summary>Addresses of the set-up pages.</summary>
public static class SetUpLinks
{
    public const string Overview = "/setup";

    public const string Phrases = Overview + "/phrases";
    /// <summary>Spreadsheets move in.</summary>
    public const string MoveIn = Overview + "/move-in";

    public const string RuleTemplates = Overview + "/rules/templates";

    /// <summary>A list.</summary>
    public static string List(SetUpKind kind) => $"{Overview}/{SetUpList.Of(kind).Slug}";

    /// <summary>The form of a new record.</summary>
    public static string New(SetUpKind kind, string? site = null) => $"{List(kind)}/new" + Query(("site", site));

    /// <summary>The form of a record.</summary>
    public static string Record(SetUpKind kind, string code, string? site = null, DateOnly? from = null) =>
        $"{List(kind)}/record" + Query(("site", site), ("code", code), ("from", ReadingLinks.Day(from)));

    /// <summary>Programmes of a system.</summary>
    public static string Programmes(string site, string system) => $"{Overview}/programmes" + Query(("site", site), ("code", system));

    /// <summary>One programme of a system.</summary>
    public static string Programme(string site, string system, DateOnly from) => $"{Overview}/programmes/record" + Query(("site", site), ("code", system), ("from", ReadingLinks.Day(from)));

    /// <summary>A new programme, empty or from a copy.</summary>
    public static string NewProgramme(string site, string system, DateOnly? copy = null) => $"{Overview}/programmes/new" + Query(("site", site), ("code", system), ("copy", ReadingLinks.Day(copy)));

    private static string Query(params (string Name, string? Value)[] pairs)
    {
        var given = pairs.Where(pair => !string.IsNullOrEmpty(pair.Value)).Select(pair => $"{pair.Name}={Uri.EscapeDataString(pair.Value!)}").ToList();
        return given.Count == 0 ? "" : "?" + string.Join('&', given);
    }
}
