using LogBook.Application.Settings;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Settings;
using LogBook.Papers;
using LogBook.Web.Components;

namespace LogBook.Web.Features.Settings;

/// <summary>The re-entry sheet on paper: boxes to tick, room to read back, lines to sign.</summary>
public static class ReEntryPaper
{
    /// <summary>Lays out a sheet.</summary>
    /// <param name="view">The sheet with what is beside it.</param>
    /// <param name="firm">Name of the firm.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="madeAt">When it is made, UTC.</param>
    /// <returns>A PDF.</returns>
    public static byte[] Of(ReEntryView view, string firm, Language language, DateTime madeAt)
    {
        var (heading, sheet) = (view.Heading, view.Sheet);
        using var paper = new Paper(new PaperFrame
        {
            Title = $"{SettingsTexts.ReEntry.In(language)}: {heading.SiteCode} {heading.SystemName}, {Shown.Day(sheet.On, language)}",
            HeaderLeft = $"{heading.SiteCode} {heading.SiteName} · {heading.SystemName}",
            HeaderRight = firm,
            FooterLeft = SettingsTexts.SetClock.In(language, Shown.Day(view.Today, language)),
            PageOf = SettingsTexts.PageOf.In(language),
            Language = LanguageCodes.Of(language),
            MadeAt = madeAt,
            IsDense = true,
        });
        paper.Small(SettingsTexts.SheetIntro.In(language, Shown.Day(sheet.On, language)));
        if (view.WeekToday is { } week)
        {
            paper.Paragraph(SettingsTexts.WeekToday.In(language, week, sheet.Programme?.PlanWeeks ?? Domain.DosePlans.PlanCalendar.UsualWeeks), bold: true);
        }

        paper.Note(SettingsTexts.SheetCaution.In(language));
        foreach (var stop in sheet.Groups.SelectMany(group => group.Stops))
        {
            paper.Paragraph(stop.Says.In(language), bold: true);
        }

        var urgent = view.Findings.Where(row => row.Finding.Severity != Severity.Watch).Select(row => FindingTexts.NameOf(row.Key.Kind).In(language)).Distinct().ToList();
        if (urgent.Count > 0)
        {
            paper.Small($"{SettingsTexts.OpenFindings.In(language)}: {string.Join(", ", urgent)}");
        }

        paper.Table(
            [
                new(SettingsTexts.Done.In(language), 0.7),
                new(SettingsTexts.Setting.In(language), 2.2),
                new(SettingsTexts.Value.In(language), 1.9, PaperAlign.Right),
                new(SettingsTexts.ReadBack.In(language), 1.2),
                new(SettingsTexts.Source.In(language), 1.8),
            ],
            sheet.Groups.SelectMany(group => Rows(group, language)));
        paper.SignatureLine(SettingsTexts.Supervisor.In(language), SettingsTexts.EnteredBy.In(language), SettingsTexts.ReadBackBy.In(language));
        return paper.ToBytes();
    }

    private static IEnumerable<PaperRow> Rows(ReEntryGroup group, Language language)
    {
        var later = string.Join("; ", group.Later.Select(change => change.Says.In(language)));
        yield return PaperRow.Group(SettingWords.Heading(group, language) + (later.Length == 0 ? "" : $" → {later}"));
        foreach (var line in group.Lines)
        {
            yield return PaperRow.WithNote(
                Note(line, language),
                new PaperCell("", Tick: false),
                SettingWords.Name(line.Setting.Name, language),
                new PaperCell(SettingWords.Value(line.Setting, language), Bold: true),
                "",
                line.ReadOn is { } on ? SettingsTexts.AsLeftOn.In(language, Shown.Day(on, language)) : SettingsTexts.ByProgramme.In(language));
        }
    }

    private static string? Note(ReEntryLine line, Language language)
    {
        List<string> notes = [.. line.Later.Select(change => "→ " + change.Says.In(language))];
        if (line.Programme is { } asked)
        {
            notes.Insert(0, SettingsTexts.ProgrammeAsked.In(language, SettingWords.Value(line.Setting.Name, asked, line.Setting.Unit, language)));
        }

        return notes.Count == 0 ? null : string.Join("; ", notes);
    }
}
