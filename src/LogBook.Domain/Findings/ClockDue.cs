using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A visit or a test that a rule asks for is overdue.</summary>
/// <remarks>
/// Visits: late when more than 25 % and at least two days over the interval have passed within the operating season. Tests of a
/// rule: the last fifth of the interval is "watch", overdue is "plan", overdue under an authority's rule "act". A sample whose
/// result is still to come counts as taken. Events, tasks and retests are not looked at here.
/// </remarks>
public sealed class ClockDue : IDailyRule
{
    private const int LongestLookBack = 60;

    private static readonly Text VisitLate = new(
        "The last visit was {0} days ago; the interval is {1} days (late from {2} days on, {3}).",
        "La última visita fue hace {0} días; el intervalo es de {1} días (tarde desde {2} días, {3}).",
        "A última visita foi há {0} dias; o intervalo é de {1} dias (atrasada a partir de {2} dias, {3}).");

    private static readonly Text TestOverdue = new(
        "{0}: {1} was last sampled {2} days ago; every {3} days is asked for.",
        "{0}: {1} se muestreó por última vez hace {2} días; se pide cada {3} días.",
        "{0}: {1} foi amostrado pela última vez há {2} dias; pede-se a cada {3} dias.");

    private static readonly Text TestDueSoon = new(
        "{0}: {1} is due in {2} days; every {3} days is asked for.",
        "{0}: {1} vence en {2} días; se pide cada {3} días.",
        "{0}: {1} vence em {2} dias; pede-se a cada {3} dias.");

    private static readonly Text Passed = new("days since the last one", "días desde el último", "dias desde o último");

    private static readonly Said[] VisitNext = [Looks.Say("Plan the visit.", "Planifique la visita.", "Planeje a visita.")];

    private static readonly Said[] TestNext =
    [
        Looks.Say("Take the sample, with time, point and bottle.", "Tome la muestra, con hora, punto y frasco.", "Colha a amostra, com hora, ponto e frasco."),
        Looks.Say("Ask whether a sample was taken and only its record is missing.", "Pregunte si se tomó la muestra y solo falta su registro.", "Pergunte se a amostra foi colhida e só falta o registro."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.ClockDue;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (IsOnSite(visit))
        {
            yield return Verdict.Clear();
        }

        foreach (var verdict in Tests(visit, visit.Day, thresholds))
        {
            yield return verdict;
        }
    }

    /// <inheritdoc />
    public IEnumerable<Verdict> JudgeDay(VisitFacts latest, DateOnly day, FindingThresholds thresholds)
    {
        if (!OperatingDays.Runs(latest.History.System.Operation, day))
        {
            yield break;
        }

        if (VisitVerdict(latest, day, thresholds) is { } late)
        {
            yield return late;
        }

        foreach (var verdict in Tests(latest, day, thresholds).Where(verdict => verdict.Indication is not null))
        {
            yield return verdict;
        }
    }

    private static bool IsOnSite(VisitFacts visit) => visit.Visit.Visit.Kind is not (VisitKind.Result or VisitKind.Delivery);

    private static Verdict? VisitVerdict(VisitFacts latest, DateOnly day, FindingThresholds thresholds)
    {
        // The interval is agreed for the site; a system that is only recorded is not looked at on every visit.
        if (latest.History.System.Kind != SystemKind.OpenRecirculating || latest.History.Site.VisitEveryDays is not { } every || latest.Back().FirstOrDefault(IsOnSite) is not { } last)
        {
            return null;
        }

        // Days of a planned stop or outside the season do not count.
        var passed = OperatingDays.Between(latest.History.System.Operation, last.Day, day);
        var late = every + Math.Max(every * thresholds.VisitLatePercent.Value / 100, thresholds.VisitLateDays.Value);
        return passed <= late
            ? null
            : Verdict.Found(null, new Indication(Severity.Plan, new Said(VisitLate, (double)passed, every, late, thresholds.VisitLatePercent.Basis))
            {
                Evidence = [new EvidenceFigure(Passed, passed, "d", LimitHigh: late)],
                LookAtNext = VisitNext,
            });
    }

    private static IEnumerable<Verdict> Tests(VisitFacts latest, DateOnly day, FindingThresholds thresholds)
    {
        var history = latest.History;
        foreach (var rule in RulesInForce.Of(history, day).Where(rule => rule.Test is not null && rule.EveryDays is > 0))
        {
            var about = new About { Rule = rule.Code };
            var from = LastSampled(latest, rule.Test!) ?? First(latest, rule);
            var passed = rule.OperatingDaysOnly == true ? OperatingDays.Between(history.System.Operation, from, day) : day.DayNumber - from.DayNumber;
            var every = rule.EveryDays!.Value;
            var limit = every + (rule.GraceDays ?? 0);
            if (passed > limit)
            {
                yield return Verdict.Found(about, new Indication(
                    rule.Jurisdiction is null ? Severity.Plan : Severity.Act,
                    new Said(TestOverdue, rule.Name, TestTexts.NameOf(rule.Test!), (double)passed, every))
                {
                    Evidence = [new EvidenceFigure(Passed, passed, "d", LimitHigh: limit)],
                    LookAtNext = TestNext,
                });
            }
            else if (passed > every * (1 - (thresholds.DueSoonPercent.Value / 100)))
            {
                yield return Verdict.Found(about, new Indication(Severity.Watch, new Said(TestDueSoon, rule.Name, TestTexts.NameOf(rule.Test!), limit - passed, every))
                {
                    Evidence = [new EvidenceFigure(Passed, passed, "d", LimitHigh: limit)],
                    LookAtNext = [TestNext[0]],
                });
            }
            else
            {
                yield return Verdict.Clear(about);
            }
        }
    }

    // A result visit may come after later samples: the newest of the last three visits with a sample is the last one.
    private static DateOnly? LastSampled(VisitFacts latest, string test)
    {
        var taken = latest.Back().Take(LongestLookBack)
            .Select(visit => visit.Record.Readings
                .Where(r => r.Test.Equals(test, StringComparison.OrdinalIgnoreCase) && (r.NotTaken is null || r.NotTaken == History.SystemVisit.ResultPending))
                .Select(r => (DateTime?)(r.TakenAt ?? visit.Visit.Visit.Arrived).Utc)
                .Max())
            .Where(moment => moment is not null)
            .Take(3)
            .Max();
        return taken is { } moment ? latest.History.DayOf(moment) : null;
    }

    private static DateOnly First(VisitFacts latest, Rule rule)
    {
        var first = latest.Back().Last().Day;
        var since = latest.History.Firm.Rules.Where(r => r.Code.Equals(rule.Code, StringComparison.OrdinalIgnoreCase)).Min(r => r.From);
        return since > first ? since : first;
    }
}
