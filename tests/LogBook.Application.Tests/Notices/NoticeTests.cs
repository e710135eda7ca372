using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Application.Notices;
using LogBook.Application.Reviews;
using LogBook.Application.Tests.Mail;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Notices;

public sealed class NoticeTests
{
    // A switch left forced on is a finding that cannot wait.
    private static readonly Visit Urgent = SampleFirm.Visit(arrived: "2025-03-09T09:05:00+00:00", bleedSwitch: SwitchPosition.ForcedOn);

    [Fact]
    public async Task AtOnce_UrgentFinding_IsMailedOnceInTheReadersLanguage()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.Spanish, atOnce: true);
        await ReceiveAndAssessAsync(house, Urgent);
        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        await worker.SendDueAsync();
        var early = sink.Kept.Count(message => message.To.ToString().Contains("wendle", StringComparison.Ordinal));

        house.Database.Clock.Advance(AtOnceNotices.Wait);
        await worker.SendDueAsync();
        await house.Database.Get<AssessmentKeeper>().AssessAllAsync(house.Database.Supervisor);
        house.Database.Clock.Advance(TimeSpan.FromHours(1));
        await worker.SendDueAsync();

        var sent = Assert.Single(sink.Kept, message => message.To.ToString().Contains("wendle", StringComparison.Ordinal));
        Assert.Equal(0, early);
        Assert.StartsWith("Actuar", sent.Subject, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("YAF-1", sent.Subject, StringComparison.Ordinal);
        Assert.Contains("Cuenta", sent.TextBody, StringComparison.Ordinal);
        Assert.Contains("lang=\"es\"", sent.HtmlBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AtOnce_AnsweredBeforeItLeaves_IsNotSent()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, atOnce: true);
        await ReceiveAndAssessAsync(house, Urgent);
        var list = await house.Database.Get<AttentionQuery>().ListAsync(house.Database.Supervisor, new AttentionFilter(Severity: Domain.Findings.Severity.Act));
        await house.Database.Get<FindingCare>().AcknowledgeAsync(house.Database.Supervisor, [.. list!.Rows.Select(row => row.Key)], null);

        house.Database.Clock.Advance(TimeSpan.FromMinutes(5));
        await house.Worker(MailHouse.Smtp(sink.Port)).SendDueAsync();

        Assert.DoesNotContain(sink.Kept, message => message.To.ToString().Contains("wendle", StringComparison.Ordinal));
        var notices = (await house.OutboxAsync()).Where(row => row.Kind == OutboxKinds.AtOnce).ToList();
        Assert.NotEmpty(notices);
        Assert.All(notices, row => Assert.NotNull(row.GivenUpAt));
        Assert.All(notices, row => Assert.Equal(MailNotes.Withdrawn.En, MailNotes.In(row.LastError, Language.English)));
    }

    [Fact]
    public async Task AtOnce_NobodyChoseIt_OrItIsLongAgo_QueuesNothing()
    {
        await using var house = await MailHouse.StartAsync();
        await AddUserAsync(house, "p.umber@quernwath.example", "PUM", PersonRole.Technician, Language.English, digest: true);
        await ReceiveAndAssessAsync(house, Urgent);
        var unasked = (await house.OutboxAsync()).Count(row => row.Kind == OutboxKinds.AtOnce);
        await using var later = await MailHouse.StartAsync();
        await AddUserAsync(later, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, atOnce: true);

        await ReceiveAndAssessAsync(later, SampleFirm.Visit(arrived: "2024-11-09T09:05:00+00:00", bleedSwitch: SwitchPosition.ForcedOn), IntakeSource.Import);

        Assert.Equal(0, unasked);
        Assert.NotEmpty(await later.Store.ReadAsync(later.Database.Supervisor, db => db.Findings.Where(row => row.Severity == Domain.Findings.Severity.Act).ToListAsync()));
        Assert.DoesNotContain(await later.OutboxAsync(), row => row.Kind == OutboxKinds.AtOnce);
    }

    [Fact]
    public async Task AtOnce_VisitStayedOnTheTabletForWeeks_IsNewsWhenItArrives()
    {
        await using var house = await MailHouse.StartAsync();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, atOnce: true);

        await ReceiveAndAssessAsync(house, SampleFirm.Visit(arrived: "2025-02-11T09:05:00+00:00", bleedSwitch: SwitchPosition.ForcedOn));

        Assert.Contains(await house.OutboxAsync(), row => row.Kind == OutboxKinds.AtOnce && row.Recipient == "i.wendle@quernwath.example");
    }

    [Fact]
    public async Task AtOnce_OwnSitesOnly_TellsWhoseRoundItIs()
    {
        await using var house = await MailHouse.StartAsync();
        var assigned = await house.Store.ReadAsync(house.Database.Supervisor, db => db.Sites.Where(site => site.Code == "YAF-1").Select(site => site.AssignedTo).SingleAsync());
        await AddUserAsync(house, "r.yaffle@quernwath.example", assigned, PersonRole.Technician, Language.English, atOnce: true, own: true);
        await AddUserAsync(house, "p.umber@quernwath.example", "NOBODY", PersonRole.Technician, Language.English, atOnce: true, own: true);

        await ReceiveAndAssessAsync(house, Urgent);

        Assert.Equal(["r.yaffle@quernwath.example"], (await house.OutboxAsync()).Where(row => row.Kind == OutboxKinds.AtOnce).Select(row => row.Recipient).Distinct());
    }

    [Fact]
    public async Task Digest_OnceADay_FromSixOn_AndNotWhenThereIsNothing()
    {
        await using var house = await MailHouse.StartAsync();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, digest: true);
        await AddUserAsync(house, "n.nurle@quernwath.example", "NOBODY", PersonRole.Technician, Language.English, digest: true, own: true);
        await ReceiveAndAssessAsync(house, Urgent);
        var digests = house.Database.Get<DigestWriter>();

        var counts = new List<int> { await digests.QueueDueAsync(), await digests.QueueDueAsync() };
        house.Database.Clock.Advance(TimeSpan.FromHours(19));
        counts.Add(await digests.QueueDueAsync());
        house.Database.Clock.Advance(TimeSpan.FromHours(4));
        counts.Add(await digests.QueueDueAsync());

        Assert.Equal([1, 0, 0, 1], counts);
        var rows = (await house.OutboxAsync()).Where(row => row.Kind == OutboxKinds.Digest).ToList();
        Assert.All(rows, row => Assert.Equal("i.wendle@quernwath.example", row.Recipient));
        Assert.Contains("YAF-1", rows[0].TextBody, StringComparison.Ordinal);
        Assert.Contains("Visits to review: 1", rows[0].TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Digest_EveryClock_IsToldByTheMostUrgentOfEachSite()
    {
        await using var house = await MailHouse.StartAsync();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, digest: true);
        await ReceiveAndAssessAsync(house, Urgent);
        house.Database.Clock.Advance(TimeSpan.FromDays(5));
        await house.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            // The customer has the summary.
            await db.Outbox.Where(mail => mail.Kind == OutboxKinds.VisitSummary).ExecuteUpdateAsync(set => set.SetProperty(mail => mail.AcceptedAt, house.Database.Clock.GetUtcNow().UtcDateTime));

            // A drum that may be empty since yesterday, a promise of three days ago and one that has a week left.
            var system = await db.Systems.AsTracking().FirstAsync(row => db.Sites.Any(site => site.Id == row.SiteId && site.Code == "YAF-1"));
            var today = DateOnly.FromDateTime(house.Database.Clock.GetUtcNow().UtcDateTime);
            system.Ahead = KeptAhead.Text(new SystemAhead
            {
                Drums = [new DrumAhead("D-INH", "P-40", today.AddDays(-20), 4, 0.2) { From = today.AddDays(-1), To = today.AddDays(3) }],
                Promises = [new PromiseAhead("clean the basin", today.AddDays(-3), null), new PromiseAhead("new float valve", today.AddDays(7), null)],
            });
        });

        await house.Database.Get<DigestWriter>().QueueDueAsync();

        var text = (await house.OutboxAsync()).Single(row => row.Kind == OutboxKinds.Digest).TextBody;
        Assert.Contains("clean the basin (3 days over); further clocks that have ended or end today: 1", text, StringComparison.Ordinal);
        Assert.DoesNotContain("float valve", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mail_Technician_SeesNoNoticeOfOthers()
    {
        await using var house = await MailHouse.StartAsync();
        await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English, atOnce: true);
        await ReceiveAndAssessAsync(house, Urgent);
        var notice = (await house.OutboxAsync()).First(row => row.Kind == OutboxKinds.AtOnce);

        var seen = (await house.Query.ListAsync(house.Database.Technician, false, 1))!.Messages;

        Assert.DoesNotContain(seen, message => message.Id == notice.Id);
        Assert.Null(await house.Query.FindAsync(house.Database.Technician, notice.Id));
        Assert.NotNull(await house.Query.FindAsync(house.Database.Supervisor, notice.Id));
        Assert.Null(await house.Query.FindAsync(await house.Database.OfCustomerAsync("YAF"), notice.Id));
    }

    [Fact]
    public async Task Choice_IsThePersonsOwn()
    {
        await using var house = await MailHouse.StartAsync();
        var id = await AddUserAsync(house, "i.wendle@quernwath.example", "IWE", PersonRole.Supervisor, Language.English);
        var keeper = house.Database.Get<NoticeKeeper>();
        var viewer = house.Database.Supervisor with { UserId = id };

        var saved = await keeper.ChooseAsync(viewer, new NoticeChoice(true, false, true));

        Assert.IsType<SaveOutcome.Saved>(saved);
        Assert.Equal(new NoticeChoice(true, false, true), await keeper.OfAsync(viewer));
        Assert.IsType<SaveOutcome.NotAllowed>(await keeper.ChooseAsync((await house.Database.OfCustomerAsync("YAF")) with { UserId = id }, new NoticeChoice(false, false, false)));
        Assert.Equal(new NoticeChoice(true, false, true), await keeper.OfAsync(viewer));
    }

    private static async Task ReceiveAndAssessAsync(MailHouse house, Visit visit, IntakeSource source = IntakeSource.Tablet)
    {
        await house.ReceiveAsync(visit, source);
        await house.Database.Get<AssessmentKeeper>().AssessDueAsync(house.Database.Supervisor);
    }

    private static Task<int> AddUserAsync(
        MailHouse house, string email, string? person, PersonRole role, Language language, bool atOnce = false, bool digest = false, bool own = false) => house.Store.WriteAsync(
        Viewer.System("test"),
        async db =>
        {
            var name = RoleNames.Of(role);
            var known = await db.Roles.AsTracking().FirstOrDefaultAsync(row => row.Name == name);
            if (known is null)
            {
                known = new IdentityRole<int>(name) { NormalizedName = name.ToUpperInvariant() };
                db.Roles.Add(known);
            }

            var user = new LogBookUser
            {
                UserName = email, NormalizedUserName = email.ToUpperInvariant(), Email = email, NormalizedEmail = email.ToUpperInvariant(), SecurityStamp = "-",
                PersonCode = person, Language = language, NoticeAtOnce = atOnce, NoticeDigest = digest, NoticeOwnSites = own,
            };
            db.Users.Add(user);
            await db.SaveChangesAsync();
            db.UserRoles.Add(new IdentityUserRole<int> { UserId = user.Id, RoleId = known.Id });
            await db.SaveChangesAsync();
            return user.Id;
        });
}
