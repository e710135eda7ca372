using System.Globalization;
using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A visit or a test that a rule asks for is overdue.</summary>
/// <remarks>
/// Visits: late when more than 25 % and at least two days over the interval have passed within the operating season. Tests,
/// tasks, duties after an event and retests of a rule: the last fifth of the time is "watch", overdue is "plan", overdue under
/// an authority's rule "act". An authority that must be told of a result: "plan" from receipt, "act" from the day on which the
/// countdown falls below six hours. What runs, and from when, is worked out by <see cref="Clocks.Duties"/>.
/// </remarks>
public sealed class ClockDue : IDailyRule, IReadsCounts
{
    // Laboratories answer within two weeks or so; at daily visits that is fifteen of them.
    private const int VisitsWithLateResults = 15;

    internal const string Notify = "notify";

    private static readonly Text VisitLate = new(
        "The last visit was {0} days ago; the interval is {1} days (late from {2} days on, {3}).",
        "La última visita fue hace {0} días; el intervalo es de {1} días (tarde desde {2} días, {3}).",
        "A última visita foi há {0} dias; o intervalo é de {1} dias (atrasada a partir de {2} dias, {3}).");

    private static readonly Text TestOverdue = new(
        "{0}: {1} was last sampled {2} days ago; every {3} days is asked for.",
        "{0}: {1} se muestreó por última vez hace {2} días; se pide cada {3} días.",
        "{0}: {1} foi amostrado pela última vez há {2} dias; pede-se a cada {3} dias.");

    private static readonly Text TestDueSoon = new(
        "{0}: {1} is due by {2}; every {3} days is asked for.",
        "{0}: {1} vence el {2}; se pide cada {3} días.",
        "{0}: {1} vence em {2}; pede-se a cada {3} dias.");

    private static readonly Text EventOverdue = new(
        "{0}: {1} on {2}; {3} days are allowed for what follows, {4} have passed.",
        "{0}: {1} el {2}; se permiten {3} días para lo que sigue y han pasado {4}.",
        "{0}: {1} em {2}; são permitidos {3} dias para o que segue e passaram {4}.");

    private static readonly Text EventDueSoon = new(
        "{0}: {1} on {2}; {3} days are allowed for what follows, up to {4}.",
        "{0}: {1} el {2}; se permiten {3} días para lo que sigue, hasta el {4}.",
        "{0}: {1} em {2}; são permitidos {3} dias para o que segue, até {4}.");

    private static readonly Text RetestOverdue = new(
        "{0}: {1} was to be tested again from {2} to {3}; no such sample is on record.",
        "{0}: {1} debía repetirse del {2} al {3}; no consta esa muestra.",
        "{0}: {1} devia ser repetido de {2} a {3}; essa amostra não consta.");

    private static readonly Text RetestEarly = new(
        "{0}: {1} was sampled again on {2}, before the time asked for ({3} to {4}).",
        "{0}: {1} se volvió a muestrear el {2}, antes del plazo pedido ({3} a {4}).",
        "{0}: {1} foi amostrado de novo em {2}, antes do prazo pedido ({3} a {4}).");

    private static readonly Text RetestDueSoon = new(
        "{0}: {1} is to be tested again from {2} to {3}.",
        "{0}: {1} debe repetirse del {2} al {3}.",
        "{0}: {1} deve ser repetido de {2} a {3}.");

    private static readonly Text NotifyOverdue = new(
        "{0}: {1} was received on {2}; the authority was to be told by {3} {4}, and no notification is on record.",
        "{0}: {1} se recibió el {2}; había que avisar a la autoridad antes del {3} {4} y no consta ningún aviso.",
        "{0}: {1} foi recebido em {2}; a autoridade devia ser avisada até {3} {4}, e nenhum aviso consta.");

    private static readonly Text NotifyOpen = new(
        "{0}: {1} was received on {2}; the authority must be told by {3} {4}.",
        "{0}: {1} se recibió el {2}; hay que avisar a la autoridad antes del {3} {4}.",
        "{0}: {1} foi recebido em {2}; a autoridade deve ser avisada até {3} {4}.");

    private static readonly Said[] NotifyNext =
    [
        Looks.Say("Notify as the authority's table says, and record who told whom, when and how.", "Avise como dice la tabla de la autoridad y registre quién avisó a quién, cuándo y cómo.", "Avise como diz a tabela da autoridade e registre quem avisou a quem, quando e como."),
        Looks.Say(
            "A count is not a diagnosis. Follow the plan of the site.",
            "Un recuento no es un diagnóstico. Siga el plan del sitio.",
            "Uma contagem não é um diagnóstico. Siga o plano do local."),
    ];

    private static readonly Said[] TaskNext =
    [
        Looks.Say("Do the task, or record that it was done.", "Haga la tarea o registre que se hizo.", "Faça a tarefa ou registre que foi feita."),
    ];

    private static readonly Text FromReceipt = new("hours allowed from receipt", "horas permitidas desde la recepción", "horas permitidas desde o recebimento");

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

        foreach (var verdict in Duties(visit, DayKnown(visit), thresholds))
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

        foreach (var duty in latest.DutiesOn(day))
        {
            if (IndicationOf(latest, duty, day, thresholds) is { } shown)
            {
                yield return Verdict.Found(SubjectOf(duty), shown);
            }
        }
    }

    // A result that comes in days after its visit is judged with the clock of that later day: judged by the day of the visit, it
    // would close what has fallen due since, and the next day would open it again.
    private static DateOnly DayKnown(VisitFacts visit)
    {
        var known = visit.LastKnown;
        var at = visit.Previous;
        for (var i = 1; i < VisitsWithLateResults && at is not null; i++, at = at.Previous)
        {
            known = at.LastKnown > known ? at.LastKnown : known;
        }

        var day = visit.History.DayOf(known);
        return day > visit.Day ? day : visit.Day;
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

    private static IEnumerable<Verdict> Duties(VisitFacts latest, DateOnly day, FindingThresholds thresholds)
    {
        foreach (var duty in latest.DutiesOn(day))
        {
            yield return IndicationOf(latest, duty, day, thresholds) is { } shown ? Verdict.Found(SubjectOf(duty), shown) : Verdict.Clear(SubjectOf(duty));
        }
    }

    private static About SubjectOf(Duty duty) => new()
    {
        Rule = duty.Rule.Code,
        Test = duty.Kind == DutyKind.Retest ? duty.Rule.Test : null,
        Task = duty.Kind == DutyKind.Notify ? Notify : null,
    };

    private static Indication? IndicationOf(VisitFacts latest, Duty duty, DateOnly day, FindingThresholds thresholds) =>
        duty.Kind == DutyKind.Notify ? Countdown(latest.History, duty, day, thresholds) : Shown(duty, day, thresholds);

    // A finding is judged once a day: it is urgent from the day in which the last hours begin, also where they end the next morning. How many are
    // left at this minute is for the pages to say.
    private static Indication? Countdown(SystemHistory history, Duty duty, DateOnly day, FindingThresholds thresholds)
    {
        if (duty.NotifiedOn <= day)
        {
            return null;
        }

        var until = TimeZoneInfo.ConvertTimeFromUtc(duty.NotifyBy!.Value, history.Zone);
        var says = new Said(
            duty.IsOverdueOn(day) ? NotifyOverdue : NotifyOpen,
            duty.Rule.Name,
            What(duty.Rule),
            duty.Since,
            DateOnly.FromDateTime(until),
            until.ToString("HH:mm", CultureInfo.InvariantCulture));
        var isUrgent = day >= history.DayOf(duty.NotifyBy!.Value.AddHours(-thresholds.NotifyActHours.Value));
        return new Indication(isUrgent ? Severity.Act : Severity.Plan, says)
        {
            Evidence = [new EvidenceFigure(FromReceipt, (duty.NotifyBy!.Value - duty.ReceivedAt!.Value).TotalHours, "h")],
            LookAtNext = NotifyNext,
        };
    }

    private static Indication? Shown(Duty duty, DateOnly day, FindingThresholds thresholds)
    {
        var passed = duty.PassedOn(day);
        var isOverdue = duty.IsOverdueOn(day);
        if (duty.IsMet || (!isOverdue && passed <= duty.Days * (1 - (thresholds.DueSoonPercent.Value / 100))))
        {
            return null;
        }

        var what = What(duty.Rule);
        var says = duty.Kind switch
        {
            DutyKind.Interval when isOverdue => new Said(TestOverdue, duty.Rule.Name, what, (double)passed, duty.EveryDays!.Value),
            DutyKind.Interval => new Said(TestDueSoon, duty.Rule.Name, what, duty.LastDay, duty.EveryDays!.Value),
            DutyKind.AfterEvent when isOverdue => new Said(EventOverdue, duty.Rule.Name, VisitTexts.NameOf(duty.Event!.Value), duty.Since, duty.Days, (double)passed),
            DutyKind.AfterEvent => new Said(EventDueSoon, duty.Rule.Name, VisitTexts.NameOf(duty.Event!.Value), duty.Since, duty.Days, duty.LastDay),
            _ when isOverdue && duty.TooEarlyOn is { } early => new Said(RetestEarly, duty.Rule.Name, what, early, duty.NotBefore!.Value, duty.Since.AddDays((int)duty.Days)),
            _ when isOverdue => new Said(RetestOverdue, duty.Rule.Name, what, duty.NotBefore!.Value, duty.Since.AddDays((int)duty.Days)),
            _ => new Said(RetestDueSoon, duty.Rule.Name, what, duty.NotBefore!.Value, duty.Since.AddDays((int)duty.Days)),
        };
        // A retest that came too early was still made: said, but nobody is sent for it at once.
        var severity = !isOverdue || duty.TooEarlyOn is not null ? Severity.Watch : duty.Rule.Jurisdiction is null ? Severity.Plan : Severity.Act;
        return new Indication(severity, says)
        {
            Evidence = [new EvidenceFigure(Passed, passed, "d", LimitHigh: duty.Days)],
            LookAtNext = duty.Rule.Task is not null ? TaskNext : isOverdue ? TestNext : [TestNext[0]],
        };
    }

    private static object What(Rule rule) => rule.Test is { } test ? TestTexts.NameOf(test) : rule.Task ?? rule.Name;
}
