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
    public async Task<ImportOutcome> MoveAsync(Viewer viewer, MoveInResult result, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (!MayMoveIn(viewer) || !result.MayMove)
        {
            return new ImportOutcome(false, 0, 0, 0, [new Issue("", MayMoveIn(viewer) ? "still-open" : "not-allowed", (MayMoveIn(viewer) ? MoveInTexts.StillOpen : MoveInTexts.NotAllowed).In(viewer.Language))]);
        }

        var document = new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version, Visits = [.. result.Visits.Select(made => made.Visit)] };
        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        return await import.ImportAsync(viewer, json, cancellationToken: cancellationToken);
    }
}
