using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;

namespace LogBook.Application.Demo;

/// <summary>A finding while it was "plan" or "act".</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Site">Site; that of the visit which showed it first for one about an instrument, a lot or a person; null when no visit did.</param>
/// <param name="About">Subject in words; empty when it is the system.</param>
/// <param name="From">First day as a headline.</param>
/// <param name="Until">First day on which it was none any more; the day after the last one when it still is.</param>
/// <param name="Worst">Highest severity in that time.</param>
/// <param name="IsNew">False when it was a headline of the same finding before, and became one again.</param>
public sealed record Headline(string Kind, string? Site, string About, DateOnly From, DateOnly Until, Severity Worst, bool IsNew);

/// <summary>Runs the engine over a firm's document and lists what was a headline, and when.</summary>
internal static class Headlines
{
    public static IReadOnlyList<Headline> Of(ExchangeDocument document, DateOnly lastDay)
    {
        var firm = new FirmSetUp(document);
        var asOf = lastDay.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc).AddMilliseconds(-1);
        var bySite = document.Visits.ToLookup(v => v.Site, StringComparer.OrdinalIgnoreCase);
        var siteOfVisit = document.Visits.ToDictionary(v => v.Id, v => v.Site);
        var all = RoundAssessment.Of([.. document.Systems.Select(system => SystemHistory.From(firm, system.Site, system.Code, bySite[system.Site]))], asOf);
        return
        [
            .. all.Systems.SelectMany(system => system.Findings).Concat(all.Round.Findings)
                .SelectMany(f => Spells(f, f.InEnglish.Site ?? (f.InEnglish.FirstVisit is { } id ? siteOfVisit.GetValueOrDefault(id) : null), lastDay))
                .OrderBy(h => h.From).ThenBy(h => h.Site, StringComparer.Ordinal).ThenBy(h => h.Kind, StringComparer.Ordinal).ThenBy(h => h.About, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Headline> Spells(AssessedFinding finding, string? site, DateOnly lastDay)
    {
        var isNew = true;
        for (var i = 0; i < finding.Course.Count; i++)
        {
            var (from, worst) = finding.Course[i];
            if (worst < Severity.Plan)
            {
                continue;
            }

            for (; i + 1 < finding.Course.Count && finding.Course[i + 1].Severity >= Severity.Plan; i++)
            {
                worst = finding.Course[i + 1].Severity > worst ? finding.Course[i + 1].Severity : worst;
            }

            var until = i + 1 < finding.Course.Count ? finding.Course[i + 1].On : finding.InEnglish.ClosedOn ?? lastDay.AddDays(1);
            yield return new Headline(finding.InEnglish.Kind, site, Words(finding.InEnglish.About), from, until, worst, isNew);
            isNew = false;
        }
    }

    private static string Words(About? about) => about is null
        ? ""
        : string.Join(' ', new[] { about.Probe, about.Drum, about.Output, about.Meter, about.Pump, about.Test, about.Instrument, about.Lot, about.Person, about.Rule }.OfType<string>());
}
