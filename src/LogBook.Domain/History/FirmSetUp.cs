using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.History;

/// <summary>A firm's set-up, looked up by code (case-insensitive). Immutable.</summary>
public sealed class FirmSetUp
{
    private readonly ILookup<string, WaterSystem> _systemsBySite;

    // Moments of the checks of each instrument in a standard, in order: every reading of a hand meter asks for the last one.
    private readonly Dictionary<string, DateTime[]> _checks;

    /// <summary>Takes the set-up of a document; its visits and findings are not looked at.</summary>
    /// <param name="document">Set-up with unique codes, as checked on reading; where a code stands twice the last one counts.</param>
    public FirmSetUp(ExchangeDocument document)
    {
        Document = document with { Visits = [], Findings = [] };
        Customers = ByCode(document.Customers, c => c.Code);
        People = ByCode(document.People, p => p.Code);
        Products = ByCode(document.Products, p => p.Code);
        Instruments = ByCode(document.Instruments, i => i.Code);
        Lots = ByCode(document.Lots, l => l.Code);
        Sites = ByCode(document.Sites, s => s.Code);
        Tests = ByCode(document.Tests, t => t.Code);
        ResidualTests = Products.Values.Select(product => product.Residual?.Test).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase);
        _checks = Instruments.ToDictionary(pair => pair.Key, pair => pair.Value.Checks.Select(check => check.At.Utc).Order().ToArray(), StringComparer.OrdinalIgnoreCase);
        _systemsBySite = document.Systems.ToLookup(s => s.Site, StringComparer.OrdinalIgnoreCase);
    }

    private FirmSetUp(FirmSetUp firm)
    {
        (Document, Customers, People, Products, Instruments) = (firm.Document, firm.Customers, firm.People, firm.Products, firm.Instruments);
        (Lots, Sites, Tests, ResidualTests, Engine, _checks, _systemsBySite) = (firm.Lots, firm.Sites, firm.Tests, firm.ResidualTests, firm.Engine, firm._checks, firm._systemsBySite);
    }

    /// <summary>An empty firm.</summary>
    public static FirmSetUp Empty { get; } = new(new ExchangeDocument { Format = "logbook-exchange", Version = 1 });

    /// <summary>The set-up as a document without visits and findings.</summary>
    public ExchangeDocument Document { get; }

    /// <summary>Customers by code.</summary>
    public IReadOnlyDictionary<string, Customer> Customers { get; }

    /// <summary>People by code.</summary>
    public IReadOnlyDictionary<string, Person> People { get; }

    /// <summary>Products by code.</summary>
    public IReadOnlyDictionary<string, Product> Products { get; }

    /// <summary>Instruments by code.</summary>
    public IReadOnlyDictionary<string, Instrument> Instruments { get; }

    /// <summary>Reagent lots by code.</summary>
    public IReadOnlyDictionary<string, ReagentLot> Lots { get; }

    /// <summary>Sites by code.</summary>
    public IReadOnlyDictionary<string, Site> Sites { get; }

    /// <summary>Tests that the firm adds, by code.</summary>
    public IReadOnlyDictionary<string, TestDefinition> Tests { get; }

    /// <summary>Tests by which products are followed.</summary>
    internal HashSet<string> ResidualTests { get; }

    /// <summary>Thresholds and default uncertainties of this installation.</summary>
    public EngineSettings Engine { get; init; } = EngineSettings.Default;

    /// <summary>All rules, every dated version.</summary>
    public IReadOnlyList<Rule> Rules => Document.Rules;

    /// <summary>Systems of a site.</summary>
    /// <param name="siteCode">Code of the site.</param>
    /// <returns>Its systems; empty for an unknown site.</returns>
    public IEnumerable<WaterSystem> SystemsOf(string siteCode) => _systemsBySite[siteCode];

    /// <summary>One system.</summary>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <returns>The system, or null.</returns>
    public WaterSystem? System(string siteCode, string systemCode) =>
        _systemsBySite[siteCode].FirstOrDefault(s => s.Code.Equals(systemCode, StringComparison.OrdinalIgnoreCase));

    /// <summary>The set-up as one system is judged by it: with the thresholds and uncertainties that the installation has set for that system.</summary>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <returns>This set-up, or a copy with the system's own <see cref="Engine"/>.</returns>
    public FirmSetUp For(string siteCode, string systemCode) =>
        Engine.For(siteCode, systemCode) is var own && ReferenceEquals(own, Engine) ? this : new FirmSetUp(this) { Engine = own };

    /// <summary>Last check of an instrument in a standard at or before a moment.</summary>
    /// <param name="instrument">Code of the instrument.</param>
    /// <param name="moment">UTC.</param>
    /// <returns>UTC; null for an unknown instrument or one without such a check.</returns>
    internal DateTime? LastCheck(string instrument, DateTime moment)
    {
        if (!_checks.TryGetValue(instrument, out var checks))
        {
            return null;
        }

        var last = checks.Length - 1;
        while (last >= 0 && checks[last] > moment)
        {
            last--;
        }

        return last >= 0 ? checks[last] : null;
    }

    private static Dictionary<string, T> ByCode<T>(IEnumerable<T> items, Func<T, string> code)
    {
        var byCode = new Dictionary<string, T>(StringComparer.OrdinalIgnoreCase);
        foreach (var item in items)
        {
            byCode[code(item)] = item;
        }

        return byCode;
    }
}
