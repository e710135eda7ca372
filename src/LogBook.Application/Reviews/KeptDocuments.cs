using LogBook.Domain.Visits;

namespace LogBook.Application.Reviews;

/// <summary>Documents of visits that have been read already, by the hash of their text, so that the same document stays the same object.</summary>
/// <remarks>The visits of a few sites, those longest not asked for go first; the bound is that of the assessments that live on them.</remarks>
/// <param name="mostVisits">Versions kept at most, over all sites.</param>
internal sealed class KeptDocuments(int mostVisits = Domain.Assessments.AssessmentMemo.DefaultVisits)
{
    private readonly Lock _lock = new();
    private readonly List<(int Site, IReadOnlyDictionary<string, Visit> Visits)> _kept = [];

    /// <summary>What tells one document at one site from every other: a visit that was moved reads otherwise at its new place.</summary>
    /// <param name="sha256">Hash of the canonical text.</param>
    /// <param name="movedTo">Code of the site to which it was moved, or null.</param>
    public static string KeyOf(string sha256, string? movedTo) => movedTo is null ? sha256 : sha256 + "/" + movedTo;

    /// <summary>What is kept of a site.</summary>
    public IReadOnlyDictionary<string, Visit> Of(int site)
    {
        lock (_lock)
        {
            return _kept.Find(one => one.Site == site).Visits ?? new Dictionary<string, Visit>();
        }
    }

    /// <summary>Keeps all that counts at a site, in place of what was kept of it.</summary>
    public void Keep(int site, IReadOnlyDictionary<string, Visit> visits)
    {
        lock (_lock)
        {
            _kept.RemoveAll(one => one.Site == site);
            _kept.Add((site, visits));
            var left = _kept.Sum(one => one.Visits.Count);
            while (left > mostVisits)
            {
                left -= _kept[0].Visits.Count;
                _kept.RemoveAt(0);
            }
        }
    }
}
