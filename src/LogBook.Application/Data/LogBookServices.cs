using LogBook.Application.Audit;
using LogBook.Application.Backups;
using LogBook.Application.Calculators;
using LogBook.Application.Clocks;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Imports;
using LogBook.Application.Mail;
using LogBook.Application.MoveIn;
using LogBook.Application.Notices;
using LogBook.Application.Planning;
using LogBook.Application.RecordPacks;
using LogBook.Application.Records;
using LogBook.Application.Reviews;
using LogBook.Application.Search;
using LogBook.Application.Settings;
using LogBook.Application.Shelf;
using LogBook.Application.Sites;
using LogBook.Application.TakeOver;
using LogBook.Application.Visits;
using LogBook.Application.Visits.Review;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace LogBook.Application.Data;

/// <summary>Registers the server's work on records.</summary>
public static class LogBookServices
{
    /// <summary>Adds the database and all that reads and writes it. A <see cref="TimeProvider"/> that is already there is kept.</summary>
    public static IServiceCollection AddLogBook(this IServiceCollection services, LogBookOptions options)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton(options);
        services.AddOptions<MailOptions>();
        services.AddPooledDbContextFactory<LogBookDb>(builder => builder.UseLogBook(options));

        // For the sign-in stores, which take a context; they touch no customer's records, and this context sees none.
        services.AddScoped(provider => provider.GetRequiredService<IDbContextFactory<LogBookDb>>().CreateDbContext());
        services.AddSingleton<LogBookStore>();
        services.AddSingleton<LogBookStartUp>();
        services.AddSingleton<SetUpStore>();
        services.AddSingleton<SettingStore>();
        services.AddSingleton<AtOnceNotices>();
        services.AddSingleton<NoticeKeeper>();
        services.AddSingleton<DigestWriter>();
        services.AddSingleton<PhraseStore>();
        services.AddSingleton<RoundKeeper>();
        services.AddSingleton<AssessmentKeeper>();
        services.AddSingleton<FindingCare>();
        services.AddSingleton<FindingsQuery>();
        services.AddSingleton<VisitIntake>();
        services.AddSingleton<VisitReader>();
        services.AddSingleton<StandingActionsQuery>();
        services.AddSingleton<VisitCare>();
        services.AddSingleton<ReviewQuery>();
        services.AddSingleton<ReviewCare>();
        services.AddSingleton<ConflictCare>();
        // Where pictures lie, the host says.
        services.AddSingleton<PhotoStore>();
        services.AddSingleton<DraftPhotos>();
        services.AddSingleton<DraftStore>();
        services.AddSingleton<ExchangeImport>();
        services.AddSingleton<ExchangeExport>();
        services.AddSingleton<RecordPackReader>();
        services.AddSingleton<RecordPackMaker>();
        services.AddSingleton<LegalHoldStore>();
        services.AddSingleton<KeepingQuery>();
        services.AddSingleton<MappingStore>();
        services.AddSingleton<MoveInDesk>();
        services.AddSingleton<Rescue.RescuedDraftStore>();
        services.AddSingleton<Verifier>();
        services.AddSingleton<BackupMaker>();
        services.AddSingleton<SiteHistoryQuery>();
        services.AddSingleton<CompareQuery>();
        services.AddSingleton<SheetQuery>();
        services.AddSingleton<SettingsQuery>();
        services.AddSingleton<DosePlanQuery>();
        services.AddSingleton<AttentionQuery>();
        services.AddSingleton<SitesQuery>();
        services.AddSingleton<SiteCardQuery>();
        services.AddSingleton<TakeOverQuery>();
        services.AddSingleton<TodaysRoundQuery>();
        services.AddSingleton<PlanStore>();
        services.AddSingleton<PlanQuery>();
        services.AddSingleton<DaysOffStore>();
        services.AddSingleton<PatchStore>();
        services.AddSingleton<PackQuery>();
        services.AddSingleton<ClocksQuery>();
        services.AddSingleton<CountsQuery>();
        services.AddSingleton<NoticeStore>();
        services.AddSingleton<RecordsQuery>();
        services.AddSingleton<RuleAdopter>();
        services.AddSingleton<ShelfQuery>();
        services.AddSingleton<MakeUpQuery>();
        services.AddSingleton<VisitsQuery>();
        services.AddSingleton<VisitQuery>();
        services.AddSingleton<SearchQuery>();
        return services;
    }
}
