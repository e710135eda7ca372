using System.Globalization;
using AngleSharp.Dom;
using LogBook.Application.Demo;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Web.Tests.Stories;

/// <summary>
/// What must be read where a story's cause stands, from the story's own truth: its lines in db/demo, what was true at each visit, and the
/// documents of the visits. Each answers what is wrong with a page, or null.
/// </summary>
internal sealed class StoryCauses(DemoFirmResult demo)
{
    private readonly IReadOnlyList<DemoSiteFile> _sites = DemoFiles.Sites();
    private readonly DemoFirmFile _firm = DemoFiles.Firm();
    private readonly Dictionary<Guid, DemoTruth> _truths = demo.Truths.ToDictionary(truth => truth.VisitId);
    private readonly Dictionary<Guid, Visit> _visits = demo.Document.Visits.GroupBy(visit => visit.Id).ToDictionary(group => group.Key, group => group.Last());

    /// <summary>Part of the address under which the cause of a story stands, and the check of the page.</summary>
    public (string Record, Func<ShownPage, string?> Fault) Of(DemoAnswer answer) => (answer.Story, answer.Kinds[0]) switch
    {
        ("ST1", _) => ("/probe", Fouled),
        ("ST2", "pulses-lost") => ("/meters", page => PulsesStop(page, answer)),
        ("ST2", _) => ("/meters", DialStands),
        ("ST3", _) => ("/visits/", page => ForcedOn(page, answer)),
        ("ST4", _) => ("/settings", page => CameBackWithDefaults(page, answer)),
        ("ST5", _) => ("visit=", page => Leaks(page, answer)),
        ("ST6", "second-look") => ("/visits/", page => IsInvented(page, answer)),
        ("ST6", _) => ("/visits/", page => RunsOver(page, answer)),
        ("ST7", _) => ("/pumps", page => Wears(page, answer)),
        ("ST8", _) => ("/shelf/make-up", page => SoftenerFails(page, answer)),
        ("ST9", _) => ("/visits/", page => WeekSlipped(page, answer)),
        ("ST10", "microbiology-high") => ("/clocks", page => Counted(page, answer)),
        ("ST10", "clock-due") => ("/clocks", page => RetestMissed(page, answer)),
        ("ST10", _) => ("/clocks", page => StartedWithout(page, answer)),
        ("ST11", _) => ("/visits/", page => WrongDrum(page, answer)),
        ("ST13", _) => ("/visits/", LotReadsHigh),
        ("ST14", _) => ("/probe", MeterReadsHigh),
        ("ST15", _) => ("/probe", page => DisplayStandsWhileFeedStarves(page, answer)),
        ("hold", _) => ("/dose-plan", page => HeldTooLong(page, answer)),
        _ => throw new InvalidOperationException($"No cause is known of {answer.Story}."),
    };

    /// <summary>What the finding's own page must list of the visits it rests on, for findings about meters, lots and records; null where nothing is asked.</summary>
    public string? RestsOn(ShownPage finding, DemoAnswer answer)
    {
        if (answer.Story is not ("ST13" or "ST14") && (answer.Story, answer.Kinds[0]) is not ("ST6", "second-look"))
        {
            return null;
        }

        var rows = finding.Main.QuerySelectorAll("table.rests-on tbody tr").ToList();
        if (answer.Story == "ST6")
        {
            var step = Act("LAN-1", TechnicianActKind.Invent).Value;
            return rows.Exists(row => ShownPage.Of(row).Contains(Typed(step), StringComparison.Ordinal)) ? null : $"no visit with the same step of {Typed(step)}";
        }

        var expected = 100 * (answer.Story == "ST13" ? _firm.LotsInUse.Single(lot => lot.Lot == "IN-0633").Factor - 1 : _firm.MeterFaults.Single().Error);
        var off = rows.ConvertAll(row => ShownPage.Number(ShownPage.Cell(row, "What"))!.Value.Value);
        var sites = rows.Select(row => ShownPage.Of(ShownPage.Cell(row, "System")!).Split(' ')[0]).Distinct().ToList();
        return sites.Count < 3 || sites.Exists(site => !answer.Sites.Contains(site)) ? $"rests on {string.Join(", ", sites)}"
            : Math.Abs(off.Average() - expected) > 0.4 * expected ? $"reads off by {off.Average():0.0} % on the mean, the truth is {expected:0} %"
            : null;
    }

    private string? Fouled(ShownPage page)
    {
        if (Row(page) is not (var row, var visit) || Truth(visit) is not { } truth)
        {
            return "leads to no comparison";
        }

        var reading = Record(visit).Probes[0];
        var error = 100 * ((truth.DisplayUsPerCm / truth.ConductivityUsPerCm) - 1);
        return Has(row, Typed(reading.AsFound))
            ?? (ShownPage.Number(ShownPage.Cell(row, "Error against the hand meter")) is not var (value, u) ? "no error"
            : error > -4 || Math.Abs(value - error) > u ? $"an error of {value} ± {u} %, the probe was {error:0.0} % off" : null);
    }

    private string? PulsesStop(ShownPage page, DemoAnswer answer)
    {
        if (Row(page) is not (var row, var visit))
        {
            return "leads to no reading";
        }

        // The share of the stretch for which no pulse came, by the clock.
        var stop = Story(answer, ScenarioAct.Pulses).On;
        var (since, at) = (Before(visit).Arrived.Utc, visit.Arrived.Utc);
        var missing = 100 * Math.Min(1, (at - stop).TotalHours / (at - since).TotalHours);
        var reading = Record(visit).Meters[0];
        return Has(row, Typed(reading.Dial!.Value), Typed(reading.Total!.Value), "beyond 3 %")
            ?? (ShownPage.Number(ShownPage.Cell(row, "Total against dial")) is not var (apart, _) ? "no comparison of total and dial"
            : Math.Abs(apart + missing) > 6 ? $"total and dial are {apart} % apart, pulses were missing for {missing:0} %" : null);
    }

    private string? DialStands(ShownPage page)
    {
        if (Row(page) is not (var row, var visit))
        {
            return "leads to no reading";
        }

        var (dial, before) = (Record(visit).Meters[0].Dial!.Value, Record(Before(visit)).Meters[0].Dial!.Value);
        var went = _truths[visit.Id].MakeUpL - _truths[Before(visit).Id].MakeUpL;
        return dial != before || went < 100_000 ? "the dial did not stand still"
            : Has(row, Typed(dial)) ?? (ShownPage.Number(ShownPage.Cell(row, "By the dial")) is (0.0, _) ? null : "the register is said to have moved");
    }

    private string? ForcedOn(ShownPage page, DemoAnswer answer)
    {
        var (act, visit) = (Act(answer.Site!, TechnicianActKind.LeaveForcedOn), VisitOf(page));
        var hours = Record(visit).HoursRun.Single(run => run.Output == act.Part).Hours;
        return page.Lines(act.Part!, "Forced on").Any(line => line.LocalName == "tr") && page.Lines(act.Part!, $"{Typed(hours)} h run").Any(line => line.LocalName == "li")
            ? null
            : $"does not show {act.Part} forced on with {hours} h";
    }

    private string? CameBackWithDefaults(ShownPage page, DemoAnswer answer)
    {
        var reset = Story(answer, ScenarioAct.SettingsReset).Settings!;
        var left = demo.Document.Visits.Where(visit => visit.Site == answer.Site && visit.Arrived.Utc.Date < answer.Onset.ToDateTime(new TimeOnly(23, 0))).OrderBy(visit => visit.Arrived.Utc)
            .SelectMany(visit => Record(visit).Settings).Last(setting => setting.Name == "setPointUsPerCm" && setting.Left is not null).Left!.Number!.Value;
        return Line(page, "Set point", Typed(left), Typed(reset.SetPointUsPerCm!.Value)) ?? Line(page, "High alarm", Typed(reset.HighAlarmUsPerCm!.Value));
    }

    private string? Leaks(ShownPage page, DemoAnswer answer)
    {
        if (Row(page) is not (var row, var visit))
        {
            return "leads to no interval";
        }

        // The leak grows evenly; the circuit is shut and isolated from Friday 22:00 to Monday 06:00.
        var leak = _sites.Single(site => site.Code == answer.Site).Story.First(entry => entry.Act == ScenarioAct.Leak);
        var (since, at) = (Before(visit).Arrived.Utc, visit.Arrived.Utc);
        var middle = since + ((at - since) / 2);
        var lost = leak.Value * ((middle - leak.On) / (leak.Until!.Value - leak.On)) * (at - since).TotalHours * 112 / 168;
        return ShownPage.Number(ShownPage.Cell(row, "Bleed hours for each m³ of make-up")) is null ? "no bleed hours for each m³"
            : ShownPage.Number(ShownPage.Cell(row, "Loss not explained by the bleed")) is not var (value, u) ? "no loss beside the bleed"
            : Math.Abs(value - lost) > 2 * u ? $"a loss of {value} ± {u} L, the leak took {lost:0} L" : null;
    }

    private string? IsInvented(ShownPage page, DemoAnswer answer)
    {
        var (invent, visit) = (Act("LAN-1", TechnicianActKind.Invent), VisitOf(page));
        var (meter, before) = (Record(visit).Meters[0], Record(Before(visit)).Meters[0]);
        var minutes = (visit.Left!.Value.Utc - visit.Arrived.Utc).TotalMinutes;
        return Day(visit) < invent.On || meter.Total - before.Total != invent.Value || minutes > 9 || Day(visit) < answer.Onset ? "leads to an honest visit"
            : Line(page, $"{minutes:0} min") ?? Line(page, meter.Meter, $"total {Typed(meter.Total!.Value)}");
    }

    private string? RunsOver(ShownPage page, DemoAnswer answer)
    {
        var act = _sites.Single(site => site.Code == answer.Site).Acts.Single(one => one.Act == TechnicianActKind.Observe && one.Part == "overflow");
        return Day(VisitOf(page)) != act.On ? "leads to another visit" : Line(page, act.Part!, act.Text!);
    }

    private string? Wears(ShownPage page, DemoAnswer answer)
    {
        if (Row(page) is not (var row, var visit))
        {
            return "leads to no stretch";
        }

        var wear = Story(answer, ScenarioAct.PumpOutput);
        var since = DateTime.Parse(ShownPage.Of(ShownPage.Cell(row, "Since")!), CultureInfo.InvariantCulture);
        var middle = since + ((visit.Arrived.Utc - since) / 2);
        var rated = 1000 * _sites.Single(site => site.Code == answer.Site).Inhibitor.PumpLPerH;
        var gives = rated * (1 - ((1 - wear.Value) * ((middle - wear.On) / (wear.Until!.Value - wear.On))));
        return ShownPage.Number(ShownPage.Cell(row, "Output for each hour run")) is not var (output, u) ? "no output"
            : Math.Abs(output - gives) > u || output > 0.9 * rated ? $"{output} ± {u} mL/h, the pump gave {gives:0}" : null;
    }

    private string? SoftenerFails(ShownPage page, DemoAnswer answer)
    {
        var truth = Story(answer, ScenarioAct.MakeUpCalcium).Value;
        return page.Lines(answer.Site!, "Calcium hardness").FirstOrDefault(line => line.LocalName == "tr") is not { } row ? "no hardness of the make-up"
            : ShownPage.Number(ShownPage.Cell(row, "Newest")) is var (value, u) && Math.Abs(value - truth) <= u ? null : $"the hardness is not {truth} mg/L: {ShownPage.Of(row)}";
    }

    private string? WeekSlipped(ShownPage page, DemoAnswer answer)
    {
        var visit = VisitOf(page);
        var programme = demo.Document.Systems.Single(system => system.Site == answer.Site).Programmes[0];
        var week = ((PlanCalendar.Week(programme, Day(visit)) - 1 + (int)Story(answer, ScenarioAct.WeekOff).Value) % (programme.PlanWeeks ?? PlanCalendar.UsualWeeks)) + 1;
        return Line(page, $"Week {week} of the dose plan shown")
            ?? (Record(visit).ClockOffByMin is not { } off ? null
            : Math.Abs(off - Story(answer, ScenarioAct.ClockOff).Value) > 5 ? $"the clock was read {off} min off" : Line(page, $"Controller clock {Typed(off)} min fast"));
    }

    private string? Counted(ShownPage page, DemoAnswer answer)
    {
        var count = _sites.Single(site => site.Code == answer.Site).Acts.Single(act => act.Act == TechnicianActKind.Outlier && act.Part == "legionella");
        return Line(page, $"{Typed(count.Value)} CFU/mL", Said(count.On), Said(answer.Latest));
    }

    private string? RetestMissed(ShownPage page, DemoAnswer answer) =>
        page.Lines("Missed", "Legionella", Said(answer.Onset)).Any(line => line.LocalName == "tr") ? null : $"no missed retest of {answer.Onset}";

    private string? StartedWithout(ShownPage page, DemoAnswer answer)
    {
        var days = _firm.Rules.Single(rule => rule.Code == "OXT-START").WithinDays!.Value;
        return page.Lines("Missed", "Started", Said(answer.Onset), Said(answer.Onset.AddDays((int)days))).Any(line => line.LocalName == "tr") ? null : $"no sample missed since the start of {answer.Onset}";
    }

    private string? WrongDrum(ShownPage page, DemoAnswer answer)
    {
        var swap = Act(answer.Site!, TechnicianActKind.SwapDrum);
        return Line(page, swap.Part!, $"found on it: {swap.Text}");
    }

    private string? LotReadsHigh(ShownPage page)
    {
        var reading = Record(VisitOf(page)).Readings.FirstOrDefault(one => one.Lot == "IN-0633");
        return reading is null ? "leads to a visit without the lot" : Line(page, "Inhibitor", "IN-0633", $"{Typed(reading.Value!.Value)} mg/L");
    }

    private string? MeterReadsHigh(ShownPage page)
    {
        if (Row(page) is not (var row, var visit) || Truth(visit) is not { } truth)
        {
            return "leads to no comparison";
        }

        var reading = Record(visit).Probes.First(probe => probe.Instrument == "HM-2");
        var high = 100 * ((reading.Reference!.Value / truth.ConductivityUsPerCm) - 1);
        return high < 2 ? $"leads to a comparison in which the meter read {high:0.0} % off" : Has(row, "HM-2", Typed(reading.AsFound));
    }

    private string? DisplayStandsWhileFeedStarves(ShownPage page, DemoAnswer answer)
    {
        if (Row(page) is not (var row, var visit) || row.Closest("section")?.GetAttribute("aria-labelledby") != "by-display")
        {
            return "leads to no feed by display";
        }

        var halogen = _sites.Single(site => site.Code == answer.Site).Halogen!;
        var readings = Record(visit).Readings;
        var (shown, free) = (readings.Single(one => one.Test == TestCodes.Orp).Value!.Value, readings.Single(one => one.Test == TestCodes.FreeHalogen).Value!.Value);
        var starved = ShownPage.Number(ShownPage.Cell(row, "Run a day"));
        var healthy = page.Main.QuerySelectorAll("section[aria-labelledby=by-display] tbody tr")
            .Where(one => DateTime.Parse(ShownPage.Of(one.QuerySelector("th")!), CultureInfo.InvariantCulture) < answer.Onset.ToDateTime(TimeOnly.MinValue))
            .Select(one => ShownPage.Number(ShownPage.Cell(one, "Run a day"))?.Value).OfType<double>().ToList();
        return Math.Abs(shown - halogen.SetPointMv!.Value) > halogen.DifferentialMv!.Value ? $"the display was at {shown} mV"
            : Has(row, $"{Typed(shown)} mV", $"{Typed(halogen.SetPointMv.Value)} mV", "Free halogen", Typed(free))
            ?? (healthy.Count == 0 || starved is not { } now || now.Value > 0.5 * healthy.Average() ? $"the feed is not seen to starve: {starved} h a day against {string.Join(", ", healthy)}" : null);
    }

    private string? HeldTooLong(ShownPage page, DemoAnswer answer)
    {
        var hold = _sites.Single(site => site.Code == answer.Site).Biocide.HoldBleedShutMin;
        var box = page.Main.QuerySelectorAll("label").FirstOrDefault(label => ShownPage.Of(label).StartsWith("Hold bleed shut after dose", StringComparison.Ordinal))?.GetAttribute("for");
        return box is null || page.Main.QuerySelector($"#{box}")?.GetAttribute("value") != Typed(hold) ? $"the hold of {hold} min is not shown"
            : Line(page, "Hold too long", "above the high alarm");
    }

    private static string? Line(ShownPage page, params IReadOnlyList<string> words) => page.Lines(words).Count > 0 ? null : $"no line tells {string.Join(", ", words)}";

    private static string? Has(IElement row, params IReadOnlyList<string> words) =>
        words.FirstOrDefault(word => !ShownPage.Of(row).Contains(word, StringComparison.Ordinal)) is { } missing ? $"the row does not tell {missing}: {ShownPage.Of(row)}" : null;

    // The row that the address led to, with its visit.
    private (IElement Row, Visit Visit)? Row(ShownPage page) =>
        page.Sought is { } row && row.QuerySelector("a[href^='/visits/']")?.GetAttribute("href") is { } href && Guid.TryParse(href["/visits/".Length..], out var id) ? (row, _visits[id]) : null;

    private Visit VisitOf(ShownPage page) => _visits[Guid.Parse(page.Address.Split('/', '?', '#')[2])];

    private DemoTruth? Truth(Visit visit) => _truths.GetValueOrDefault(visit.Id);

    private static VisitedSystem Record(Visit visit) => visit.Systems.First(system => system.System == "CT-1");

    private Visit Before(Visit visit) => _visits.Values.Where(other => other.Site == visit.Site && other.Arrived.Utc < visit.Arrived.Utc && other.Systems.Any(system => system.Meters.Count > 0)).MaxBy(other => other.Arrived.Utc)!;

    private TechnicianAct Act(string site, TechnicianActKind kind) => _sites.Single(one => one.Code == site).Acts.Single(act => act.Act == kind);

    private ScenarioEntry Story(DemoAnswer answer, ScenarioAct act) => _sites.Single(site => site.Code == answer.Site).Story.First(entry => entry.Act == act);

    private DateOnly Day(Visit visit) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(visit.Arrived.Utc, TimeZoneInfo.FindSystemTimeZoneById(demo.Document.Sites.Single(site => site.Code == visit.Site).TimeZone)));

    private static string Said(DateOnly day) => Shown.Day(day, Language.English).Replace('\u00a0', ' ');

    // As people typed it, without thousands separators.
    private static string Typed(double value) => Shown.Entered(value, Language.English).Replace(",", "", StringComparison.Ordinal);
}
