using LogBook.Domain.Sites;

namespace LogBook.Application.MoveIn;

/// <summary>Sites, systems and people by what a sheet calls them: code or name, without case and accents.</summary>
internal sealed class MoveInPlaces
{
    private readonly MoveInSource _source;
    private readonly Dictionary<string, string> _sites = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _people = new(StringComparer.Ordinal);

    public MoveInPlaces(MoveInSource source)
    {
        _source = source;
        foreach (var site in source.Firm.Document.Sites)
        {
            _sites[Headings.KeyOf(site.Name)] = site.Code;
            _sites[Headings.KeyOf(site.Code)] = site.Code;
        }

        foreach (var person in source.Firm.Document.People)
        {
            _people[Headings.KeyOf(person.Name)] = person.Code;
            _people[Headings.KeyOf(person.Code)] = person.Code;
        }
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
        return systems.Find(system => Headings.KeyOf(system.Code) == key || Headings.KeyOf(system.Name) == key)?.Code;
    }

    /// <summary>Sites that the file may be about: those of its sheets, or all where a column tells.</summary>
    public IEnumerable<string> Candidates(IEnumerable<MoveInBlock> blocks)
    {
        var named = blocks.Select(block => SiteOfSheet(block.Sheet.Name)).ToList();
        return named.Count > 0 && named.TrueForAll(site => site is not null) ? named.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase) : _source.Firm.Document.Sites.Select(site => site.Code);
    }

    public IEnumerable<WaterSystem> SystemsOf(string site) => _source.Firm.SystemsOf(site);
}
