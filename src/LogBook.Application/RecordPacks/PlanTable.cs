using LogBook.Domain.Summaries;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>The programmes in force in the period, field by field.</summary>
internal static class PlanTable
{
    public static RecordTable Of(RecordWords words) => new(
        RecordTexts.Plan,
        [new(RecordTexts.System, 0), new(RecordTexts.RuleVersion, 0), new(RecordTexts.What, 2), new(RecordTexts.Value, 3)],
        [
            .. words.Pack.Systems.SelectMany(system => InForce(system, words.Pack).SelectMany(stretch => FieldsOf(words, system.History.System, stretch.Programme, stretch.From, stretch.To)
                .Select(field => new RecordRow(
                    [system.History.System.Code, stretch.Programme.From, field.Name, field.Value],
                    $"{system.History.System.Code} {system.History.System.Name} · {words[RecordTexts.RuleVersion]} {words.Day(stretch.Programme.From)}")))),
        ],
        RecordTexts.PlanIntro);

    private static IEnumerable<(Programme Programme, DateOnly From, DateOnly To)> InForce(PackSystem system, RecordPack pack)
    {
        var programmes = system.History.Programmes;
        return programmes
            .Select((programme, place) => (programme, From: Later(programme.From, pack.From), To: place + 1 < programmes.Count && programmes[place + 1].From.AddDays(-1) is var last && last < pack.To ? last : pack.To))
            .Where(stretch => stretch.From <= stretch.To);
    }

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;

    private static IEnumerable<(string Name, string Value)> FieldsOf(RecordWords words, WaterSystem system, Programme programme, DateOnly from, DateOnly to)
    {
        string Of(ControllerSetting setting) => SettingValues.In(setting.Name, setting.Value, setting.Unit, words.Language);
        string NameOf(string field) => words[VisitTexts.NameOfSetting(field)];
        if (programme.TargetCycles is { } cycles)
        {
            yield return (NameOf("targetCycles"), Shown.Entered(cycles, "1", words.Language));
        }

        foreach (var setting in ProgrammeSettings.Of(programme, system).Where(setting => SettingNames.OutputOf(setting.Name) is null))
        {
            yield return (NameOf(setting.Name), Of(setting));
        }

        foreach (var range in programme.Ranges)
        {
            yield return ($"{words.Test(range.Test)}, {words.Point(range.At)}", ResultWords.RangeOf(range, words.Language) + (range.Basis is null ? "" : " " + range.Basis));
        }

        foreach (var feed in programme.Feeds)
        {
            var output = ProgrammeSettings.OutputOf(feed, system);
            var settings = ProgrammeSettings.OfFeed(feed, output ?? feed.Drum).Select(setting => $"{NameOf(SettingNames.FieldOf(setting.Name))}: {Of(setting)}");
            yield return (
                string.Join(", ", new[] { $"{words[RecordTexts.Drum]} {feed.Drum}", ProductsOf(words, system, feed.Drum, from, to), output }.Where(part => part is not null)),
                string.Join("; ", settings.Prepend(feed.TargetMgPerL is { } target ? Shown.Entered(target, "mg/L", words.Language) : "").Where(part => part.Length > 0)));
        }

        if (!string.IsNullOrWhiteSpace(programme.Why))
        {
            yield return (words[RecordTexts.Reason], programme.Why);
        }
    }

    // What the drum held while the programme was in force, and since when where that changed.
    private static string? ProductsOf(RecordWords words, WaterSystem system, string drum, DateOnly from, DateOnly to)
    {
        if (PartsOnDay.DrumOn(system, drum, from) is not { } first)
        {
            return null;
        }

        var (names, last) = (words.Product(first.Product), first.Product);
        foreach (var renewed in system.Drums.Where(known => known.Code.Equals(drum, StringComparison.OrdinalIgnoreCase) && known.From > from && known.From <= to).OrderBy(known => known.From))
        {
            if (!renewed.Product.Equals(last, StringComparison.OrdinalIgnoreCase))
            {
                (names, last) = ($"{names} → {words.Product(renewed.Product)} ({words.Day(renewed.From!.Value)})", renewed.Product);
            }
        }

        return names;
    }
}
