using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Rescue;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Entry.Drafts;
using LogBook.Entry.Phrases;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Brings together what the visit form needs.</summary>
public sealed class VisitDesk(SetUpStore setUp, PhraseStore phrases, DraftStore drafts, RescuedDraftStore rescued, VisitReader visits, RoundQuery round, StandingActionsQuery standing, TimeProvider clock, ILogger<VisitDesk> logger)
{
    // A working day, as on a tablet: a visit that was left for longer is hardly the same one.
    private static readonly TimeSpan LongBegun = TimeSpan.FromHours(8);

    /// <summary>What the viewer has begun at a site and not finished. A draft that holds nothing is thrown away by this.</summary>
    /// <returns>Null when the viewer knows no such site or may not enter visits.</returns>
    public async Task<BegunVisits?> BegunAsync(Viewer viewer, string siteCode, CancellationToken cancellationToken = default)
    {
        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        if (!viewer.MayEnterVisits || Find(firm, siteCode) is not { } site)
        {
            return null;
        }

        // What another person entered on a tablet is gone on with only where it says so.
        var own = await drafts.ListAsync(viewer, cancellationToken);
        var foreign = own.Count == 0 || !viewer.MayReview ? new HashSet<Guid>() : await rescued.IdsAsync(viewer, cancellationToken);
        List<BegunVisit> begun = [];
        foreach (var kept in own.Where(kept => !foreign.Contains(kept.VisitId) && kept.Site.Equals(site.Code, StringComparison.OrdinalIgnoreCase)))
        {
            if (Read(kept) is not { Amended: null } draft)
            {
                continue;
            }

            if (draft.IsUntouched)
            {
                await drafts.DiscardAsync(viewer, kept.VisitId, "nothing is entered in it", cancellationToken);
            }
            else
            {
                begun.Add(new BegunVisit(draft, kept.UpdatedAt));
            }
        }

        var current = begun.Find(visit => clock.GetUtcNow().UtcDateTime - visit.KeptAt <= LongBegun);
        return new BegunVisits(firm, site, current?.Draft.Id, begun);
    }

    /// <summary>The form of a site: a draft that the viewer has begun there, or a new one.</summary>
    /// <param name="viewer">Who enters.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="begun">Identity of the draft to go on with; null for a new visit.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Null when the viewer knows no such site or may not enter visits.</returns>
    public async Task<VisitSheet?> OpenAsync(Viewer viewer, string siteCode, Guid? begun = null, CancellationToken cancellationToken = default)
    {
        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        if (!viewer.MayEnterVisits || Find(firm, siteCode) is not { } site)
        {
            return null;
        }

        return begun is { } id && await drafts.FindAsync(viewer, id, cancellationToken) is { } kept && Read(kept) is { } draft
            ? await SheetAsync(viewer, firm, site, draft, kept.Version, cancellationToken)
            : await SheetAsync(viewer, firm, site, VisitDraft.Start(site, viewer.PersonCode ?? viewer.Who, clock), 0, cancellationToken);
    }

    /// <summary>The form of a visit that is opened again, with the viewer's unfinished amendment of it if there is one.</summary>
    /// <returns>Null when the viewer knows no such visit or may not enter visits.</returns>
    public async Task<VisitSheet?> AmendAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits || await visits.FindAsync(viewer, visitId, cancellationToken: cancellationToken) is not { } stored)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken: cancellationToken);
        if (Find(firm, stored.Visit.Site) is not { } site)
        {
            return null;
        }

        // A draft that cannot be read is not overwritten either: the store refuses a new one in its place.
        if (await drafts.FindAsync(viewer, visitId, cancellationToken) is not { } kept || Read(kept) is not { } draft)
        {
            return await SheetAsync(viewer, firm, site, VisitDraft.Amend(stored.Visit, site), 0, cancellationToken);
        }

        // Begun on a version that has been replaced since, it would undo the newer one, and a fresh one would overwrite it: its person decides.
        var isOutdated = draft.Amended is not { } amended || (amended.Version ?? 1) != stored.Row.CurrentVersion;
        return (await SheetAsync(viewer, firm, site, draft, kept.Version, cancellationToken)) with { IsOutdated = isOutdated };
    }

    /// <summary>The form of a draft that came out of a tablet's rescue file and is the viewer's now.</summary>
    /// <returns>Null when the viewer has no such draft.</returns>
    public async Task<VisitSheet?> OpenRescuedAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview || await drafts.FindAsync(viewer, visitId, cancellationToken) is not { } kept || Read(kept) is not { } draft)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken: cancellationToken);
        return Find(firm, kept.Site) is { } site ? await SheetAsync(viewer, firm, site, draft, kept.Version, cancellationToken) : null;
    }

    private static Site? Find(FirmSetUp firm, string code) => firm.Sites.GetValueOrDefault(code);

    private async Task<VisitSheet> SheetAsync(Viewer viewer, FirmSetUp firm, Site site, VisitDraft draft, int version, CancellationToken cancellationToken)
    {
        var last = await round.LastVisitsAsync(viewer, site.Code, cancellationToken: cancellationToken);
        return new(firm, site, [.. last.Where(visit => visit.Id != draft.Id)], draft, version, new PhraseBook(await phrases.InUseAsync(viewer, cancellationToken)))
        {
            Standing = await standing.OfAsync(viewer, site.Code, cancellationToken),
        };
    }

    private VisitDraft? Read(Draft kept)
    {
        try
        {
            return VisitDraft.FromJson(kept.Document);
        }
        catch (JsonException exception)
        {
            // Left where it is: a later version may read it, and nobody's entries are thrown away.
            logger.LogError(exception, "The draft of visit {Visit} cannot be read", kept.VisitId);
            return null;
        }
    }
}
