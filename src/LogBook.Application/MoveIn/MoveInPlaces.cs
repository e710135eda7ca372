using LogBook.Domain.Sites;

namespace LogBook.Application.MoveIn;

/// <summary>Sites, systems and people by what a sheet calls them: code or name, without case and accents.</summary>
internal sealed class MoveInPlaces
{
    private readonly MoveInSource _source;
    private readonly Dictionary<string, string> _sites;
    private readonly Dictionary<string, string> _people;

    public MoveInPlaces(MoveInSource source)
    {
        _source = source;
        _sites = Unique(source.Firm.Document.Sites.Select(site => (site.Code, site.Name)));
        _people = Unique(source.Firm.Document.People.Select(person => (person.Code, person.Name)));
    }

    public string? Site(string text) => _sites.GetValueOrDefault(Headings.KeyOf(text));

    public string? Person(string text) => _people.GetValueOrDefault(Headings.KeyOf(text));

    public string? SiteOfSheet(string sheet) =>
        _source.Mapping.Sites.GetValueOrDefault(sheet) is { Length: > 0 } said ? said
        : Site(sheet) ?? (_source.Mapping.Sites.GetValueOrDefault("") is { Length: > 0 } rest ? rest : _source.Firm.Document.Sites is [var only] ? only.Code : null);

    public string? System(string site, string? text)
    {
        var systems = _source.Firm.SystemsOf(site).ToList();
        if (string.IsNullOrWhiteSpace(text))
        {
            return systems is [var only] ? only.Code : null;
        }

        var key = Headings.KeyOf(text);
        return Unique(systems.Select(system => (system.Code, system.Name))).GetValueOrDefault(key);
    }

    /// <summary>Sites that the file may be about: those of its sheets, or all where a column tells.</summary>
    public IEnumerable<string> Candidates(IEnumerable<MoveInBlock> blocks)
    {
        var named = blocks.Select(block => SiteOfSheet(block.Sheet.Name)).ToList();
        return named.Count > 0 && named.TrueForAll(site => site is not null) ? named.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase) : _source.Firm.Document.Sites.Select(site => site.Code);
    }

    public IEnumerable<WaterSystem> SystemsOf(string site) => _source.Firm.SystemsOf(site);

    // What two of them are called resolves to neither: a person says which one is meant.
    private static Dictionary<string, string> Unique(IEnumerable<(string Code, string Name)> known) =>
        known.SelectMany(one => new[] { (Key: Headings.KeyOf(one.Code), one.Code), (Key: Headings.KeyOf(one.Name), one.Code) }).Distinct()
            .GroupBy(one => one.Key, StringComparer.Ordinal).Where(group => group.Count() == 1).ToDictionary(group => group.Key, group => group.Single().Code, StringComparer.Ordinal);
}
