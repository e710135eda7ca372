using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Exchange;

/// <summary>
/// Whether a document agrees with itself and with the set-up that is known: codes exist, are unique in any case of letters,
/// units fit tests, parts fit their system, dates and versions agree. Everything found blocks.
/// </summary>
/// <remarks>
/// The form of the document was checked by <see cref="ExchangeReader"/>. Lots and standards that nobody declared are taken
/// as new. What is plausible but suspect is told by the checks of a visit.
/// </remarks>
public static class ExchangeCheck
{
    /// <summary>Code of the issue "this code is known with other content"; whoever imports may allow it as an update.</summary>
    public const string SetUpDiffers = "set-up-differs";

    /// <summary>Checks a document that was read.</summary>
    /// <param name="document">The document.</param>
    /// <param name="known">Set-up known before; <see cref="FirmSetUp.Empty"/> for an empty firm.</param>
    /// <param name="language">Language of the messages.</param>
    /// <returns>Every issue, with its path; empty when the document may be taken in.</returns>
    public static IReadOnlyList<Issue> Check(ExchangeDocument document, FirmSetUp known, Language language = Language.English)
    {
        var issues = new IssueList(language);
        var firm = Combine(document, known);
        Duplicates(document, issues);
        Differences(document, known, issues);
        new SetUpCheck(firm, issues).Check(document);
        Visits(document, firm, issues);
        return issues.Issues;
    }

    /// <summary>The set-up as it will be after a document was taken in.</summary>
    /// <param name="document">The document; where it has a code that is known, its content counts.</param>
    /// <param name="known">Set-up known before.</param>
    /// <returns>Both together.</returns>
    public static FirmSetUp Combine(ExchangeDocument document, FirmSetUp known)
    {
        var old = known.Document;
        return new FirmSetUp(old with
        {
            Tests = Join(old.Tests, document.Tests, t => t.Code),
            Customers = Join(old.Customers, document.Customers, c => c.Code),
            People = Join(old.People, document.People, p => p.Code),
            Products = Join(old.Products, document.Products, p => p.Code),
            Instruments = Join(old.Instruments, document.Instruments, i => i.Code),
            Lots = Join(old.Lots, document.Lots, l => l.Code),
            Rules = Join(old.Rules, document.Rules, Key),
            Sites = Join(old.Sites, document.Sites, s => s.Code),
            Systems = Join(old.Systems, document.Systems, Key),
        });
    }

    /// <summary>Rules are keyed by code and first day.</summary>
    private static string Key(Rule rule) => $"{rule.Code}\n{rule.From:O}";

    /// <summary>Systems are keyed within their site.</summary>
    private static string Key(WaterSystem system) => $"{system.Site}\n{system.Code}";

    private static List<T> Join<T>(IReadOnlyList<T> old, IReadOnlyList<T> added, Func<T, string> key)
    {
        var keys = added.Select(key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. old.Where(o => !keys.Contains(key(o))), .. added];
    }

    private static void Duplicates(ExchangeDocument document, IssueList issues)
    {
        Unique(document.Tests, t => t.Code, "tests", issues);
        Unique(document.Customers, c => c.Code, "customers", issues);
        Unique(document.People, p => p.Code, "people", issues);
        Unique(document.Products, p => p.Code, "products", issues);
        Unique(document.Instruments, i => i.Code, "instruments", issues);
        Unique(document.Lots, l => l.Code, "lots", issues);
        Unique(document.Rules, r => r.Code, "rules", issues, Key);
        Unique(document.Sites, s => s.Code, "sites", issues);
        Unique(document.Systems, s => s.Code, "systems", issues, Key);
    }

    /// <summary>Notes every later entry whose code stands already.</summary>
    internal static void Unique<T>(IReadOnlyList<T> items, Func<T, string> code, string list, IssueList issues, Func<T, string>? key = null, string field = "code")
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < items.Count; i++)
        {
            if (!seen.Add((key ?? code)(items[i])))
            {
                issues.Block($"{list}[{i}].{field}", "duplicate-code", CheckTexts.Twice, field, code(items[i]));
            }
        }
    }

    private static void Differences(ExchangeDocument document, FirmSetUp known, IssueList issues)
    {
        var old = ExchangeWriter.Canonical(known.Document);
        var added = document;
        Differ(old.Tests, added.Tests, t => t.Code, t => t.Code, "tests", issues);
        Differ(old.Customers, added.Customers, c => c.Code, c => c.Code, "customers", issues);
        Differ(old.People, added.People, p => p.Code, p => p.Code, "people", issues);
        Differ(old.Products, added.Products, p => p.Code, p => p.Code, "products", issues);
        Differ(old.Instruments, added.Instruments, i => i.Code, i => i.Code, "instruments", issues);
        Differ(old.Lots, added.Lots, l => l.Code, l => l.Code, "lots", issues);
        Differ(old.Rules, added.Rules, Key, r => r.Code, "rules", issues);
        Differ(old.Sites, added.Sites, s => s.Code, s => s.Code, "sites", issues);
        Differ(old.Systems, [.. added.Systems.Select(ExchangeWriter.Canonical)], Key, s => s.Code, "systems", issues);
    }

    private static void Differ<T>(IReadOnlyList<T> old, IReadOnlyList<T> added, Func<T, string> key, Func<T, string> code, string list, IssueList issues)
        where T : class
    {
        if (old.Count == 0 || added.Count == 0)
        {
            return;
        }

        var byKey = old.ToLookup(key, StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < added.Count; i++)
        {
            if (byKey[key(added[i])].LastOrDefault() is { } before && ExchangeWriter.CanonicalOf(before) != ExchangeWriter.CanonicalOf(added[i]))
            {
                issues.Block($"{list}[{i}]", SetUpDiffers, CheckTexts.Differs, code(added[i]));
            }
        }
    }

    private static void Visits(ExchangeDocument document, FirmSetUp firm, IssueList issues)
    {
        var seen = new HashSet<(Guid, int)>();
        for (var i = 0; i < document.Visits.Count; i++)
        {
            var visit = document.Visits[i];
            var path = $"visits[{i}]";
            if (!seen.Add((visit.Id, visit.Version ?? 1)))
            {
                issues.Block(path + ".id", "duplicate-visit", CheckTexts.VisitTwice, visit.Id, visit.Version ?? 1);
            }

            new VisitReferenceCheck(firm, issues).Check(visit, path + ".");
        }
    }
}
