using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Outcomes;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.MoveIn;

/// <summary>Mappings that a firm keeps: how its own layouts are read.</summary>
public sealed class MappingStore(LogBookStore store)
{
    private const string Entity = "SheetMapping";

    /// <summary>All of them by name; none for whoever may not move records in.</summary>
    public async Task<IReadOnlyList<MoveInMapping>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default) => !viewer.MayKeepSetUp
        ? []
        : await store.ReadAsync(
            viewer,
            async db => (await db.SetUp.Where(row => row.Kind == SetUpKind.SheetMapping && row.RetiredAt == null).OrderBy(row => row.CodeKey).Select(row => row.Document).ToListAsync(cancellationToken)).ConvertAll(document => MoveInMapping.Read(document).Layout()),
            cancellationToken);

    /// <summary>Keeps the layout of a mapping under its name; one of that name is replaced.</summary>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, MoveInMapping mapping, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        var name = mapping.Name.Trim();
        if (name.Length is 0 or > 100)
        {
            return new SaveOutcome.Invalid([new Issue("name", "name-needed", MoveInTexts.NameNeeded.In(viewer.Language))]);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(name);
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(known => known.Kind == SetUpKind.SheetMapping && known.CodeKey == key, cancellationToken);
                var (before, document) = (row?.Document, (mapping.Layout() with { Name = name }).Write());
                if (before == document)
                {
                    return new SaveOutcome.Saved(row!.Version);
                }

                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.SheetMapping, Code = name, CodeKey = key, Name = name };
                    db.SetUp.Add(row);
                }

                (row.Document, row.RetiredAt) = (document, null);
                db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, Entity, name, Old: before, New: document));
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    /// <summary>The kept mapping that knows most of a file's headings; null where none knows half of them.</summary>
    public static MoveInMapping? Best(IEnumerable<MoveInMapping> mappings, IReadOnlyList<MoveInSheet> sheets)
    {
        var keys = sheets.SelectMany(MoveInBlocks.Of).SelectMany(block => block.Headings).Where(heading => heading.Length > 0).Select(Headings.KeyOf).Distinct(StringComparer.Ordinal).ToList();
        return mappings.Select(mapping => (Mapping: mapping, Known: keys.Count(mapping.Columns.ContainsKey))).Where(pair => pair.Known * 2 >= keys.Count && pair.Known > 0).OrderByDescending(pair => pair.Known).Select(pair => pair.Mapping).FirstOrDefault();
    }
}
