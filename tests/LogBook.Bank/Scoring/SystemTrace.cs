using System.Globalization;
using System.Text;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Scoring;

/// <summary>One system of a bank in full, truth beside record, for whoever mends a rule.</summary>
internal static class SystemTrace
{
    public static string Of(ulong seed, int systems, int months, string site)
    {
        var firm = FirmDraw.Of(seed, systems, months);
        var system = firm.Systems.First(s => s.Site.Code == site);
        var course = SystemRun.Of(system, firm);
        var page = new StringBuilder();
        void Line(FormattableString text) => page.AppendLine(text.ToString(CultureInfo.InvariantCulture));
        Line($"{seed}/{site}: V {system.Model.VolumeL:0} L, half-life {system.HalfLifeHours:0.0} h, target {system.Programme.TargetCycles} cycles, set point {system.Programme.SetPointUsPerCm}, inhibitor {system.InhibitorTarget} mg/L by {system.Programme.Feeds[0].Mode}, every {system.EveryDays} d");
        Line($"faults: {string.Join("; ", system.Faults.Select(f => FormattableString.Invariant($"{f.Name} {f.Onset:yyyy-MM-dd}..{f.Repaired:yyyy-MM-dd}")))}");
        foreach (var drum in system.Full.Drums)
        {
            Line($"drum {drum.Code} {drum.Product} {drum.CapacityL} L, designed use {system.DesignLPerDay[drum.Code]:0.00} L/d");
        }

        for (var i = 0; i < course.Count; i++)
        {
            var (t, record) = (course.Truths[i], course.Visits[i].Systems[0]);
            string Read(string at, string test) => string.Join('/', record.Readings.Where(r => r.At == at && r.Test == test && r.Source != ReadingSource.Controller)
                .Select(r => (r.Value ?? (r.Drops * r.PerDrop))?.ToString("0.##", CultureInfo.InvariantCulture)));
            var probe = record.Probes is [var compared, ..] ? compared : null;
            var drums = string.Join(' ', course.System.Full.Drums.Select(d => FormattableString.Invariant($"{d.Code} {t.DrumL[d.Code]:0.0}")));
            var written = string.Join(' ', record.Drums.Select(d => FormattableString.Invariant($"{d.Drum} {d.Level}{d.Unit}+{d.AddedL}")));
            Line($"{t.Day:yyyy-MM-dd} {(t.Running ? "" : "IDLE ")}C {t.Cycles:0.00} K {t.Conductivity:0} [{Read(SamplePoints.Tower, TestCodes.Conductivity)}; make-up {t.MakeUpConductivity:0} [{Read(SamplePoints.MakeUp, TestCodes.Conductivity)}]] Cl [{Read(SamplePoints.Tower, TestCodes.Chloride)}/{Read(SamplePoints.MakeUp, TestCodes.Chloride)}] probe {100 * (t.ProbeFactor - 1):0.0}% [{(probe is { Reference: > 0 } ? 100 * ((probe.AsFound / probe.Reference.Value) - 1) : null):0.0}% clean {probe?.AfterCleaning} cal {probe?.Calibrated}] inh {t.Inhibitor:0} [{Read(SamplePoints.Tower, TestCodes.Inhibitor)}] made {t.MakeUpL:0} purge h {t.HoursRun["purge"]:0.0} | {drums} [{written}]");
        }

        foreach (var flag in EngineFlags.Of([course], new FirmSetUp(firm.Document), firm.Last.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc)).Systems[0])
        {
            Line($"{flag.Seen:yyyy-MM-dd} raised {flag.Raised:yyyy-MM-dd} closed {flag.Closed:yyyy-MM-dd} {flag.Severity} {flag.Kind} {flag.About}: {flag.Text}");
        }

        return page.ToString();
    }
}
