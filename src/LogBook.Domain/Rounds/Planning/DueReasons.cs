using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>Why and by when somebody should be at a site: all its clocks, the most urgent first.</summary>
/// <remarks>
/// A visit counts from the last one by the interval agreed, never by calendar month. Duties of authorities and contracts are due on
/// their last day in time, a retest within its window, a drum on the earliest day of its run-out range, an open action on the day
/// promised, as long as nobody has been there since: what was left open then is told by the site's card. A finding of severity act wants somebody from the day it was seen until a person answers it. Findings about a clock, a drum or
/// a mail are left out: the clock and the drum speak for themselves, and nobody drives to a site for a mail.
/// </remarks>
public static class DueReasons
{
    private static readonly string[] SpeakForThemselves = [FindingKinds.ClockDue, FindingKinds.RunsOut, FindingKinds.SummaryUndelivered];

    private static readonly Text InSystem = new("{0}: {1}", "{0}: {1}", "{0}: {1}");
    private static readonly Text Interval = new("every {0} days, last visit {1}", "cada {0} días, última visita {1}", "a cada {0} dias, última visita {1}");
    private static readonly Text ByRule = new("{0}: {1} by {2}", "{0}: {1} hasta el {2}", "{0}: {1} até {2}");
    private static readonly Text AfterEvent = new("{0}: {1} on {2}, what follows by {3}", "{0}: {1} el {2}, lo que sigue hasta el {3}", "{0}: {1} em {2}, o que segue até {3}");
    private static readonly Text Again = new("{0}: {1} again from {2} to {3}", "{0}: {1} de nuevo del {2} al {3}", "{0}: {1} de novo de {2} a {3}");
    private static readonly Text RunsOut = new("drum of {0} ({1}) runs out about {2} to {3}", "el bidón de {0} ({1}) se agota hacia {2} a {3}", "a bombona de {0} ({1}) acaba por volta de {2} a {3}");
    private static readonly Text RunsOutFrom = new("drum of {0} ({1}) runs out from about {2}", "el bidón de {0} ({1}) se agota desde cerca del {2}", "a bombona de {0} ({1}) acaba a partir de {2}");
    private static readonly Text IsEmpty = new("drum of {0} ({1}) was at its heel on {2}", "el bidón de {0} ({1}) estaba en su fondo el {2}", "a bombona de {0} ({1}) estava no fundo em {2}");
    private static readonly Text Promised = new("promised by {0}: {1}", "prometido para el {0}: {1}", "prometido para {0}: {1}");
    private static readonly Text Open = new("{0}, open since {1}", "{0}, abierto desde el {1}", "{0}, em aberto desde {1}");

    /// <summary>The clocks of a site.</summary>
    /// <param name="lastVisit">Day of the last visit that looked at the plant; null before the first.</param>
    /// <param name="everyDays">Interval agreed, days; null where none is.</param>
    /// <param name="systems">Systems in use: code, when it runs, and what lies ahead of it.</param>
    /// <param name="findings">Findings of severity act that nobody has answered.</param>
    /// <param name="today">Day at the site.</param>
    /// <returns>By day, then by kind; empty where nothing runs.</returns>
    public static IReadOnlyList<DueReason> Of(
        DateOnly? lastVisit,
        double? everyDays,
        IReadOnlyList<(string Code, Operation? Operation, SystemAhead Ahead)> systems,
        IReadOnlyList<OpenActFinding> findings,
        DateOnly today)
    {
        var operations = systems.Select(system => system.Operation).ToList();
        var all = new List<DueReason>();
        if (lastVisit is { } last && everyDays is { } every && VisitDue.On(last, every, operations) is { } due)
        {
            all.Add(new DueReason(DueKind.Visit, due, null, new Said(Interval, every, last), VisitDue.IsLate(last, every, operations, today)));
        }

        foreach (var (code, operation, ahead) in systems)
        {
            var of = systems.Count > 1 ? code : null;
            all.AddRange(ahead.Duties.Select(duty => Of(duty, code, of, today)));
            all.AddRange(ahead.Promises.Where(promise => lastVisit is not { } seen || seen <= promise.Due).Select(promise => Make(DueKind.Promise, promise.Due, code, of, new Said(Promised, promise.Due, promise.Text), today > promise.Due)));

            // A plant that stands uses nothing, whatever its last weeks of running were like.
            if (OperatingDays.Runs(operation, today))
            {
                all.AddRange(ahead.Drums.Select(drum => Of(drum, code, of, today)).OfType<DueReason>());
            }
        }

        foreach (var finding in findings.Where(finding => !SpeakForThemselves.Contains(finding.Kind)))
        {
            var of = systems.Count > 1 ? finding.System : null;
            all.Add(Make(DueKind.Finding, finding.FirstSeen, finding.System, of, new Said(Open, FindingTexts.NameOf(finding.Kind), finding.FirstSeen), false));
        }

        return [.. all.OrderBy(reason => reason.Day).ThenBy(reason => reason.Kind).ThenBy(reason => reason.System, StringComparer.Ordinal)];
    }

    private static DueReason Of(DutyAhead duty, string code, string? of, DateOnly today)
    {
        object what = duty.Test is { } test ? TestTexts.NameOf(test) : duty.Task ?? duty.Name;
        var (kind, words) = duty.Kind switch
        {
            DutyKind.Retest => (DueKind.Retest, new Said(Again, duty.Name, what, duty.NotBefore ?? duty.Since, duty.LastDay)),
            DutyKind.AfterEvent => (DueKind.AfterEvent, new Said(AfterEvent, duty.Name, VisitTexts.NameOf(duty.Event!.Value), duty.Since, duty.LastDay)),
            _ => (DueKind.Duty, new Said(ByRule, duty.Name, what, duty.LastDay)),
        };
        return Make(kind, duty.LastDay, code, of, words, today > duty.LastDay);
    }

    private static DueReason? Of(DrumAhead drum, string code, string? of, DateOnly today) => drum switch
    {
        { StockL: <= 0 } => Make(DueKind.Drum, drum.ReadOn, code, of, new Said(IsEmpty, drum.Product, drum.Drum, drum.ReadOn), true),
        { From: { } from, To: { } to } => Make(DueKind.Drum, from, code, of, new Said(RunsOut, drum.Product, drum.Drum, from, to), today > to),
        { From: { } from } => Make(DueKind.Drum, from, code, of, new Said(RunsOutFrom, drum.Product, drum.Drum, from), false),
        _ => null,
    };

    private static DueReason Make(DueKind kind, DateOnly day, string? code, string? of, Said words, bool isLate) =>
        new(kind, day, code, of is null ? words : new Said(InSystem, of, words), isLate);
}
