using System.Globalization;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>Controller clock or week of the dose plan wrong.</summary>
/// <remarks>Decides at once. An hour off in summer is "watch": some sites keep winter time on purpose.</remarks>
public sealed class ControllerClock : IFindingRule
{
    private const double WinterTimeSlackMin = 5;

    private static readonly Text Off = new(
        "The controller's clock is {0}\u00a0min off (limit {1}\u00a0min, {2}).", "El reloj del controlador difiere {0}\u00a0min (límite {1}\u00a0min, {2}).", "O relógio do controlador difere {0}\u00a0min (limite {1}\u00a0min, {2}).");

    private static readonly Text WinterTime = new(
        "The controller's clock is {0}\u00a0min off: it seems to keep winter time.", "El reloj del controlador difiere {0}\u00a0min: parece seguir en hora de invierno.", "O relógio do controlador difere {0}\u00a0min: parece seguir o horário de inverno.");

    private static readonly Text WrongDay = new(
        "The controller's clock is {0}\u00a0min off and shows another day: doses run on the wrong day.", "El reloj del controlador difiere {0}\u00a0min y muestra otro día: las dosis van en el día equivocado.", "O relógio do controlador difere {0}\u00a0min e mostra outro dia: as doses vão no dia errado.");

    private static readonly Text WrongWeek = new(
        "The controller is in week {0} of the dose plan, the calendar in week {1}.", "El controlador está en la semana {0} del plan de dosis, el calendario en la {1}.", "O controlador está na semana {0} do plano de dose, o calendário na {1}.");

    private static readonly Text DoseMoved = new(
        "The controller's clock is {0}\u00a0min off: a dose moves out of the hours in which the plant runs.", "El reloj del controlador difiere {0}\u00a0min: una dosis sale de las horas en que marcha la planta.", "O relógio do controlador difere {0}\u00a0min: uma dose sai das horas em que a planta funciona.");

    private static readonly Text Difference = new("controller minus true time", "controlador menos hora real", "controlador menos hora real");
    private static readonly Text Week = new("week of the dose plan shown", "semana del plan de dosis mostrada", "semana do plano de dose mostrada");

    private static readonly Said[] Next =
    [
        Looks.Say("Set clock, date and week; write down what they were.", "Ajuste hora, fecha y semana; anote lo que había.", "Acerte hora, data e semana; anote o que havia."),
        Looks.Say("Look up when the last doses really ran.", "Averigüe cuándo se aplicaron de verdad las últimas dosis.", "Veja quando as últimas doses foram de fato aplicadas."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.ControllerClock;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Record.ClockOffByMin is null && visit.Record.ProgrammeWeek is null)
        {
            yield break;
        }

        yield return Of(visit, thresholds) is { } indication ? Verdict.Found(null, indication) : Verdict.Clear();
    }

    private static Indication? Of(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Record.ProgrammeWeek is { } shown && WeekOf(visit) is { } week && shown != week)
        {
            return new Indication(Severity.Act, new Said(WrongWeek, (double)shown, (double)week))
            {
                Evidence = [new EvidenceFigure(Week, shown, "1", LimitLow: week, LimitHigh: week)],
                LookAtNext = Next,
            };
        }

        if (visit.Record.ClockOffByMin is not { } off || Math.Abs(off) <= thresholds.ClockMinutes.Value)
        {
            return null;
        }

        var local = TimeZoneInfo.ConvertTimeFromUtc(visit.Visit.At, visit.History.Zone);
        var (severity, said) = (local, off) switch
        {
            _ when local.AddMinutes(off).Date != local.Date && Math.Abs(off) > 12 * 60 => (Severity.Act, new Said(WrongDay, off)),
            _ when IsWinterTime(visit, local, off) => (Severity.Watch, new Said(WinterTime, off)),
            _ when MovesADose(visit, off) => (Severity.Act, new Said(DoseMoved, off)),
            _ => (Severity.Plan, new Said(Off, off, thresholds.ClockMinutes.Value, thresholds.ClockMinutes.Basis)),
        };
        return new Indication(severity, said)
        {
            Evidence = [new EvidenceFigure(Difference, off, "min", LimitLow: -thresholds.ClockMinutes.Value, LimitHigh: thresholds.ClockMinutes.Value)],
            LookAtNext = Next,
        };
    }

    private static bool IsWinterTime(VisitFacts visit, DateTime local, double off) =>
        Math.Abs(off + 60) <= WinterTimeSlackMin && visit.History.Zone.IsDaylightSavingTime(local);

    private static int? WeekOf(VisitFacts visit)
    {
        if (visit.Programme is not { } programme || !programme.Feeds.Any(feed => feed.Mode == FeedMode.DosePlan))
        {
            return null;
        }

        return PlanCalendar.Week(programme, visit.Day);
    }

    // True start = wall time on the programme minus what the controller is ahead.
    private static bool MovesADose(VisitFacts visit, double off)
    {
        if (visit.History.System.Operation is not { Week.Count: > 0 } operation)
        {
            return false;
        }

        foreach (var feed in visit.Programme?.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan) ?? [])
        {
            foreach (var start in feed.Starts)
            {
                if (!TimeOnly.TryParseExact(start, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
                {
                    continue;
                }

                foreach (var day in feed.Days)
                {
                    var minute = ((int)day * 24 * 60) + (time.Hour * 60) + time.Minute;
                    if (RunsAt(operation, minute) && !RunsAt(operation, minute - off))
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }

    private static bool RunsAt(Operation operation, double minuteOfWeek)
    {
        const double week = 7 * 24 * 60;
        var minute = ((minuteOfWeek % week) + week) % week;
        return operation.Week.Any(hours => hours.Days.Any(day =>
        {
            var from = ((int)day * 24 * 60) + Minutes(hours.From);
            var to = ((int)day * 24 * 60) + Minutes(hours.To);
            to = to <= from ? to + (24 * 60) : to;
            return (minute >= from && minute < to) || (minute + week >= from && minute + week < to);
        }));
    }

    private static int Minutes(string time) =>
        (int.Parse(time.AsSpan(0, 2), CultureInfo.InvariantCulture) * 60) + int.Parse(time.AsSpan(3, 2), CultureInfo.InvariantCulture);
}
