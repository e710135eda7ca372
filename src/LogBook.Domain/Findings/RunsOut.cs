using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A drum that is likely to be empty before the next visit.</summary>
/// <remarks>
/// Heel below the suction is not counted, spare on site is; days of a stop or out of season use nothing. The next visit is the last one plus the interval agreed (else the
/// system's own); when that day has passed, tomorrow.
/// </remarks>
public sealed class RunsOut : IDailyRule
{
    private static readonly Text Says = new(
        "Drum {0} runs out about {1} to {2}; chance of empty before {3}: {4} (limits {5} and {6}, {7}).",
        "El bidón {0} se agota hacia {1} a {2}; probabilidad de vacío antes de {3}: {4} (límites {5} y {6}, {7}).",
        "A bombona {0} acaba por volta de {1} a {2}; chance de vazia antes de {3}: {4} (limites {5} e {6}, {7}).");

    private static readonly Text IsEmpty = new(
        "Drum {0} is at its heel: nothing is left that the pump can draw.",
        "El bidón {0} está en su fondo: no queda nada que la bomba pueda aspirar.",
        "A bombona {0} está no fundo: não resta nada que a bomba possa aspirar.");

    private static readonly Text Chance = new("chance of empty before the next visit", "probabilidad de vacío antes de la próxima visita", "chance de vazia antes da próxima visita");
    private static readonly Text Days = new("days of running to empty, from the visit", "días de marcha hasta vacío, desde la visita", "dias de operação até vazia, desde a visita");
    private static readonly Text Stock = new("usable volume with spare", "volumen útil con reserva", "volume útil com reserva");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("load", "use as in the last weeks goes on", "el consumo sigue como en las últimas semanas", "o consumo segue como nas últimas semanas"),
        Looks.Cause(FindingKinds.FeedHigh, "more product is fed than needed", "se dosifica más de lo necesario", "dosa-se mais do que o necessário"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Ask for spare drums on site and deliveries on the way.", "Pregunte por bidones de reserva y entregas en camino.", "Pergunte por bombonas de reserva e entregas a caminho."),
        Looks.LevelAgain,
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.RunsOut;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds) =>
        visit.RunOuts.Select(run => Judge(visit, visit, run, visit.Day, thresholds, thresholds.EmptyChancePlan.Value, thresholds.EmptyChanceAct.Value));

    /// <inheritdoc />
    public IEnumerable<Verdict> JudgeDay(VisitFacts latest, DateOnly day, FindingThresholds thresholds)
    {
        // A plant out of season uses nothing, whatever its last weeks of running were like.
        if (!OperatingDays.Runs(latest.History.System.Operation, day))
        {
            yield break;
        }

        // Nothing was read anew, and a late visit may be late because the plant stands still: a new headline asks for as much as a clear verdict does.
        var sure = Math.Max(thresholds.EmptyChanceAct.Value, 1 - thresholds.EmptyChancePlan.Value);

        // A later visit may have left some drums unread: the last reading of each serves.
        foreach (var drum in latest.History.Drums)
        {
            if (LastRead(latest, drum.Code) is { } read && RunOutOf(read, drum.Code) is { } run
                && (run.Stock.Value <= 0 || (run.DaysToEmpty.HasValue && ChanceOf(read, run, latest, day).Chance > sure))
                && Judge(read, latest, run, day, thresholds, sure, sure) is { Indication.Severity: Severity.Act } verdict)
            {
                yield return verdict;
            }
        }
    }

    private static (DateOnly Next, int Running, double Chance) ChanceOf(VisitFacts read, RunOut run, VisitFacts latest, DateOnly day)
    {
        var next = NextVisit(latest, day);
        var running = OperatingDays.Between(latest.History.System.Operation, read.Day, next);
        return (next, running, run.ChanceEmptyAfter(next.DayNumber - read.Day.DayNumber, running));
    }

    private static VisitFacts? LastRead(VisitFacts latest, string drum)
    {
        var visit = latest;
        for (var i = 0; i < 12 && visit is not null; i++, visit = visit.Previous)
        {
            if (visit.Drum(drum) is not null)
            {
                return visit;
            }
        }

        return null;
    }

    private static RunOut? RunOutOf(VisitFacts read, string drum)
    {
        var runs = read.RunOuts;
        for (var i = 0; i < runs.Count; i++)
        {
            if (FeedParts.Same(runs[i].Drum.Drum.Code, drum))
            {
                return runs[i];
            }
        }

        return null;
    }

    private static Verdict Judge(VisitFacts read, VisitFacts latest, RunOut run, DateOnly day, FindingThresholds thresholds, double plan, double act)
    {
        var about = latest.History.Subjects.Drum(run.Drum.Drum.Code);
        if (run.Stock.Value <= 0)
        {
            return Verdict.Found(about, new Indication(Severity.Act, new Said(IsEmpty, run.Drum.Drum.Code))
            {
                Evidence = [EvidenceFigure.Of(Stock, run.Stock)],
                LookAtNext = Next,
            });
        }

        if (!run.DaysToEmpty.HasValue)
        {
            return Verdict.NotJudged(about, run.DaysToEmpty.Reasons[0]);
        }

        var (next, running, chance) = ChanceOf(read, run, latest, day);
        var operation = latest.History.System.Operation;
        if (chance <= plan)
        {
            return Verdict.Clear(about);
        }

        var days = run.DaysToEmpty.Value;
        var (first, last) = (OperatingDays.After(operation, read.Day, (int)Math.Max(0, days.Low)), OperatingDays.After(operation, read.Day, (int)Math.Ceiling(days.High)));
        return Verdict.Found(about, new Indication(
            chance > act ? Severity.Act : Severity.Plan,
            new Said(
                Says,
                run.Drum.Drum.Code,
                first,
                last,
                next,
                new Amount(100 * chance, "%"),
                new Amount(100 * thresholds.EmptyChancePlan.Value, "%"),
                new Amount(100 * thresholds.EmptyChanceAct.Value, "%"),
                thresholds.EmptyChancePlan.Basis))
        {
            Evidence =
            [
                new EvidenceFigure(Chance, 100 * chance, "%", LimitHigh: 100 * thresholds.EmptyChancePlan.Value),
                EvidenceFigure.Of(Days, days, limitLow: running),
                EvidenceFigure.Of(Stock, run.Stock),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        });
    }

    /// <summary>Day of the next visit: the interval agreed, else the median of the last six intervals; never before tomorrow.</summary>
    internal static DateOnly NextVisit(VisitFacts latest, DateOnly day)
    {
        var planned = latest.Day.AddDays((int)Math.Ceiling(VisitIntervals.UsualDays(latest)));
        return planned > day ? planned : day.AddDays(1);
    }
}
