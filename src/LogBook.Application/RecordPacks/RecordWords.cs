using System.Globalization;
using LogBook.Application.DueLists;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>Names, days and times of a pack in the reader's language.</summary>
internal sealed class RecordWords(RecordPack pack, Language language)
{
    public RecordPack Pack => pack;

    public Language Language => language;

    public string this[Text text] => text.In(language);

    public string this[Text text, params object?[] values] => text.In(language, values);

    public DateOnly DayOf(DateTime utc) => SitesQuery.DayIn(pack.Zone, utc);

    public DateOnly DayOf(Visit visit) => DayOf(visit.Arrived.Utc);

    public DateTime Wall(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, pack.Zone);

    public string Day(DateOnly day) => Shown.Day(day, language);

    public string Moment(DateTime utc) => Shown.DayAndTime(utc, pack.Zone, language);

    public string TimeOf(DateTime utc) => Wall(utc).ToString("HH:mm", CultureInfo.InvariantCulture);

    public string Person(string code) => pack.Firm.People.TryGetValue(code, out var person) ? person.Name : code;

    public string People(Visit visit) => string.Join(", ", visit.Also.Prepend(visit.Technician).Select(Person));

    public string Product(string code) => pack.Firm.Products.TryGetValue(code, out var product) ? product.Name : code;

    public string Test(string code) => (TestCatalogue.Find(code, pack.Firm)?.Name ?? TestTexts.NameOf(code)).In(language);

    public string Point(string code) => TestTexts.NameOfPoint(code).In(language);

    /// <summary>What a group of rows of a visit is headed by.</summary>
    public string GroupOf(Visit visit, string? system = null) =>
        string.Join(" · ", new[] { Moment(visit.Arrived.Utc), system, People(visit) }.Where(part => part is not null));

    public SystemHistory? HistoryOf(string system) => pack.Systems.FirstOrDefault(known => known.History.System.Code.Equals(system, StringComparison.OrdinalIgnoreCase))?.History;

    public IEnumerable<(PackVisit Visit, VisitedSystem Record)> Records() =>
        from visit in pack.Visits where visit.Counts from record in visit.Visit.Systems select (visit, record);
}
