using LogBook.Domain.Assessments;
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

    private static readonly Text Hours = new("hours since it was handed over", "horas desde que se entregó al envío", "horas desde a entrega ao envio");

    private static readonly Said[] Next =
    [
        Looks.Say("Check the address, then send it again.", "Compruebe la dirección y envíelo otra vez.", "Confira o endereço e envie de novo."),
        Looks.Say("Tell the customer by another way.", "Avise al cliente por otra vía.", "Avise o cliente por outra via."),
    ];

    /// <summary>Moments at which the matter is judged.</summary>
    /// <param name="history">The system.</param>
    /// <param name="deliveries">What is known of its summaries.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>UTC, without repeats.</returns>
    public static IEnumerable<DateTime> Moments(SystemHistory history, IReadOnlyList<SummaryDelivery> deliveries, FindingThresholds thresholds) => deliveries
        .Where(mail => history.Versions.Any(version => version.Visit.Id == mail.VisitId))
        .SelectMany(mail => new[]
        {
            mail.Accepted, mail.Refused, mail.Handed.AddHours(thresholds.SummaryHours.Value),
            history.Site.SummaryWithinHours is { } promised ? LeftOf(history, mail).AddHours(promised) : null,
        })
        .OfType<DateTime>()
        .Distinct();

    /// <summary>The verdict at a moment: the oldest visit whose summary is out.</summary>
    /// <param name="history">The system.</param>
    /// <param name="deliveries">What is known of its summaries.</param>
    /// <param name="moment">UTC.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    /// <returns>Found or clear.</returns>
    public static Verdict At(SystemHistory history, IReadOnlyList<SummaryDelivery> deliveries, DateTime moment, FindingThresholds thresholds)
    {
        var worst = deliveries
            .Where(mail => mail.Handed <= moment && history.Versions.Any(version => version.Visit.Id == mail.VisitId))
            .GroupBy(mail => mail.VisitId)
            .Select(visit => Of(history, [.. visit], moment, thresholds))
            .OfType<(Indication Shown, Guid Visit, DateTime Left)>()
            .OrderByDescending(one => one.Shown.Severity).ThenBy(one => one.Left).ThenBy(one => one.Visit)
            .Cast<(Indication Shown, Guid Visit, DateTime Left)?>()
            .FirstOrDefault();
        return worst is { } found ? Verdict.Found(null, found.Shown, shownBy: found.Visit) : Verdict.Clear();
    }

    private static (Indication Shown, Guid Visit, DateTime Left)? Of(SystemHistory history, IReadOnlyList<SummaryDelivery> mails, DateTime moment, FindingThresholds thresholds)
    {
        var waiting = mails.Where(mail => mail.Accepted is not { } accepted || accepted > moment).ToList();
        if (waiting.Count == 0)
        {
            return null;
        }

        var oldest = waiting.MinBy(mail => mail.Handed)!;
        var hours = (moment - oldest.Handed).TotalHours;
        var left = LeftOf(history, oldest);
        var promised = history.Site.SummaryWithinHours is { } within && moment >= left.AddHours(within) && waiting.Count == mails.Count ? within : (double?)null;
        var returned = waiting.Exists(mail => mail.Refused is { } refused && refused <= moment);
        if (promised is null && !returned && hours < thresholds.SummaryHours.Value)
        {
            return null;
        }

        var day = history.DayOf(left);
        return (
            new Indication(
                promised is null ? Severity.Plan : Severity.Act,
                promised is { } limit ? new Said(Promised, day, limit) : returned ? new Said(Returned, day) : new Said(Waits, day, Math.Floor(hours)))
            {
                Evidence = [new EvidenceFigure(Hours, hours, "h", LimitHigh: promised ?? thresholds.SummaryHours.Value)],
                LookAtNext = Next,
            },
            oldest.VisitId,
            left);
    }

    private static DateTime LeftOf(SystemHistory history, SummaryDelivery mail)
    {
        var visit = history.Versions.First(version => version.Visit.Id == mail.VisitId).Visit;
        return (visit.Left ?? visit.EnteredAt ?? visit.Arrived).Utc;
    }
}
