using LogBook.Application.Data;
using LogBook.Application.Visits.Review;
using LogBook.Domain.Findings;
using LogBook.Domain.Reviews;
using LogBook.Testing.Readers;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Readers;

public sealed class ReviewQueryTests
{
    private static readonly DateTime Now = ReadingFirm.Start.AddDays(400);

    [Fact]
    public async Task ListAsync_WaitingVisits_OldestFirstWithTheirMarks()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var first = ReadingFirm.VisitOf("YAF-1", Now.AddDays(-20), 1350);
        var second = ReadingFirm.VisitOf("YAF-1", Now.AddDays(-10), 1360) with { Notes = "Left open (bleed) because: no key" };
        await firm.AddVisitAsync(site, second);
        await firm.AddVisitAsync(site, first);
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", Now.AddDays(-90), 1340));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", Now.AddDays(-5), 1340), isVoid: true);
        await firm.AddFindingAsync(site, FindingKinds.SecondLook, Severity.Plan, DateOnly.FromDateTime(Now), second.Id);

        var list = await Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter());

        Assert.Equal([first.Id, second.Id], list!.Rows.Select(row => row.Visit.Id));
        Assert.Equal((2, 1), (list.Total, list.Older));
        Assert.True(list.Rows[1] is { HasSecondLook: true, IsMarked: true, Note: "Left open (bleed) because: no key", Findings.Plan: 1 });
        Assert.Equal(3, (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter(WithOlder: true)))!.Total);
        Assert.Null(await Query(firm).ListAsync(ReadingFirm.Technician, new ReviewFilter()));
        Assert.Null(await Query(firm).ListAsync(ReadingFirm.CustomerOf(site.Customer), new ReviewFilter()));
    }

    [Fact]
    public async Task SignOff_LeavesTheList_AndCountsInTheSample()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddAsync(new FirmRow { Name = "Quernwath", CreatedAt = ReadingFirm.Start });
        for (var i = 0; i < 40; i++)
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", Now.AddDays(-1 - i), 1350));
        }

        var care = new ReviewCare(firm.Store, firm.Clock);
        Assert.IsType<SaveOutcome.Saved>(await care.SetShareAsync(ReadingFirm.Supervisor, 0.5, "a new technician"));
        var before = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter()))!;
        var drawn = before.Rows.Where(row => row.IsDrawn).Select(row => row.Visit.Id).ToList();
        var rest = before.Rows.Where(row => !row.IsDrawn).ToDictionary(row => row.Visit.Id, row => row.Visit.CurrentVersion);
        var all = before.Rows.ToDictionary(row => row.Visit.Id, row => row.Visit.CurrentVersion);
        Assert.Equal(0, await care.SignOffAsync(ReadingFirm.Technician, all));
        Assert.Equal(0, await care.SignOffAsync(ReadingFirm.Supervisor, rest.ToDictionary(pair => pair.Key, _ => 2)));
        Assert.Equal(rest.Count, await care.SignOffAsync(ReadingFirm.Supervisor, all));
        Assert.Equal(0, await care.SignOffAsync(ReadingFirm.Supervisor, all));
        await firm.Store.WriteAsync(Viewer.System("test"), db => db.Visits.Where(visit => drawn.Contains(visit.VisitId)).ExecuteUpdateAsync(set => set.SetProperty(visit => visit.State, VisitState.Reviewed)));

        // One did not hold, and was amended since: what was found stays found.
        await firm.Store.WriteAsync(Viewer.System("test"), db => db.Visits.Where(visit => visit.VisitId == drawn[0])
            .ExecuteUpdateAsync(set => set.SetProperty(visit => visit.ReviewFault, true).SetProperty(visit => visit.State, VisitState.Reissued)));
        var after = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter()))!;

        Assert.InRange(drawn.Count, 5, 35);
        Assert.Equal([drawn[0]], after.Rows.Select(row => row.Visit.Id));
        var sample = Assert.Single(after.Sample);
        Assert.Equal((40, drawn.Count, drawn.Count, 1), (sample.Visits, sample.Drawn, sample.Looked, sample.Faulty));
        Assert.Equal(AuditSample.HighestShare(drawn.Count, 1), sample.HighestShare!.Value, 12);
        var audited = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.AuditTrail.CountAsync(row => row.Entity == "Visit" || row.Entity == "AuditShare"));
        Assert.Equal(rest.Count + 1, audited);
    }

    [Theory]
    [InlineData(1.5, "why")]
    [InlineData(double.NaN, "why")]
    [InlineData(0.2, " ")]
    public async Task SetShare_OutOfRangeOrWithoutReason_IsRefused(double share, string why)
    {
        await using var firm = await ReadingFirm.CreateAsync();

        Assert.IsType<SaveOutcome.Invalid>(await new ReviewCare(firm.Store, firm.Clock).SetShareAsync(ReadingFirm.Supervisor, share, why));
        Assert.Equal(AuditSample.UsualShare, (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter()))!.Share);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task ListAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddVisitAsync(await firm.AddSiteAsync("AAA-0"), ReadingFirm.VisitOf("AAA-0", Now.AddDays(-3), 1350));
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter()));
        for (var i = 1; i < 10; i++)
        {
            await firm.AddVisitAsync(await firm.AddSiteAsync($"AAA-{i}"), ReadingFirm.VisitOf($"AAA-{i}", Now.AddDays(-3), 1350));
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ReviewFilter()));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 6);
    }

    private static ReviewQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
