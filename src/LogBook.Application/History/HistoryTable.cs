using System.Text;
using LogBook.Domain.Assessments;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>A history as a table for a spreadsheet: one reading, record or figure a line, in the person's language.</summary>
public static class HistoryTable
{
    private static readonly Text[] Heads =
    [
        new("Moment", "Momento", "Momento"),
        new("Sort", "Clase", "Classe"),
        new("What", "Qué", "O quê"),
        new("Where", "Dónde", "Onde"),
        new("Source", "Fuente", "Fonte"),
        new("Qualifier", "Calificador", "Qualificador"),
        new("Value", "Valor", "Valor"),
        new("± (k = 2)", "± (k = 2)", "± (k = 2)"),
        new("Unit", "Unidad", "Unidade"),
        new("Note", "Nota", "Nota"),
        new("Technician", "Técnico", "Técnico"),
        new("Visit", "Visita", "Visita"),
    ];

    private static readonly Text Reading = new("reading", "lectura", "leitura");
    private static readonly Text Level = new("drum level", "nivel de bidón", "nível de bombona");
    private static readonly Text Hours = new("hours run", "horas de marcha", "horas de funcionamento");
    private static readonly Text Dial = new("meter dial", "contador de agua", "hidrômetro");
    private static readonly Text Total = new("controller's total", "total del controlador", "total do controlador");
    private static readonly Text Figure = new("figure", "cifra", "cifra");

    /// <summary>The table with a byte order mark, without which spreadsheets misread accents.</summary>
    public static byte[] Of(SiteHistoryView view, Language language)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(view.Heading.TimeZone);
        var text = new StringBuilder();
        text.Append(CsvText.Line([.. Heads.Select(head => (object?)head.In(language))])).Append("\r\n");
        foreach (var visit in view.Visits)
        {
            foreach (var (sort, where, value, unit) in RecordsOf(visit, view.System))
            {
                text.Append(CsvText.Line(
                    TimeZoneInfo.ConvertTimeFromUtc(visit.At, zone), sort.In(language), sort.In(language), where, null, null, value, null, Shown.Unit(unit, language), null, visit.Visit.Technician, visit.Visit.Id)).Append("\r\n");
            }

            foreach (var reading in visit.Record.Readings)
            {
                text.Append(CsvText.Line(
                    TimeZoneInfo.ConvertTimeFromUtc((reading.TakenAt ?? visit.Visit.Arrived).Utc, zone),
                    Reading.In(language),
                    TestTexts.NameOf(reading.Test).In(language),
                    TestTexts.NameOfPoint(reading.At).In(language),
                    VisitTexts.NameOf(reading.Source).In(language),
                    reading.Qualifier,
                    HistoryBuilder.ValueOf(reading),
                    null,
                    Shown.Unit(reading.Unit, language),
                    reading.NotTaken ?? (reading.NotQuantifiable == true ? HistoryTexts.NotQuantifiable.In(language) : null),
                    visit.Visit.Technician,
                    visit.Visit.Id)).Append("\r\n");
            }
        }

        var technicianOf = view.Visits.ToDictionary(visit => visit.Visit.Id, visit => visit.Visit.Technician);
        foreach (var figure in view.Figures)
        {
            text.Append(CsvText.Line(
                figure.To,
                Figure.In(language),
                FigureTexts.NameOf(figure.Code).In(language),
                figure.About,
                null,
                null,
                figure.Estimate?.Value,
                figure.Estimate?.ExpandedUncertainty,
                figure.Estimate is { } estimate ? Shown.Unit(estimate.Unit, language) : null,
                figure.Why.Count == 0 ? null : string.Join("; ", figure.Why.Select(why => why.In(language))),
                technicianOf.GetValueOrDefault(figure.Visit),
                figure.Visit)).Append("\r\n");
        }

        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    // As they were entered, in the unit of the day.
    private static IEnumerable<(Text Sort, string Where, double Value, string Unit)> RecordsOf(SystemVisit visit, WaterSystem? system)
    {
        string UnitOf(string meter) => (system is null ? null : PartsOnDay.MeterOn(system, meter, DateOnly.FromDateTime(visit.Visit.Arrived.Wall)))?.Unit ?? "1";
        return
        [
            .. visit.Record.Drums.Where(drum => drum.Level is not null).Select(drum => (Level, drum.Drum, drum.Level!.Value, drum.Unit ?? "1")),
            .. visit.Record.HoursRun.Select(hours => (Hours, hours.Output, hours.Hours, "h")),
            .. visit.Record.Meters.Where(meter => meter.Dial is not null).Select(meter => (Dial, meter.Meter, meter.Dial!.Value, UnitOf(meter.Meter))),
            .. visit.Record.Meters.Where(meter => meter.Total is not null).Select(meter => (Total, meter.Meter, meter.Total!.Value, UnitOf(meter.Meter))),
        ];
    }
}
