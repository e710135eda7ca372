using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using LogBook.Domain.Exchange.Shapes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Exchange;

/// <summary>Writes documents and their pieces in the canonical form: RFC 8785, absent instead of null, empty lists absent.</summary>
public static class ExchangeWriter
{
    private static readonly StringComparer Codes = StringComparer.OrdinalIgnoreCase;

    /// <summary>The canonical export of a document.</summary>
    /// <param name="document">Any document.</param>
    /// <returns>Canonical text: set-up sorted by code and first day, visits by arrival, then id and version; what is inside a visit in the order entered.</returns>
    public static string Write(ExchangeDocument document) => Text(Canonical(document), ExchangeJson.Default.ExchangeDocument);

    /// <summary>The same document in canonical order.</summary>
    /// <param name="document">Any document.</param>
    /// <returns>A document that says the same.</returns>
    /// <remarks>
    /// Parts of a system and its programmes are sorted too, because their order says nothing. Feeds, ranges, contacts,
    /// weeks and all that is inside a visit stay as entered.
    /// </remarks>
    public static ExchangeDocument Canonical(ExchangeDocument document) => document with
    {
        Minor = LeastMinor(document) is { } needed ? Math.Max(needed, document.Minor ?? 0) : document.Minor,
        Tests = Sorted(document.Tests, t => t.Code),
        Customers = Sorted(document.Customers, c => c.Code),
        People = Sorted(document.People, p => p.Code),
        Products = Sorted(document.Products, p => p.Code),
        Instruments = Sorted(document.Instruments, i => i.Code),
        Lots = Sorted(document.Lots, l => l.Code),
        Rules = Sorted(document.Rules, r => r.Code, r => r.From),
        Sites = Sorted(document.Sites, s => s.Code),
        Systems =
        [
            .. document.Systems.OrderBy(s => s.Site, Codes).ThenBy(s => s.Code, Codes).Select(Canonical),
        ],
        Visits = [.. document.Visits.OrderBy(v => v.Arrived.Utc).ThenBy(v => v.Id.ToString("D"), StringComparer.Ordinal).ThenBy(v => v.Version ?? 1)],
        Findings =
        [
            .. document.Findings.OrderBy(f => f.Site, Codes).ThenBy(f => f.System, Codes).ThenBy(f => f.FirstSeen)
                .ThenBy(f => f.Kind, StringComparer.Ordinal).ThenBy(f => CanonicalOf(f), StringComparer.Ordinal),
        ],
    };

    /// <summary>A system with its parts and programmes in canonical order.</summary>
    internal static WaterSystem Canonical(WaterSystem system) => system with
    {
        Probes = Sorted(system.Probes, p => p.Code, p => p.From),
        Outputs = Sorted(system.Outputs, o => o.Code),
        Meters = Sorted(system.Meters, m => m.Code, m => m.From),
        Drums = Sorted(system.Drums, d => d.Code, d => d.From),
        Pumps = Sorted(system.Pumps, p => p.Code, p => p.From),
        Programmes = [.. system.Programmes.OrderBy(p => p.From)],
    };

    // An older program refuses such a document as newer than itself, and not as one with misspelt fields.
    private static bool UsesAdditions(ExchangeDocument document) =>
        document.Rules.Any(rule => rule.Bands.Any(band => band.NotifyWithinHours is not null || band.EveryDays is not null))
        || document.Visits.Any(visit => visit.Systems.Any(UsesAdditions));

    private static bool UsesAdditions(VisitedSystem system) =>
        system.Meters.Any(meter => (meter.FirstDial ?? meter.FirstTotal) is not null)
        || system.Drums.Any(drum => drum.FirstLevel is not null)
        || system.HoursRun.Any(hours => hours.FirstHours is not null);

    private static bool UsesSecondAdditions(ExchangeDocument document) =>
        document.Rules.Any(rule => rule.KeepYears is not null)
        || document.Sites.Any(site => site.SummaryByMonthDay is not null)
        || document.Systems.Any(system => (system.DischargeUsPerCm, system.DischargeSource) is not (null, null));

    private static int? LeastMinor(ExchangeDocument document) => UsesSecondAdditions(document) ? 2 : UsesAdditions(document) ? 1 : null;

    /// <summary>Canonical text of one piece of a document.</summary>
    /// <typeparam name="T">A type of the document: customer, person, site, system, product, instrument, lot, rule, test, visit or finding.</typeparam>
    /// <param name="record">The piece; the order of its lists is kept.</param>
    /// <returns>Canonical text.</returns>
    public static string CanonicalOf<T>(T record)
        where T : class => Text(record, TypeInfo<T>());

    /// <summary>How a type of the document becomes JSON.</summary>
    internal static JsonTypeInfo<T> TypeInfo<T>()
        where T : class => ExchangeJson.Default.GetTypeInfo(typeof(T)) as JsonTypeInfo<T>
            ?? throw new ArgumentException($"{typeof(T).Name} is no piece of an exchange document.");

    private static string Text<T>(T value, JsonTypeInfo<T> type) => CanonicalJson.WithoutEmpty(JsonSerializer.SerializeToElement(value, type));

    private static IReadOnlyList<T> Sorted<T>(IReadOnlyList<T> items, Func<T, string> code, Func<T, DateOnly?>? from = null) =>
        from is null ? [.. items.OrderBy(code, Codes)] : [.. items.OrderBy(code, Codes).ThenBy(from)];

}
