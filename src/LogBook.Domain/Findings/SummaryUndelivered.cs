using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A visit summary that came back, or that the mail server has not taken in time.</summary>
/// <remarks>
/// A message that came back counts at once, one that is not accepted after 24 hours; once the time that was promised for the site has
/// passed without an accepted message it wants somebody at once. That a message was opened would prove nothing and is not looked at.
/// </remarks>
internal static class SummaryUndelivered
{
    private static readonly Text Returned = new(
        "The summary of the visit of {0} came back or was given up.",
        "El resumen de la visita del {0} fue devuelto o se abandonó su envío.",
        "O resumo da visita de {0} voltou ou seu envio foi abandonado.");

    private static readonly Text Waits = new(
        "The summary of the visit of {0} has not been accepted by the mail server for {1} hours.",
        "El servidor de correo no ha aceptado en {1} horas el resumen de la visita del {0}.",
        "O servidor de correio não aceitou em {1} horas o resumo da visita de {0}.");

    private static readonly Text Promised = new(
        "The summary of the visit of {0} was promised within {1} hours, and none has been accepted by the mail server.",
        "El resumen de la visita del {0} se prometió en {1} horas y el servidor de correo no ha aceptado ninguno.",
        "O resumo da visita de {0} foi prometido em {1} horas, e o servidor de correio não aceitou nenhum.");

    private static readonly Text PromisedByDay = new(
        "The summary of the visit of {0} was promised by {1}, and none has been accepted by the mail server.",
        "El resumen de la visita del {0} se prometió para el {1} y el servidor de correo no ha aceptado ninguno.",
        "O resumo da visita de {0} foi prometido até {1}, e o servidor de correio não aceitou nenhum.");

    private static readonly Text Hours = new("hours since it was handed over", "horas desde que se entregó al envío", "horas desde a entrega ao envio");

    private static readonly Said[] Next =
    [
        Looks.Say("Check the address, then send it again.", "Compruebe la dirección y envíelo otra vez.", "Confira o endereço e envie de novo."),
        Looks.Say("Tell the customer by another way.", "Avise al cliente por otra vía.", "Avise o cliente por outra via."),
    ];

    /// <summary>What became of the matter over time: a ledger of its own, because it hangs on mails alone and nothing hangs on it.</summary>
    /// <param name="history">The system.</param>
    /// <param name="deliveries">What is known of the summaries of its site.</param>
    /// <param name="closed">What people closed.</param>
    /// <param name="asOf">Moment, UTC; what happens later is not looked at.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>The ledger.</returns>
    public static FindingLedger Ledger(SystemHistory history, IReadOnlyList<SummaryDelivery> deliveries, IReadOnlyList<FindingAnswer> closed, DateTime asOf, FindingThresholds thresholds)
    {
        var ledger = new FindingLedger(history.Site.Code, history.System.Code);
        if (deliveries.Count == 0)
        {
            return ledger;
        }

        var left = new Dictionary<Guid, DateTime>();
        foreach (var version in history.Versions)
        {
            left.TryAdd(version.Visit.Id, (version.Visit.Left ?? version.Visit.EnteredAt ?? version.Visit.Arrived).Utc);
        }

        var mails = deliveries.Where(mail => left.ContainsKey(mail.VisitId)).OrderBy(mail => mail.Handed).ToList();
        var byVisit = mails.ToLookup(mail => mail.VisitId);
        var (handed, waiting) = (0, new List<SummaryDelivery>());
        foreach (var (moment, answer) in Steps(history, mails, left, closed, thresholds).Where(step => step.Moment <= asOf))
        {
            var day = history.DayOf(moment);
            if (answer is not null)
            {
                ledger.Close(answer, day);
                continue;
            }

            for (; handed < mails.Count && mails[handed].Handed <= moment; handed++)
            {
                waiting.Add(mails[handed]);
            }

            waiting.RemoveAll(mail => mail.Accepted <= moment);
            var verdict = At(history, [.. waiting.Select(mail => mail.VisitId).Distinct().Select(id => (byVisit[id].Where(mail => mail.Handed <= moment).ToList(), left[id]))], moment, thresholds);
            ledger.Apply(FindingKinds.SummaryUndelivered, verdict, verdict.Indication?.Severity ?? Severity.Watch, day, day, null);
        }

        return ledger;
    }

    // Moments at which the matter may change, and people's answers, which come first within a moment.
    private static IEnumerable<(DateTime Moment, FindingAnswer? Answer)> Steps(
        SystemHistory history, IReadOnlyList<SummaryDelivery> mails, IReadOnlyDictionary<Guid, DateTime> left, IReadOnlyList<FindingAnswer> closed, FindingThresholds thresholds) => mails
        .SelectMany(mail => new[]
        {
            mail.Accepted, mail.Refused, mail.Handed.AddHours(thresholds.SummaryHours.Value),
            SummaryPromise.DueOf(history.Site, history.Zone, left[mail.VisitId]),
        })
        .OfType<DateTime>()
        .Distinct()
        .Select(moment => (Moment: moment, Answer: (FindingAnswer?)null))
        .Concat(closed.Where(answer => answer.Kind == FindingKinds.SummaryUndelivered).OrderBy(answer => answer.AboutKey, StringComparer.Ordinal).Select(answer => (Moment: answer.At, Answer: (FindingAnswer?)answer)))
        .OrderBy(step => step.Moment).ThenBy(step => step.Answer is null);

    // The oldest visit whose summary is out.
    private static Verdict At(SystemHistory history, IReadOnlyList<(List<SummaryDelivery> Mails, DateTime Left)> visits, DateTime moment, FindingThresholds thresholds)
    {
        var worst = visits
            .Select(visit => Of(history, visit.Mails, visit.Left, moment, thresholds))
            .OfType<(Indication Shown, Guid Visit, DateTime Left)>()
            .OrderByDescending(one => one.Shown.Severity).ThenBy(one => one.Left).ThenBy(one => one.Visit)
            .Cast<(Indication Shown, Guid Visit, DateTime Left)?>()
            .FirstOrDefault();
        return worst is { } found ? Verdict.Found(null, found.Shown, shownBy: found.Visit) : Verdict.Clear();
    }

    private static (Indication Shown, Guid Visit, DateTime Left)? Of(SystemHistory history, IReadOnlyList<SummaryDelivery> mails, DateTime left, DateTime moment, FindingThresholds thresholds)
    {
        var waiting = mails.Where(mail => mail.Accepted is not { } accepted || accepted > moment).ToList();
        if (waiting.Count == 0)
        {
            return null;
        }

        var oldest = waiting.MinBy(mail => mail.Handed)!;
        var hours = (moment - oldest.Handed).TotalHours;
        var promised = SummaryPromise.DueOf(history.Site, history.Zone, left) is { } due && moment >= due && waiting.Count == mails.Count ? (due - left).TotalHours : (double?)null;
        var promisedDay = SummaryPromise.DayOf(history.Site, history.Zone, left);
        var returned = waiting.Exists(mail => mail.Refused is { } refused && refused <= moment);
        if (promised is null && !returned && hours < thresholds.SummaryHours.Value)
        {
            return null;
        }

        var day = history.DayOf(left);
        return (
            new Indication(
                promised is null ? Severity.Plan : Severity.Act,
                promised is not null && promisedDay is { } named ? new Said(PromisedByDay, day, named) : promised is { } limit ? new Said(Promised, day, limit) : returned ? new Said(Returned, day) : new Said(Waits, day, Math.Floor(hours)))
            {
                Evidence = [new EvidenceFigure(Hours, hours, "h", LimitHigh: promised ?? thresholds.SummaryHours.Value)],
                LookAtNext = Next,
            },
            oldest.VisitId,
            left);
    }
}
