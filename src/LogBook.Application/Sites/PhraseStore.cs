using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Domain.Phrases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Sites;

/// <summary>The firm's own quick phrases for the visit form: one set-up record, with its versions and in the audit trail.</summary>
public sealed class PhraseStore(LogBookStore store)
{
    private const string Code = "phrases";

    /// <summary>What the form of a viewer offers beside its built-in phrases; none for whoever is not of the firm.</summary>
    public async Task<QuickPhrases> InUseAsync(Viewer viewer, CancellationToken cancellationToken = default) =>
        viewer.IsOfFirm ? (await ReadAsync(viewer, cancellationToken)).Phrases : QuickPhrases.None;

    /// <summary>The phrases for who keeps them; null for others.</summary>
    public async Task<PhraseEntry?> FindAsync(Viewer viewer, CancellationToken cancellationToken = default) =>
        viewer.MayKeepSetUp ? await ReadAsync(viewer, cancellationToken) : null;

    /// <summary>Puts phrases in the place of those that stand.</summary>
    /// <param name="viewer">Who saves; a supervisor or an administrator.</param>
    /// <param name="wanted">All phrases of the firm.</param>
    /// <param name="expectedVersion">Version that was read.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, QuickPhrases wanted, int expectedVersion, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (wanted.Check(viewer.Language) is { Count: > 0 } issues)
        {
            return new SaveOutcome.Invalid(issues);
        }

        var document = wanted.Write();
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(Code);
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(kept => kept.Kind == SetUpKind.Phrases && kept.CodeKey == key, cancellationToken);
                if ((row?.Version ?? 0) != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row?.Document ?? "{}", row?.Version ?? 0);
                }

                if (row?.Document == document)
                {
                    return new SaveOutcome.Saved(row.Version);
                }

                var before = row?.Document;
                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.Phrases, Code = Code, CodeKey = key, Name = "Quick phrases" };
                    db.SetUp.Add(row);
                }

                row.Document = document;
                db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, "Phrases", Code, Old: before, New: document));
                await db.SaveChangesAsync(cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    private async Task<PhraseEntry> ReadAsync(Viewer viewer, CancellationToken cancellationToken)
    {
        var kept = await store.ReadAsync(
            viewer,
            db => db.SetUp.Where(row => row.Kind == SetUpKind.Phrases && row.RetiredAt == null).OrderBy(row => row.Id).Select(row => new { row.Document, row.Version }).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);
        return kept is null ? new PhraseEntry(QuickPhrases.None, 0) : new PhraseEntry(QuickPhrases.Read(kept.Document), kept.Version);
    }
}
