using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;

namespace LogBook.Web.Features.SetUp;

/// <summary>Saves what the set-up forms made.</summary>
public sealed class SetUpDesk(SetUpStore store)
{
    /// <summary>Saves a record.</summary>
    /// <param name="viewer">Who saves.</param>
    /// <param name="list">Kind of record.</param>
    /// <param name="record">The record as the form made it.</param>
    /// <param name="version">Version that was read; 0 for a new record.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>The outcome; paths of issues are within the record, in the order of the form.</returns>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, SetUpList list, JsonObject record, int version, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        // Checked here first: the store sorts the parts of a system, and then its paths would no longer be those of the form.
        var known = await store.FirmAsync(viewer, withRetired: true, cancellationToken);
        var document = new JsonObject
        {
            ["format"] = ExchangeReader.Format,
            ["version"] = ExchangeReader.Version,
            [list.Member] = new JsonArray(record.DeepClone()),
        };
        var read = ExchangeReader.ReadAndCheck(document.ToJsonString(), known, viewer.Language, mayUpdate: true);
        if (read.Document is not { } good)
        {
            return new SaveOutcome.Invalid([.. read.Issues.Select(issue => issue with { Path = Within(issue.Path) })]);
        }

        return await store.SaveAsync(viewer, RecordOf(list.Kind, good), version, cancellationToken);
    }

    /// <summary>The first record of a kind in a document.</summary>
    private static object RecordOf(SetUpKind kind, ExchangeDocument document) => kind switch
    {
        SetUpKind.Customer => document.Customers[0],
        SetUpKind.Site => document.Sites[0],
        SetUpKind.System => document.Systems[0],
        SetUpKind.Person => document.People[0],
        SetUpKind.Product => document.Products[0],
        SetUpKind.Instrument => document.Instruments[0],
        SetUpKind.Lot => document.Lots[0],
        SetUpKind.Rule => document.Rules[0],
        SetUpKind.Test => document.Tests[0],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No set-up."),
    };

    // "sites[0].timeZone" is "timeZone" to whoever edits one site.
    private static string Within(string path) => path.IndexOf('.', StringComparison.Ordinal) is >= 0 and var dot ? path[(dot + 1)..] : "";
}
