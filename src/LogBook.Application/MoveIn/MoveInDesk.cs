using System.Globalization;
using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;

namespace LogBook.Application.MoveIn;

/// <summary>Works a file out against the set-up, and hands its visits to the intake.</summary>
public sealed class MoveInDesk(SetUpStore setUp, ExchangeImport import)
{
    /// <summary>Whether somebody may move records in.</summary>
    public static bool MayMoveIn(Viewer viewer) => viewer.MayKeepSetUp;

    /// <summary>What the file would become; null for whoever may not move records in.</summary>
    public async Task<MoveInResult?> WorkOutAsync(
        Viewer viewer, string fileName, IReadOnlyList<MoveInSheet> sheets, MoveInMapping mapping, IReadOnlyDictionary<string, string> answers, CancellationToken cancellationToken = default)
    {
        if (!MayMoveIn(viewer))
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken: cancellationToken);
        return await Task.Run(() => MoveInWork.Of(new MoveInSource(fileName, sheets, mapping, answers, firm, viewer.Language)), cancellationToken);
    }

    /// <summary>
    /// Hands the visits in, in order of event, as a replay: no summaries are mailed. All or nothing; a file that came before adds nothing.
    /// </summary>
    /// <param name="viewer">Who moves them in.</param>
    /// <param name="result">What the file became.</param>
    /// <param name="keepStored">Leaves visits that are stored with other content as they are stored, and moves the others in.</param>
    /// <param name="cancellationToken">Stops; nothing is written then.</param>
    /// <returns>What became of it; the path of an issue names sheet and cell.</returns>
    public async Task<ImportOutcome> MoveAsync(Viewer viewer, MoveInResult result, bool keepStored = false, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (!MayMoveIn(viewer) || !result.MayMove)
        {
            return new ImportOutcome(false, 0, 0, 0, [new Issue("", MayMoveIn(viewer) ? "still-open" : "not-allowed", (MayMoveIn(viewer) ? MoveInTexts.StillOpen : MoveInTexts.NotAllowed).In(viewer.Language))]);
        }

        var document = new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version, Visits = [.. result.Visits.Select(made => made.Visit)] };
        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        var outcome = await import.ImportAsync(viewer, json, partial: keepStored, cancellationToken: cancellationToken);
        return outcome with { Issues = [.. outcome.Issues.Select(issue => issue with { Path = PlaceOf(issue.Path, result.Visits) })] };
    }

    /// <summary>Whether all that was refused is stored already, with other content: the others can move in without them.</summary>
    public static bool AreAllStored(IReadOnlyList<Issue> issues) => issues.Count > 0 && issues.All(issue => issue.Code == ExchangeImport.Conflict);

    // "visits[3].systems[0]…" says nothing to whoever holds the file: sheet and cell do.
    private static string PlaceOf(string path, IReadOnlyList<MoveInVisit> visits)
    {
        const string Start = "visits[";
        var end = path.IndexOf(']', StringComparison.Ordinal);
        if (!path.StartsWith(Start, StringComparison.Ordinal) || !int.TryParse(path.AsSpan(Start.Length, end - Start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var at) || at >= visits.Count || visits[at].Cells.Count == 0)
        {
            return path;
        }

        var cell = visits[at].CellOf(path[(end + 1)..].TrimStart('.')).At;
        return $"{cell.Sheet} {cell.Address}";
    }
}
