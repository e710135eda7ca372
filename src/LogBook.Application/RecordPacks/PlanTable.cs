using LogBook.Domain.Summaries;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
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
            .. words.Pack.Systems.SelectMany(system => InForce(system, words.Pack).SelectMany(programme => FieldsOf(words, system.History.System, programme)
                .Select(field => new RecordRow([system.History.System.Code, programme.From, field.Name, field.Value], $"{system.History.System.Code} {system.History.System.Name} · {words[RecordTexts.RuleVersion]} {words.Day(programme.From)}")))),
        ],
        RecordTexts.PlanIntro);

    private static IEnumerable<Programme> InForce(PackSystem system, RecordPack pack)
    {
        var programmes = system.History.Programmes;
        return programmes.Where((programme, place) => programme.From <= pack.To && (place + 1 >= programmes.Count || programmes[place + 1].From > pack.From));
    }

    private static IEnumerable<(string Name, string Value)> FieldsOf(RecordWords words, WaterSystem system, Programme programme)
    {
        string Setting(string name) => words[VisitTexts.NameOfSetting(name)];
        string Number(double value, string unit) => Shown.Entered(value, unit, words.Language);
        (string Field, double? Value, string Unit)[] numbers =
        [
            ("targetCycles", programme.TargetCycles, "1"), ("setPointUsPerCm", programme.SetPointUsPerCm, "uS/cm"), ("differentialUsPerCm", programme.DifferentialUsPerCm, "uS/cm"),
            ("highAlarmUsPerCm", programme.HighAlarmUsPerCm, "uS/cm"), ("lowAlarmUsPerCm", programme.LowAlarmUsPerCm, "uS/cm"), ("longestBleedMin", programme.LongestBleedMin, "min"),
        ];
        foreach (var (field, value, unit) in numbers)
        {
            if (value is { } number)
            {
                yield return (Setting(field), Number(number, unit));
            }
        }

        foreach (var range in programme.Ranges)
        {
            yield return ($"{words.Test(range.Test)}, {words.Point(range.At)}", ResultWords.RangeOf(range, words.Language) + (range.Basis is null ? "" : " " + range.Basis));
        }

        foreach (var feed in programme.Feeds)
        {
            var product = system.Drums.FirstOrDefault(drum => drum.Code.Equals(feed.Drum, StringComparison.OrdinalIgnoreCase))?.Product;
            (string Field, string? Value)[] parts =
            [
                ("everyL", feed.EveryL is { } every ? Number(every, "L") : null), ("runSeconds", feed.RunSeconds is { } seconds ? Shown.Entered(seconds, words.Language) : null),
                ("cycleMin", feed.CycleMin is { } cycle ? Number(cycle, "min") : null), ("sharePercent", feed.SharePercent is { } share ? Number(share, "%") : null),
                ("setPoint", feed.SetPoint is { } point ? Number(point, feed.Unit ?? "1") : null), ("starts", feed.Starts.Count > 0 ? string.Join(", ", feed.Starts) : null),
                ("weeks", feed.Weeks.Count > 0 ? string.Join(", ", feed.Weeks) : null), ("runMinutes", feed.RunMinutes is { } minutes ? Number(minutes, "min") : null),
                ("holdBleedShutMin", feed.HoldBleedShutMin is { } hold ? Number(hold, "min") : null),
            ];
            yield return (
                $"{words[RecordTexts.Drum]} {feed.Drum}{(product is null ? "" : ", " + words.Product(product))}",
                string.Join("; ", parts.Where(part => part.Value is not null).Select(part => $"{Setting(part.Field)}: {part.Value}")
                    .Prepend(feed.TargetMgPerL is { } target ? Number(target, "mg/L") : "").Where(part => part.Length > 0)));
        }

        if (!string.IsNullOrWhiteSpace(programme.Why))
        {
            yield return (words[RecordTexts.Reason], programme.Why);
        }
    }
}
