using LogBook.Application.Data;
using LogBook.Application.Search;
using LogBook.Application.Visits;
using LogBook.Testing.Readers;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.Readers;

public sealed class VisitQueryTests
{
    [Fact]
    public async Task OfAsync_AmendedVisit_TellsTheDifferenceInWords()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var first = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var second = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1360, id: first.Id) with
        {
            Version = 2, Amends = 1, AmendedBy = "IWE", AmendedAt = Moment.OfUtc(ReadingFirm.Start.AddDays(1)), Reason = "misread",
        };
        await firm.AddVisitAsync(site, second, false, first);

        var view = await new VisitQuery(firm.Store).OfAsync(ReadingFirm.Supervisor, first.Id);

        Assert.Equal([2, 1], view!.Versions.Select(version => version.Version));
        var differences = view.Versions[0].Differences.Select(d => (d.Where.In(Language.Spanish), d.Before?.Es, d.After?.Es)).ToList();
        Assert.Contains(("CT-1 · lectura · Conductividad (agua de la torre, medidor portátil) · valor", "1350\u00a0µS/cm", "1360\u00a0µS/cm"), differences);
        Assert.Equal(2, differences.Count);
    }

    [Fact]
    public void Between_ReadingAddedInFront_IsOneReadingAndNoShift()
    {
        var older = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var newer = older with
        {
            Systems = [older.Systems[0] with { Readings = [new Reading { At = "tower", Test = "pH", Value = 8.1, Unit = "[pH]" }, .. older.Systems[0].Readings] }],
        };

        var differences = VisitDifferences.Between(older, newer, TimeZoneInfo.Utc);

        // Test and point name the reading and need no lines of their own.
        var added = Assert.Single(differences);
        Assert.Null(added.Before);
        Assert.Equal("pH\u00a08,1", added.After!.Es);
        Assert.All(differences, difference => Assert.Contains("pH (tower water)", difference.Where.En, StringComparison.Ordinal));
    }

    [Fact]
    public void Between_LaterResult_ReadsInUnitsAndSiteTimeOfTheLanguage()
    {
        var older = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var newer = older with
        {
            Systems =
            [
                older.Systems[0] with
                {
                    Readings =
                    [
                        .. older.Systems[0].Readings,
                        new Reading
                        {
                            At = "tower", Test = "dip-slide", Value = 10000, Unit = "[CFU]/mL", Qualifier = "<",
                            ResultAt = Moment.OfUtc(new DateTime(2025, 7, 5, 8, 0, 0, DateTimeKind.Utc)), Source = ReadingSource.SiteStaff,
                        },
                    ],
                    Running = false,
                },
            ],
        };

        var differences = VisitDifferences.Between(older, newer, TimeZoneInfo.FindSystemTimeZoneById("Europe/London"));

        var shown = differences.ToDictionary(d => d.Where.Es.Split(" · ")[^1], d => d.After!.Es);
        Assert.Equal("10\u00a0000\u00a0UFC/mL", shown["valor"]);
        Assert.Equal("05/07/2025 09:00", shown["llegada del resultado"]);
        Assert.Equal("no", shown["en marcha"]);
        Assert.All(differences.Where(d => d.Where.Es.Contains("lectura", StringComparison.Ordinal)), d => Assert.Contains("personal del sitio", d.Where.Es, StringComparison.Ordinal));
        Assert.DoesNotContain("unidad", shown.Keys);
    }

    [Fact]
    public void Between_UnitAloneDiffers_IsSeen()
    {
        var older = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var reading = older.Systems[0].Readings.Single(r => r.Test == "conductivity");
        var newer = older with { Systems = [older.Systems[0] with { Readings = [.. older.Systems[0].Readings.Select(r => r == reading ? r with { Unit = "mS/cm" } : r)] }] };

        var difference = Assert.Single(VisitDifferences.Between(older, newer, TimeZoneInfo.Utc));

        Assert.Equal(("1350\u00a0µS/cm", "1350\u00a0mS/cm"), (difference.Before!.En, difference.After!.En));
    }

    [Fact]
    public void Names_EveryFieldOfAVisit_HasOne()
    {
        var without = FieldsOf(typeof(Visit), []).Where(field => !VisitDifferenceWords.Knows(field)).Order(StringComparer.Ordinal);

        Assert.Empty(without);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task OfAsync_ForeignOrVoidVisit_IsAbsentForACustomer()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        var other = await firm.AddSiteAsync("NUR-1");
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var isVoid = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(1), 1350);
        await firm.AddVisitAsync(own, visit);
        await firm.AddVisitAsync(own, isVoid, isVoid: true);
        var query = new VisitQuery(firm.Store);

        Assert.Null(await query.OfAsync(ReadingFirm.CustomerOf(other.Customer), visit.Id));
        Assert.NotNull(await query.OfAsync(ReadingFirm.CustomerOf(own.Customer), visit.Id));
        Assert.Null(await query.OfAsync(ReadingFirm.CustomerOf(own.Customer), isVoid.Id));
        Assert.NotNull(await query.OfAsync(ReadingFirm.Technician, isVoid.Id));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task ListAsync_Customer_SeesOwnVisitsThatCount()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        var other = await firm.AddSiteAsync("NUR-1");
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(1), 1350), isVoid: true);
        await firm.AddVisitAsync(other, ReadingFirm.VisitOf("NUR-1", ReadingFirm.Start, 1350));

        var page = await new VisitsQuery(firm.Store).ListAsync(ReadingFirm.CustomerOf(own.Customer), new VisitsFilter(State: VisitStateFilter.All));

        Assert.Equal("YAF-1", Assert.Single(page.Rows).SiteCode);
        Assert.Equal(new ListCount(1), page.Total);
    }

    [Fact]
    public async Task ListAsync_Filters_Combine()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7), 1350, "TNU"));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(8), 1350, "TNU") with { Kind = VisitKind.Cleaning });

        var page = await new VisitsQuery(firm.Store).ListAsync(ReadingFirm.Supervisor, new VisitsFilter(Technician: "tnu", Kind: VisitKind.Routine, From: new DateOnly(2025, 3, 4)));

        Assert.Equal(new DateOnly(2025, 3, 10), Assert.Single(page.Rows).Day);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task FindAsync_Customer_FindsOnlyWhatIsTheirs()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital");
        await firm.AddAsync(new LogBook.Application.Data.SetUpRow { Kind = LogBook.Application.Data.SetUpKind.Person, Code = "RYA", CodeKey = "RYA", Name = "R. Yaffle", Document = "{}" });
        var query = new SearchQuery(firm.Store);

        var seen = await query.FindAsync(ReadingFirm.CustomerOf(own.Customer), "yaf");

        Assert.Equal([SearchHitKind.Site, SearchHitKind.Customer], seen.Select(hit => hit.Kind));
        Assert.Empty(await query.FindAsync(ReadingFirm.CustomerOf(own.Customer), "nurles"));
        Assert.Contains(await query.FindAsync(ReadingFirm.Technician, "yaffle"), hit => hit.Kind == SearchHitKind.Person);
    }

    [Fact]
    public async Task FindAsync_Wildcards_AreTakenAsTheyStand()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddSiteAsync("YAF-1");

        Assert.Empty(await new SearchQuery(firm.Store).FindAsync(ReadingFirm.Supervisor, "%%"));
        Assert.Empty(await new SearchQuery(firm.Store).FindAsync(ReadingFirm.Supervisor, "Y_F"));
    }

    private static IEnumerable<string> FieldsOf(Type type, HashSet<Type> seen)
    {
        if (!seen.Add(type))
        {
            yield break;
        }

        foreach (var property in ExchangeJson.Default.Options.GetTypeInfo(type).Properties)
        {
            yield return property.Name;
            var item = property.PropertyType.IsGenericType ? property.PropertyType.GetGenericArguments()[0] : property.PropertyType;
            if (item.Namespace == typeof(Visit).Namespace && item.IsClass && item != typeof(SettingValue))
            {
                foreach (var field in FieldsOf(item, seen))
                {
                    yield return field;
                }
            }
        }
    }
}
