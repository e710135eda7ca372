using LogBook.Domain.Sites;

namespace LogBook.Application.MoveIn;

/// <summary>
/// Works out what a file would become. Pure: the same source gives the same visits with the same identities, so a file that comes twice adds
/// nothing. Nothing is guessed in silence: what could be two things is a question, what cannot stand is one too.
/// </summary>
public static class MoveInWork
{
    private const int Examples = 4;

    /// <summary>Works it out.</summary>
    public static MoveInResult Of(MoveInSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var skipped = new List<MoveInSkip>();
        var blocks = new List<MoveInBlock>();
        foreach (var sheet in source.Sheets)
        {
            var found = MoveInBlocks.Of(sheet);
            blocks.AddRange(found);
            if (found.Count == 0 && sheet.Rows.Any(row => row.Any(cell => !cell.IsEmpty)))
            {
                skipped.Add(new MoveInSkip(sheet.Name, 0, MoveInTexts.NoHeading.In(source.Language)));
            }
        }

        var places = new MoveInPlaces(source);
        var columns = Columns(source, blocks, places);
        var meanings = columns.ToDictionary(column => column.Key, column => column.Meaning, StringComparer.Ordinal);
        var withoutPlace = blocks.Where(block => !Holds(block, meanings, ColumnKind.Site) && places.SiteOfSheet(block.Sheet.Name) is null).Select(block => block.Sheet.Name).Distinct().ToList();
        var needsTechnician = source.Mapping.Technician is null && blocks.Exists(block => !Holds(block, meanings, ColumnKind.Technician));
        if (withoutPlace.Count > 0 || columns.Exists(column => column.Missing is not null))
        {
            // Rows are looked at when it is known what their columns are: a question asked too early would be asked in vain.
            return new MoveInResult(columns, [], skipped, [], withoutPlace, needsTechnician, 0);
        }

        var open = new MoveInOpen(source);
        var rows = new MoveInRows(source, meanings, places, open, skipped);
        var made = blocks.SelectMany(rows.Of).ToList();
        var visits = new MoveInMaker(source, open, skipped).Visits(made);
        return new MoveInResult(columns, open.Questions, skipped, visits, withoutPlace, needsTechnician, visits.Sum(visit => visit.Cells.Count));
    }

    private static bool Holds(MoveInBlock block, Dictionary<string, ColumnMeaning> meanings, ColumnKind kind) =>
        block.Headings.Any(heading => heading.Length > 0 && meanings[Headings.KeyOf(heading)].Kind == kind);

    private static List<MoveInColumn> Columns(MoveInSource source, List<MoveInBlock> blocks, MoveInPlaces places)
    {
        IReadOnlyList<WaterSystem> systems = [.. places.Candidates(blocks).SelectMany(site => source.Firm.SystemsOf(site))];
        return
        [
            .. blocks.SelectMany(block => block.Headings.Select((heading, column) => (Block: block, Heading: heading, Column: column)).Where(entry => entry.Heading.Length > 0))
                .GroupBy(entry => Headings.KeyOf(entry.Heading), StringComparer.Ordinal)
                .Select(group =>
                {
                    var heading = group.First().Heading;
                    var isSaid = source.Mapping.Columns.TryGetValue(group.Key, out var said);
                    var meaning = said ?? HeadingGuess.Of(heading, systems, code => source.Firm.Products.GetValueOrDefault(code));
                    var examples = group.SelectMany(entry => Enumerable.Range(entry.Block.FirstRow, Math.Max(0, entry.Block.LastRow - entry.Block.FirstRow + 1)).Select(row => entry.Block.Sheet.At(row, entry.Column).Text))
                        .Where(text => text.Length > 0).Distinct(StringComparer.Ordinal).Take(Examples).ToList();
                    var where = string.Join(", ", group.Select(entry => $"{entry.Block.Sheet.Name} {MoveInSheet.Letters(entry.Column)}").Distinct(StringComparer.Ordinal));
                    return new MoveInColumn(group.Key, heading, where, examples, meaning, isSaid, Missing(meaning)?.In(source.Language), UnitWords.InHeading(heading));
                }),
        ];
    }

    private static Domain.Languages.Text? Missing(ColumnMeaning meaning) => meaning.Kind switch
    {
        ColumnKind.Unknown => MoveInTexts.SayKind,
        ColumnKind.Test or ColumnKind.DrumLevel or ColumnKind.DrumAdded or ColumnKind.Dial or ColumnKind.Total or ColumnKind.Hours when string.IsNullOrEmpty(meaning.Code) => MoveInTexts.SayCode,
        ColumnKind.Test when string.IsNullOrEmpty(meaning.At) => MoveInTexts.SayPoint,
        ColumnKind.Test or ColumnKind.DrumLevel or ColumnKind.DrumAdded or ColumnKind.Dial or ColumnKind.Total when string.IsNullOrEmpty(meaning.Unit) => MoveInTexts.SayUnit,
        _ => null,
    };
}
