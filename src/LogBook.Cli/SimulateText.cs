using System.Globalization;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Cli;

/// <summary>A programme run ahead, as lines on the console; times are local.</summary>
internal static class SimulateText
{
    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(LookAheadResult result, WaterSystem system, TimeZoneInfo zone)
    {
        string At(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(utc, zone).ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        string Until(DateTime? utc) => utc is { } moment ? TimeZoneInfo.ConvertTimeFromUtc(moment, zone).ToString("HH:mm", CultureInfo.InvariantCulture) : "-";
        yield return Invariant($"{system.Site}/{system.Code}: {result.Weeks} weeks from {result.From:yyyy-MM-dd}. A calculation from the set-up, not a measurement; labels and local rules decide.");
        if (result.LeftOut.Count > 0)
        {
            yield return "Not run ahead: " + string.Join(", ", result.LeftOut) + ".";
        }

        yield return "";
        yield return "Doses";
        foreach (var dose in result.Doses)
        {
            var waits = dose.Started is { } started && (started - (dose.BleedDownFrom ?? dose.Due)).TotalMinutes > 1 && dose.BleedDownFrom is null ? Invariant($", waited {(started - dose.Due).TotalHours:0.0} h") : "";
            yield return dose.Started is null
                ? $"  {At(dose.Due)} {dose.Output} {dose.Product}: due, not started"
                : $"  {At(dose.Due)} {dose.Output} {dose.Product}: "
                    + (dose.BleedDownFrom is { } down ? $"bleed-down {Until(down)}, " : "")
                    + Invariant($"feeds {Until(dose.Started)} to {Until(dose.Ended)}, bleed shut until {Until(dose.HeldUntil)}, {dose.StartUsPerCm:0} to {dose.EndUsPerCm:0} uS/cm{waits}");
        }

        yield return "";
        yield return result.Clashes.Count == 0 ? "Clashes: none." : "Clashes";
        foreach (var clash in result.Clashes)
        {
            yield return clash.Kind == LookAheadClashKind.GapTooShort
                ? Invariant($"  {At(clash.At)} {clash.Second} begins {clash.Hours:0.0} h after {clash.First}; the gap asked for is {clash.GapHours:0} h")
                : Invariant($"  {At(clash.At)} {clash.Second} is due while {clash.First} is not over and waits {clash.Hours:0.0} h");
        }

        yield return "";
        yield return Invariant($"Bleeds: {result.Bleeds.Count}, {result.Bleeds.Hours:0.0} h open, longest {result.Bleeds.LongestMinutes:0} min, {result.Bleeds.Litres / 1000:0.0} m3.");
        yield return Invariant($"Highest conductivity: {result.Peak.UsPerCm:0} uS/cm on {At(result.Peak.Utc)}")
            + (result.HighAlarmUsPerCm is { } alarm ? Invariant($" (high alarm {alarm:0} uS/cm{(result.Peak.UsPerCm > alarm ? ": passed" : "")}).") : ".");
        if (result.Alarms.Count > 0)
        {
            yield return "Alarms: " + string.Join(", ", result.Alarms) + ".";
        }

        yield return "";
        yield return "Residuals at noon, mg/L as product; what a product loses by itself is not in the set-up, so these are upper bounds";
        yield return "  day            uS/cm " + string.Join(' ', result.Products.Select(p => $"{p,8}"));
        foreach (var hour in result.Hours.Where(h => TimeZoneInfo.ConvertTimeFromUtc(h.Utc, zone).Hour == 12))
        {
            yield return "  " + TimeZoneInfo.ConvertTimeFromUtc(hour.Utc, zone).ToString("ddd yyyy-MM-dd", CultureInfo.InvariantCulture)
                + Invariant($" {hour.UsPerCm,5:0} ") + string.Join(' ', hour.MgPerL.Select(l => Invariant($"{l,8:0.0}")));
        }
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
