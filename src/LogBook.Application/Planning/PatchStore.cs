using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>Hands the sites of one technician to another for good: the own technician of each changes in its set-up, all of them or none.</summary>
public sealed class PatchStore(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Who is proposed for a technician's sites: the technician with the fewest of their own. Only a proposal; a person decides.</summary>
    /// <param name="firm">The set-up that is in use.</param>
    /// <param name="from">Code of who has the sites; null for sites on nobody's round.</param>
    /// <returns>Null where no other technician is there.</returns>
    public static Person? ProposedFor(FirmSetUp firm, string? from)
    {
        ArgumentNullException.ThrowIfNull(firm);
        var held = firm.Sites.Values.CountBy(site => CodeKeys.Of(site.AssignedTo ?? "")).ToDictionary();
        return firm.People.Values.Where(person => person.Role == PersonRole.Technician && CodeKeys.Of(person.Code) != CodeKeys.Of(from ?? ""))
            .OrderBy(person => held.GetValueOrDefault(CodeKeys.Of(person.Code))).ThenBy(person => person.Name, StringComparer.CurrentCultureIgnoreCase)
            .FirstOrDefault();
    }

    /// <summary>All sites of a technician for the colleague who is proposed.</summary>
    /// <param name="firm">The set-up that is in use.</param>
    /// <param name="from">Code of who has the sites.</param>
    /// <returns>Null where that is nobody, where the sites could not come back, or where nobody can be proposed.</returns>
    public static PatchOffer? OfferOf(FirmSetUp firm, string? from)
    {
        ArgumentNullException.ThrowIfNull(firm);
        return from is not null && firm.People.GetValueOrDefault(from) is { } holder && PlanStore.Goes(holder) && ProposedFor(firm, from) is { } colleague
            ? new PatchOffer(
                holder.Code,
                holder.Name,
                colleague.Code,
                colleague.Name,
                [.. firm.Sites.Values.Where(site => CodeKeys.Of(site.AssignedTo ?? "") == CodeKeys.Of(from)).Select(site => site.Code).Order(StringComparer.OrdinalIgnoreCase)])
            : null;
    }

    /// <summary>Hands sites over.</summary>
    /// <param name="viewer">Who does it; one who keeps the set-up.</param>
    /// <param name="from">Code of who has them now, also somebody who has left; null for sites on nobody's round.</param>
    /// <param name="to">Code of who takes them over; null takes them off every round.</param>
    /// <param name="sites">Codes of the sites.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> HandOverAsync(Viewer viewer, string? from, string? to, IReadOnlyList<string> sites, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (sites.Count == 0)
        {
            return new SaveOutcome.Invalid([new Issue("sites", "needed", PlanTexts.NoSites.In(viewer.Language))]);
        }

        // Those who have left take nothing over.
        var taker = to is null ? null : (await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).People.GetValueOrDefault(to);
        if (to is not null && !PlanStore.Goes(taker))
        {
            return new SaveOutcome.Invalid([new Issue("to", "person-unknown", PlanTexts.PersonUnknown.In(viewer.Language, to))]);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var now = Utc.Now(clock);
                var firm = await SetUpStore.LoadForAsync(db, cancellationToken);

                // Somebody else was faster with one of them: then none moves.
                var moved = sites.FirstOrDefault(code => firm.Sites.GetValueOrDefault(code) is not { } site || CodeKeys.Of(site.AssignedTo ?? "") != CodeKeys.Of(from ?? ""));
                if (moved is not null)
                {
                    return new SaveOutcome.Invalid([new Issue("sites", "moved-meanwhile", PlanTexts.PatchMoved.In(viewer.Language, moved))]);
                }

                var writer = await SetUpWriter.LoadAsync(db, now, cancellationToken);
                foreach (var code in sites)
                {
                    await writer.PutAsync(SetUpRecord.Of(firm.Sites[code] with { AssignedTo = taker?.Code }), cancellationToken);
                }

                await SetUpWriter.StampAsync(db, now, cancellationToken);
                return new SaveOutcome.Saved(writer.Changes);
            },
            cancellationToken);
    }
}
