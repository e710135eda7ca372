using LogBook.Domain.Calculators;
using LogBook.Domain.Dosing;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Simulation;

/// <summary>Faults of a programme that was run ahead: the label first, then what doses do to each other, to the water and to the clock.</summary>
/// <remarks>
/// Half the label's contact without circulation counts as untreated, a week without biocide as long (findings: dose-untreated, biocide-lapse;
/// common practice). The label stands above all of it.
/// </remarks>
public static class LookAheadFaults
{
    private const double LongWaitHours = 1;
    private const double LongestWithoutHours = 7.5 * 24;

    private static readonly Text ClashSays = new("{0} and {1} meet: {1} falls due while the other is under way and waits {2}.", "{0} y {1} coinciden: {1} vence mientras la otra está en curso y espera {2}.", "{0} e {1} se encontram: {1} vence enquanto a outra está em curso e espera {2}.");
    private static readonly Text GapSays = new("{0} and {1} are {2} apart; the gap asked for is {3}.", "{0} y {1} están a {2}; la separación pedida es {3}.", "{0} e {1} estão a {2}; o intervalo pedido é {3}.");
    private static readonly Text HoldSays = new("{0}: at the end of the hold conductivity stands at {1}, above the high alarm of {2}.", "{0}: al final del cierre la conductividad está en {1}, por encima de la alarma alta de {2}.", "{0}: ao fim do fechamento a condutividade está em {1}, acima do alarme alto de {2}.");
    private static readonly Text UntreatedSays = new("{0}: {1} of the contact pass without circulation; the label asks for {2}.", "{0}: {1} del contacto pasan sin circulación; la etiqueta pide {2}.", "{0}: {1} do contato passam sem circulação; o rótulo pede {2}.");
    private static readonly Text WaitsSays = new("{0}: the dose waits {1} before it runs.", "{0}: la dosis espera {1} antes de marchar.", "{0}: a dose espera {1} antes de rodar.");
    private static readonly Text NeverSays = new("{0}: the dose falls due and does not run within the weeks shown.", "{0}: la dosis vence y no marcha dentro de las semanas mostradas.", "{0}: a dose vence e não roda nas semanas mostradas.");
    private static readonly Text WithoutSays = new("{0} without any dose of biocide.", "{0} sin ninguna dosis de biocida.", "{0} sem nenhuma dose de biocida.");
    private static readonly Text ClockSays = new("The clocks change on {0}. A controller may not: look at its clock at the next visit.", "El {0} cambia la hora. Un controlador quizá no: mire su reloj en la próxima visita.", "Em {0} a hora muda. Um controlador talvez não: veja seu relógio na próxima visita.");
    private static readonly Text ClockSkips = new("The clocks go forward on {0} and {2} is left out: a controller may leave out the dose of {1} or run it at another hour.", "El {0} se adelanta la hora y las {2} no existen: un controlador puede saltarse la dosis de {1} o hacerla a otra hora.", "Em {0} a hora é adiantada e {2} não existe: um controlador pode pular a dose de {1} ou rodá-la em outra hora.");
    private static readonly Text ClockRepeats = new("The clocks go back on {0} and {2} comes twice: a controller may run the dose of {1} twice.", "El {0} se atrasa la hora y las {2} llegan dos veces: un controlador puede hacer dos veces la dosis de {1}.", "Em {0} a hora é atrasada e {2} vem duas vezes: um controlador pode rodar duas vezes a dose de {1}.");
    private static readonly Text LongSays = new("A bleed lasts {0}, longer than the {1} allowed.", "Una purga dura {0}, más que los {1} permitidos.", "Uma purga dura {0}, mais que os {1} permitidos.");

    /// <summary>Faults of a run.</summary>
    /// <param name="result">The run.</param>
    /// <param name="firm">Set-up with the labels.</param>
    /// <param name="site">The site; its time zone counts.</param>
    /// <param name="system">The system.</param>
    /// <param name="programme">The programme that was run.</param>
    /// <param name="day">Day whose pumps count, in the site's zone, as in the run.</param>
    /// <param name="pumps">Output of the pumps the label is kept for by code of the output, L/h; what is not there counts as rated.</param>
    /// <returns>Faults in the order of their kind, each told once for an output.</returns>
    public static IReadOnlyList<LookAheadFault> Of(LookAheadResult result, FirmSetUp firm, Site site, WaterSystem system, Programme programme, DateOnly day, IReadOnlyDictionary<string, KnownNumber>? pumps = null)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        var faults = new List<LookAheadFault>();
        Labels(faults, result, firm, PartsOnDay.Of(system, day), programme, zone, day, pumps);
        Clashes(faults, result);
        Doses(faults, result, firm);
        Without(faults, result, firm);
        Clocks(faults, result, programme, zone);
        if (result.Alarms.Contains("long bleed") && programme.LongestBleedMin is > 0 and var longest)
        {
            var at = result.Events.First(entry => entry.What == PlantEventKind.LongBleed);
            faults.Add(new LookAheadFault(LookAheadFaultKind.LongBleed, at.Utc, 1, null, new Said(LongSays, new Amount(Math.Round(result.Bleeds.LongestMinutes), "min"), new Amount(longest, "min"))));
        }

        return [.. faults.OrderBy(fault => fault.Kind).ThenBy(fault => fault.At)];
    }

    private static void Labels(List<LookAheadFault> faults, LookAheadResult result, FirmSetUp firm, WaterSystem system, Programme programme, TimeZoneInfo zone, DateOnly day, IReadOnlyDictionary<string, KnownNumber>? pumps)
    {
        foreach (var group in result.Doses.GroupBy(dose => dose.Output, StringComparer.OrdinalIgnoreCase))
        {
            var feeds = programme.Feeds.Where(one => one.RunMinutes is not null && Same(Settings.ProgrammeSettings.OutputOf(one, system), group.Key)).ToList();
            var pump = PartsOnDay.PumpOn(system, group.Key, day);
            var known = pumps?.GetValueOrDefault(group.Key);
            if (group.First().Product is not { } code || !firm.Products.TryGetValue(code, out var product) || feeds.Count == 0 || (known?.Estimate.Value ?? pump?.RatedLPerH) is not { } output || system.VolumeL is not > 0)
            {
                continue;
            }

            double MgPerL(Feed feed) => feed.RunMinutes!.Value / 60 * output * (product.DensityKgPerL ?? 1) * 1e6 / system.VolumeL.Value;
            var doses = group.Select(dose => (Start: dose.Started ?? dose.Due, Level: MgPerL(FeedOf(programme, feeds, dose, zone)))).OrderBy(dose => dose.Start).ToList();
            var week = doses.Max(dose => doses.Where(other => other.Start >= dose.Start && (other.Start - dose.Start).TotalDays < 7 - 0.1).Sum(other => other.Level));
            double? gap = doses.Count < 2 ? null : doses.Zip(doses.Skip(1), (a, b) => (b.Start - a.Start).TotalHours).Min();

            // Several feeds may drive one output: each is judged, and the worst of each kind is told. A missing hold keeps nothing.
            var stops = feeds
                .SelectMany(feed => LabelStops.Of(product, MgPerL(feed), dosesInAWeek: MgPerL(feed) > 0 ? week / MgPerL(feed) : null, leastGapHours: gap, holdHours: (feed.HoldBleedShutMin ?? 0) / 60))
                .GroupBy(stop => stop.Kind)
                .Select(kind => kind.MaxBy(stop => stop.Kind is LabelStopKind.Dose or LabelStopKind.Week ? stop.Value : -stop.Value)!);
            faults.AddRange(stops.Select(stop => known is null ? stop : stop.By(known)).Select(stop => new LookAheadFault(LookAheadFaultKind.Label, group.First().Due, group.Count(), group.Key, stop.Says)));
        }
    }

    // The feed whose plan calls a dose.
    private static Feed FeedOf(Programme programme, List<Feed> feeds, LookAheadDose dose, TimeZoneInfo zone)
    {
        var local = TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(dose.Due, DateTimeKind.Utc), zone);
        return feeds.Find(feed => RunsOn(programme, feed, DateOnly.FromDateTime(local)) && feed.Starts.Contains(local.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture))) ?? feeds[0];
    }

    private static void Clashes(List<LookAheadFault> faults, LookAheadResult result)
    {
        foreach (var group in result.Clashes.GroupBy(clash => (clash.Kind, clash.First, clash.Second)))
        {
            var first = group.First();
            faults.Add(new LookAheadFault(
                LookAheadFaultKind.Clash,
                first.At,
                group.Count(),
                first.Second,
                first.Kind == LookAheadClashKind.GapTooShort
                    ? new Said(GapSays, first.First, first.Second, new Amount(Math.Round(first.Hours, 1), "h"), new Amount(first.GapHours ?? 0, "h"))
                    : new Said(ClashSays, first.First, first.Second, new Amount(Math.Round(first.Hours, 1), "h"))));
        }
    }

    private static void Doses(List<LookAheadFault> faults, LookAheadResult result, FirmSetUp firm)
    {
        foreach (var group in result.Doses.GroupBy(dose => dose.Output, StringComparer.OrdinalIgnoreCase))
        {
            void Add(LookAheadFaultKind kind, Func<LookAheadDose, bool> is_, Func<LookAheadDose, Said> says)
            {
                var hit = group.Where(is_).ToList();
                if (hit.Count > 0)
                {
                    faults.Add(new LookAheadFault(kind, hit[0].Due, hit.Count, group.Key, says(hit[0])));
                }
            }

            Add(
                LookAheadFaultKind.HoldTooLong,
                dose => result.HighAlarmUsPerCm is > 0 && dose.EndUsPerCm > result.HighAlarmUsPerCm,
                dose => new Said(HoldSays, group.Key, new Amount(Math.Round(dose.EndUsPerCm!.Value), "uS/cm"), new Amount(result.HighAlarmUsPerCm!.Value, "uS/cm")));
            var contact = group.First().Product is { } code && firm.Products.TryGetValue(code, out var product) ? product.LabelContactHours ?? 0 : 0;
            Add(
                LookAheadFaultKind.Untreated,
                dose => contact > 0 && Standing(result, dose, contact) >= contact / 2,
                dose => new Said(UntreatedSays, group.Key, new Amount(Math.Round(Standing(result, dose, contact), 1), "h"), new Amount(contact, "h")));

            // Bleeding down first belongs to the dose: it does not wait.
            Add(
                LookAheadFaultKind.Waits,
                dose => dose.Started is not null && ((dose.BleedDownFrom ?? dose.Started.Value) - dose.Due).TotalHours > LongWaitHours,
                dose => new Said(WaitsSays, group.Key, new Amount(Math.Round(((dose.BleedDownFrom ?? dose.Started!.Value) - dose.Due).TotalHours, 1), "h")));
            var end = result.Hours[^1].Utc;
            Add(LookAheadFaultKind.Waits, dose => dose.Started is null && (end - dose.Due).TotalHours > 24, _ => new Said(NeverSays, group.Key));
        }
    }

    // Hours of the contact in which no water circulates.
    private static double Standing(LookAheadResult result, LookAheadDose dose, double contact)
    {
        if (dose.Started is not { } from)
        {
            return 0;
        }

        var to = (dose.Ended ?? from).AddHours(contact);
        var hours = 0.0;
        DateTime? stopped = null;
        foreach (var entry in result.Events.Where(entry => entry.What is PlantEventKind.FlowLost or PlantEventKind.FlowBack))
        {
            if (entry.What == PlantEventKind.FlowLost)
            {
                stopped ??= entry.Utc;
            }
            else if (stopped is { } since)
            {
                hours += Overlap(since, entry.Utc, from, to);
                stopped = null;
            }
        }

        return hours + (stopped is { } still ? Overlap(still, to, from, to) : 0);
    }

    private static double Overlap(DateTime a, DateTime b, DateTime from, DateTime to)
    {
        var start = a > from ? a : from;
        var end = b < to ? b : to;
        return Math.Max(0, (end - start).TotalHours);
    }

    private static void Without(List<LookAheadFault> faults, LookAheadResult result, FirmSetUp firm)
    {
        var doses = result.Doses.Where(dose => dose is { Started: not null, Product: { } code } && firm.Products.TryGetValue(code, out var product) && product.Kind == ProductKind.Biocide).Select(dose => dose.Started!.Value).Order().ToList();

        // Where an oxidiser feeds by ORP or a feeder, this run does not see it and says nothing about gaps.
        if (result.LeftOut.Count > 0 || result.Hours.Count == 0)
        {
            return;
        }

        DateTime[] marks = [result.Hours[0].Utc, .. doses, result.Hours[^1].Utc];
        var longest = marks.Zip(marks.Skip(1), (a, b) => (From: a, Hours: (b - a).TotalHours)).MaxBy(gap => gap.Hours);
        if (longest.Hours > LongestWithoutHours)
        {
            faults.Add(new LookAheadFault(LookAheadFaultKind.LongWithout, longest.From, 1, null, new Said(WithoutSays, new Amount(Math.Round(longest.Hours / 24, 1), "d"))));
        }
    }

    private static void Clocks(List<LookAheadFault> faults, LookAheadResult result, Programme programme, TimeZoneInfo zone)
    {
        for (var day = result.From; day < result.From.AddDays(7 * result.Weeks); day = day.AddDays(1))
        {
            var (noon, before) = (day.ToDateTime(new TimeOnly(12, 0)), day.AddDays(-1).ToDateTime(new TimeOnly(12, 0)));
            if (zone.GetUtcOffset(noon) == zone.GetUtcOffset(before))
            {
                continue;
            }

            var at = DateTime.SpecifyKind(noon - zone.GetUtcOffset(noon), DateTimeKind.Utc);
            var isForward = zone.GetUtcOffset(noon) > zone.GetUtcOffset(before);
            var hits = programme.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan && RunsOn(programme, feed, day))
                .SelectMany(feed => feed.Starts.Select(start => (Feed: feed, Start: start)))
                .Where(pair => TimeOnly.TryParseExact(pair.Start, "HH:mm", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out var time)
                    && (zone.IsInvalidTime(day.ToDateTime(time)) || zone.IsAmbiguousTime(day.ToDateTime(time))))
                .ToList();
            if (hits.Count == 0)
            {
                faults.Add(new LookAheadFault(LookAheadFaultKind.ClockChange, at, 1, null, new Said(ClockSays, day)));
            }

            faults.AddRange(hits.Select(hit => new LookAheadFault(
                LookAheadFaultKind.ClockChange, at, 1, hit.Feed.Output, new Said(isForward ? ClockSkips : ClockRepeats, day, hit.Feed.Output ?? hit.Feed.Drum, hit.Start))));
        }
    }

    private static bool RunsOn(Programme programme, Feed feed, DateOnly day) =>
        (feed.Weeks.Count == 0 || feed.Weeks.Contains(DosePlans.PlanCalendar.Week(programme, day)))
        && (feed.Days.Count == 0 || feed.Days.Contains((Weekday)(((int)day.DayOfWeek + 6) % 7)));

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
