using LogBook.Application.Reviews;
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
    private const double UsualPoints = 9.5;
    private const double LeastPoints = 8;

    /// <summary>Lays out a sheet.</summary>
    /// <param name="view">The sheet with what is beside it.</param>
    /// <param name="firm">Name of the firm.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="madeAt">When it is made, UTC.</param>
    /// <returns>A PDF.</returns>
    /// <remarks>
    /// One page is what goes into the pump room: where a long programme would make it two, the letters are smaller; where they would still, the
    /// findings stand by their names alone; where these would, what is only to be watched is counted.
    /// </remarks>
    public static byte[] Of(ReEntryView view, string firm, Language language, DateTime madeAt)
    {
        foreach (var (detail, points) in new[] { (FindingDetail.Words, UsualPoints), (FindingDetail.Words, LeastPoints), (FindingDetail.Names, LeastPoints) })
        {
            using var paper = Lay(view, firm, language, madeAt, detail, points);
            if (paper.Pages == 1)
            {
                return paper.ToBytes();
            }
        }

        using var least = Lay(view, firm, language, madeAt, FindingDetail.NamesToActOn, LeastPoints);
        return least.ToBytes();
    }

    private enum FindingDetail
    {
        Words,
        Names,
        NamesToActOn,
    }

    private static Paper Lay(ReEntryView view, string firm, Language language, DateTime madeAt, FindingDetail detail, double points)
    {
        var (heading, sheet) = (view.Heading, view.Sheet);
        var paper = new Paper(new PaperFrame
        {
            Title = $"{SettingsTexts.ReEntry.In(language)}: {heading.SiteCode} {heading.SystemName}, {Shown.Day(sheet.On, language)}",
            HeaderLeft = $"{heading.SiteCode} {heading.SiteName} · {heading.SystemName}",
            HeaderRight = firm,
            FooterLeft = SettingsTexts.SetClock.In(language, Shown.Day(view.Today, language)),
            PageOf = SettingsTexts.PageOf.In(language),
            Language = LanguageCodes.Of(language),
            MadeAt = madeAt,
            IsDense = true,
            Points = points,
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

        var open = Findings(view.OfTheWhole.Where(row => row.Finding.Severity != Severity.Watch), language, detail);
        var watched = view.OfTheWhole.Count(row => row.Finding.Severity == Severity.Watch);
        if (open.Length > 0 || watched > 0)
        {
            var more = watched > 0 ? (detail == FindingDetail.NamesToActOn ? SettingsTexts.MoreToWatch : SettingsTexts.ToWatch).In(language, watched) : "";
            paper.Small($"{SettingsTexts.OpenFindings.In(language)}: {string.Join("; ", new[] { open, more }.Where(part => part.Length > 0))}");
        }

        paper.Table(
            [
                new(SettingsTexts.Done.In(language), 0.7),
                new(SettingsTexts.Setting.In(language), 2.2),
                new(SettingsTexts.Value.In(language), 1.9, PaperAlign.Right),
                new(SettingsTexts.ReadBack.In(language), 1.1),
                new(SettingsTexts.Source.In(language), 1.9),
            ],
            sheet.Groups.SelectMany(group => Rows(group, Findings(view.Beside(group), language, detail), language)));
        paper.SignatureLine(SettingsTexts.Supervisor.In(language), SettingsTexts.EnteredBy.In(language), SettingsTexts.ReadBackBy.In(language));
        return paper;
    }

    // Act and plan in their own words, what is only to be watched by its name.
    private static string Findings(IEnumerable<AttentionRow> rows, Language language, FindingDetail detail)
    {
        var all = rows.ToList();
        var told = detail == FindingDetail.NamesToActOn ? all.Where(row => row.Finding.Severity != Severity.Watch) : all;
        var watched = detail == FindingDetail.NamesToActOn ? all.Count(row => row.Finding.Severity == Severity.Watch) : 0;
        return string.Join("; ", told
            .Select(row => $"{FindingTexts.NameOf(row.Finding.Severity).In(language)}: {FindingTexts.NameOf(row.Key.Kind).In(language)}{(detail == FindingDetail.Words && row.Finding.Severity != Severity.Watch ? $" – {row.Finding.Text}" : "")}")
            .Distinct().Concat(watched > 0 ? [SettingsTexts.MoreToWatch.In(language, watched)] : []));
    }

    private static IEnumerable<PaperRow> Rows(ReEntryGroup group, string open, Language language)
    {
        var later = string.Join("; ", group.Later.Select(change => change.Says.In(language)));
        yield return PaperRow.Group(SettingWords.Heading(group, language) + (later.Length == 0 ? "" : $" → {later}") + (open.Length == 0 ? "" : $" · {SettingsTexts.OpenBeside.In(language)}: {open}"));
        foreach (var line in group.Lines)
        {
            yield return PaperRow.WithNote(
                Note(line, language),
                new PaperCell("", Tick: false),
                SettingWords.Name(line.Setting.Name, language),
                new PaperCell(SettingWords.Value(line.Setting, language), Bold: true),
                "",
                line.ReadOn is { } on ? SettingsTexts.LeftOn.In(language, Shown.Day(on, language)) : SettingsTexts.NeverReadShort.In(language));
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
