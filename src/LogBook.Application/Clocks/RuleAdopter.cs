using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Application.Clocks;

/// <summary>Takes templates of rules and promises over into the firm's set-up. Each step is a record of its own, with its version and audit.</summary>
public sealed class RuleAdopter(SetUpStore setUp)
{
    /// <summary>Takes a template over from a day on and puts systems under it.</summary>
    /// <param name="viewer">Who does it; one who keeps the set-up.</param>
    /// <param name="template">The template.</param>
    /// <param name="from">First day in force.</param>
    /// <param name="checkedWith">Who checked it with the authority, and when.</param>
    /// <param name="systems">Systems to put under it: site and code.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> AdoptAsync(
        Viewer viewer, RuleTemplate template, DateOnly from, string checkedWith, IReadOnlyList<(string Site, string System)> systems, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (string.IsNullOrWhiteSpace(checkedWith))
        {
            return new SaveOutcome.Invalid([new Issue("checkedWith", "needed", AdoptTexts.CheckNeeded.In(viewer.Language))]);
        }

        if (!RuleAdoption.IsWithin(template, from))
        {
            var says = template.Rule.To is { } to ? new Said(AdoptTexts.OutsideFromTo, template.Rule.From, to) : new Said(AdoptTexts.OutsideFrom, template.Rule.From);
            return new SaveOutcome.Invalid([new Issue("from", "outside-its-dates", says.In(viewer.Language))]);
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        if (RuleAdoption.Of(template, from, checkedWith.Trim(), firm.Rules) is not { } adoption)
        {
            return new SaveOutcome.Invalid([new Issue("from", "not-backwards", AdoptTexts.NotBackwards.In(viewer.Language))]);
        }

        if (systems.Any(place => firm.System(place.Site, place.System) is null))
        {
            return new SaveOutcome.NotFound();
        }

        var saved = await setUp.SaveAsync(viewer, adoption.Rule, 0, cancellationToken);
        if (saved is SaveOutcome.Saved && adoption.Ended is { } ended && await setUp.FindAsync(viewer, SetUpKind.Rule, ended.Code, from: ended.From, cancellationToken: cancellationToken) is { } before)
        {
            saved = await setUp.SaveAsync(viewer, ended, before.Version, cancellationToken);
        }

        foreach (var (site, system) in systems)
        {
            var known = firm.System(site, system)!;
            if (saved is not SaveOutcome.Saved || known.Rules.Contains(adoption.Rule.Code, StringComparer.OrdinalIgnoreCase)
                || await setUp.FindAsync(viewer, SetUpKind.System, known.Code, known.Site, cancellationToken: cancellationToken) is not { } row)
            {
                continue;
            }

            saved = await setUp.SaveAsync(viewer, known with { Rules = [.. known.Rules, adoption.Rule.Code] }, row.Version, cancellationToken);
        }

        return saved;
    }

    /// <summary>Promises the summary of a visit at sites: within some hours, or by a day of the next month.</summary>
    /// <param name="viewer">Who does it; one who keeps the set-up.</param>
    /// <param name="withinHours">Hours from the end of the visit; null for none.</param>
    /// <param name="sites">Codes of the sites.</param>
    /// <param name="byMonthDay">Day of the month after the visit, 1 to 28; null for none. Without either the promise ends.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> PromiseAsync(Viewer viewer, double? withinHours, IReadOnlyList<string> sites, int? byMonthDay = null, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        SaveOutcome saved = new SaveOutcome.NotFound();
        foreach (var code in sites)
        {
            if (!firm.Sites.TryGetValue(code, out var site) || await setUp.FindAsync(viewer, SetUpKind.Site, site.Code, cancellationToken: cancellationToken) is not { } row)
            {
                return new SaveOutcome.NotFound();
            }

            saved = await setUp.SaveAsync(viewer, site with { SummaryWithinHours = withinHours, SummaryByMonthDay = byMonthDay }, row.Version, cancellationToken);
            if (saved is not SaveOutcome.Saved)
            {
                return saved;
            }
        }

        return saved;
    }
}
