using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Mail;
using LogBook.Application.Planning;
using LogBook.Application.RecordPacks;
using LogBook.Application.Reviews;
using LogBook.Application.Search;
using LogBook.Application.Shelf;
using LogBook.Application.Sites;
using LogBook.Application.TakeOver;
using LogBook.Application.Visits;
using LogBook.Domain.Findings;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

/// <summary>Readings of pages by name, over sites AAA-0, AAA-1 and so on with a visit, a finding and a message each.</summary>
internal static class ReaderPages
{
    /// <summary>The visit of the first site.</summary>
    public static Guid FirstVisit { get; } = new("0195a000-0000-7000-8000-000000000001");

    /// <summary>Pages of one site or visit, and what is found by search.</summary>
    public static IReadOnlyList<(string Page, Func<Task<object?>> Read)> OfOne(ReadingFirm firm)
    {
        var (viewer, setUp) = (ReadingFirm.Supervisor, new SetUpStore(firm.Store, firm.Clock));
        var packs = new RecordPackReader(firm.Store, setUp, firm.Clock);
        var day = DateOnly.FromDateTime(ReadingFirm.Start);
        return
        [
            ("site card", async () => await new SiteCardQuery(firm.Store, firm.Clock).OfAsync(viewer, "AAA-0")),
            ("visit", async () => await new VisitQuery(firm.Store).OfAsync(viewer, FirstVisit)),
            ("visits of a site", async () => Some((await new VisitsQuery(firm.Store).ListAsync(viewer, new VisitsFilter("AAA-0"))).Rows)),
            ("visits of a day", async () => Some((await new VisitsQuery(firm.Store).ListAsync(viewer, new VisitsFilter(From: day, To: day))).Rows)),
            ("record pack, what it would hold", async () => await packs.PreviewAsync(viewer, "AAA-0", null, null)),
            ("record pack", async () => await packs.ReadAsync(viewer, "AAA-0", day, day.AddYears(1))),
            ("search, words", async () => Some(await new SearchQuery(firm.Store).FindAsync(viewer, "AAA-0"))),
            ("search, day", async () => Some(await new SearchQuery(firm.Store).FindAsync(viewer, ReadingFirm.Start.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)))),
            ("sheet", async () => await new SheetQuery(firm.Store).OfAsync(viewer, "AAA-0", "CT-1")),
            ("site history", async () => await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(viewer, "AAA-0", "CT-1", day, day.AddDays(30))),
            ("take-over pack", async () => await new TakeOverQuery(firm.Store, new SiteCardQuery(firm.Store, firm.Clock), setUp, firm.Clock).OfAsync(viewer, "AAA-0")),
        ];
    }

    /// <summary>Lists over all sites.</summary>
    public static IReadOnlyList<(string Page, Func<Task<object?>> Read)> Lists(ReadingFirm firm)
    {
        var (viewer, setUp, sites) = (ReadingFirm.Supervisor, new SetUpStore(firm.Store, firm.Clock), new SitesQuery(firm.Store, firm.Clock));
        return
        [
            ("visits", async () => Some((await new VisitsQuery(firm.Store).ListAsync(viewer, new VisitsFilter())).Rows)),
            ("mail", async () => Some((await new MailQuery(firm.Store).ListAsync(viewer, false, 1))!.Messages)),
            ("sites", async () => Some(await sites.ListAsync(viewer))),
            ("round", async () => await new TodaysRoundQuery(firm.Store, sites, firm.Clock).OfAsync(ReadingFirm.Technician)),
            ("plan", async () => await new PlanQuery(firm.Store, sites, setUp, firm.Clock).OfAsync(viewer, null, 7)),
            ("attention", async () => Some((await new AttentionQuery(firm.Store, firm.Clock).ListAsync(viewer, new AttentionFilter()))!.Rows)),
            ("clocks", async () => await new ClocksQuery(firm.Store, setUp, sites, firm.Clock).ListAsync(viewer, new ClocksFilter())),
            ("shelf", async () => await new ShelfQuery(firm.Store, setUp, sites, firm.Clock).ListAsync(viewer, new ShelfFilter())),
        ];
    }

    /// <summary>One more site with its visit, its finding and its message.</summary>
    public static async Task AddSiteAsync(ReadingFirm firm, int number)
    {
        var code = $"AAA-{number}";
        var at = await firm.AddSiteAsync(code);
        var row = await firm.AddVisitAsync(at, ReadingFirm.VisitOf(code, ReadingFirm.Start, 1350, id: number == 0 ? FirstVisit : null));
        await firm.AddFindingAsync(at, FindingKinds.SettingsLost, Severity.Act, DateOnly.FromDateTime(ReadingFirm.Start));
        await firm.AddAsync(new OutboxRow
        {
            CustomerId = at.Customer, VisitRowId = row, VisitVersion = 1, Kind = OutboxKinds.VisitSummary, MessageId = $"{code}@quernwath.example", Recipient = "estates@yaffleford.example", RecipientName = "Estates office",
            CreatedAt = ReadingFirm.Start, DueAt = ReadingFirm.Start, About = code,
        });
    }

    // A page without anything on it would take few statements for the wrong reason.
    private static object? Some<T>(IReadOnlyList<T> rows) => rows.Count > 0 ? rows : null;
}
