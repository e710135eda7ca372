using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>What rules asked for: in sum, each gap, and in full.</summary>
internal static class ClockTables
{
    public static RecordTable Summary(RecordWords words) => new(
        RecordTexts.Clocks,
        [
            new(RecordTexts.System, 0.8), new(RecordTexts.Rule, 2.2), new(RecordTexts.RuleVersion, 1.2), new(RecordTexts.Jurisdiction, 1.2), new(RecordTexts.Asks, 2.8), new(RecordTexts.Met, 0.8, IsFigure: true),
            new(RecordTexts.Missed, 1, IsFigure: true), new(RecordTexts.Running, 1, IsFigure: true), new(RecordTexts.Unknown, 2),
        ],
        [.. Agreed(words), .. words.Pack.Systems.SelectMany(system => system.Rules.SelectMany(record => record.Versions.Select(version => VersionOf(words, system, record, version))))],
        RecordTexts.ClocksIntro);

    public static RecordTable Gaps(RecordWords words) => new(
        RecordTexts.Gaps,
        [
            new(RecordTexts.System, 0.8), new(RecordTexts.Rule, 2.2), new(RecordTexts.RuleVersion, 1.2), new(RecordTexts.Standing, 1.2), new(RecordTexts.Since, 1.2), new(RecordTexts.LastInTime, 1.2), new(RecordTexts.DoneOn, 1.4),
            new(RecordTexts.DaysOver, 0.8, IsFigure: true),
        ],
        [
            .. words.Pack.Promises.Where(spell => spell.Standing == RuleStanding.Missed).Select(spell => SpellOf(words, "", words[RecordTexts.AgreedVisits], spell, withVersion: false)),
            .. words.Pack.Systems.SelectMany(system => system.Rules.SelectMany(record => GapsOf(words, system, record))),
        ],
        RecordTexts.GapsIntro);

    public static RecordTable Spells(RecordWords words) => new(
        RecordTexts.Spells,
        [
            new(RecordTexts.System, 0.8), new(RecordTexts.Rule, 2.2), new(RecordTexts.RuleVersion, 1.2), new(RecordTexts.Standing, 1.2), new(RecordTexts.Since, 1.2), new(RecordTexts.LastInTime, 1.2), new(RecordTexts.DoneOn, 1.4),
            new(RecordTexts.DaysOver, 0.8, IsFigure: true),
        ],
        [
            .. words.Pack.Promises.Select(spell => SpellOf(words, "", words[RecordTexts.AgreedVisits], spell, withVersion: false)),
            .. words.Pack.Systems.SelectMany(system => system.Rules.SelectMany(record => record.Spells.Select(spell => SpellOf(words, system.History.System.Code, NameOf(spell.Rule), spell)))),
        ],
        IsOnPaper: false);

    private static IEnumerable<RecordRow> Agreed(RecordWords words)
    {
        if (words.Pack.Site.VisitEveryDays is { } every)
        {
            yield return new RecordRow(
            [
                "", words[RecordTexts.AgreedVisits], null, "", words[RecordTexts.Every, words[RecordTexts.Visit], every],
                words.Pack.Promises.Count(spell => spell.Standing == RuleStanding.Met), words.Pack.Promises.Count(spell => spell.Standing == RuleStanding.Missed), words.Pack.Promises.Count(spell => spell.Standing == RuleStanding.Running), "",
            ]);
        }
    }

    private static RecordRow VersionOf(RecordWords words, PackSystem system, RuleRecord record, Rule version)
    {
        var own = record.Spells.Where(spell => spell.Rule.From == version.From).ToList();
        int Count(RuleStanding standing) => own.Count(spell => spell.Standing == standing);
        var unknown = record.IsWithoutClock ? words[RecordTexts.NoClock]
            : record.Unknown is { } gap && version.From <= gap.To ? $"{words[RecordTexts.FromTo, words.Day(gap.From), words.Day(gap.To)]}: {words[RecordTexts.NoRecords]}" : "";
        return new RecordRow([system.History.System.Code, NameOf(version), version.From, version.Jurisdiction ?? "", Asks(words, version), Count(RuleStanding.Met), Count(RuleStanding.Missed), Count(RuleStanding.Running), unknown]);
    }

    private static IEnumerable<RecordRow> GapsOf(RecordWords words, PackSystem system, RuleRecord record)
    {
        var code = system.History.System.Code;
        if (record.IsWithoutClock)
        {
            yield return new RecordRow([code, NameOf(record.Versions[^1]), record.Versions[^1].From, words[RecordTexts.Unknown], null, null, words[RecordTexts.NoClock], null]);
        }
        else if (record.Unknown is { } gap)
        {
            yield return new RecordRow([code, NameOf(record.Versions[0]), record.Versions[0].From, words[RecordTexts.Unknown], gap.From, gap.To, words[RecordTexts.NoRecords], null]);
        }

        foreach (var spell in record.Spells.Where(spell => spell.Standing == RuleStanding.Missed))
        {
            yield return SpellOf(words, code, NameOf(spell.Rule), spell);
        }
    }

    private static RecordRow SpellOf(RecordWords words, string system, string name, RuleSpell spell, bool withVersion = true) => new(
    [
        system, name, withVersion ? spell.Rule.From : null, words[RecordTexts.NameOf(spell.Standing)], spell.Since, spell.DueBy, spell.DoneOn is { } done ? done : words[RecordTexts.NotDone],
        spell.DaysOver > 0 ? spell.DaysOver : null,
    ]);

    private static string NameOf(Rule rule) => rule.Name == rule.Code ? rule.Code : $"{rule.Code} {rule.Name}";

    private static string Asks(RecordWords words, Rule rule)
    {
        var what = rule.Task ?? (rule.Test is { } test ? words.Test(test) : words[RecordTexts.Sample]);
        var asked = rule.OnEvent is { } named
            ? words[RecordTexts.After, what, rule.WithinDays ?? rule.EveryDays, NameOfEvent(words, named)]
            : rule.EveryDays is { } every ? words[RecordTexts.Every, what, every] : what;
        string?[] parts =
        [
            asked,
            rule.GraceDays is { } grace and > 0 ? words[RecordTexts.Grace, grace] : null,
            rule.OperatingDaysOnly == true ? words[RecordTexts.OperatingDays] : null,
            rule.KeepYears is { } years ? words[RecordTexts.KeptFor, years] : null,
            rule.RetestDays.Count > 0 && rule.Test is not null ? words[RecordTexts.Retest, what, rule.RetestDays[0], rule.RetestDays[^1]] : null,
        ];
        return string.Join("; ", parts.Where(part => part is not null));
    }

    private static string NameOfEvent(RecordWords words, string named) =>
        Enum.TryParse<EventType>(named.Replace("-", "", StringComparison.Ordinal), ignoreCase: true, out var type) ? words[VisitTexts.NameOf(type)] : named;
}
