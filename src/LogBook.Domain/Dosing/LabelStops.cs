using LogBook.Domain.DosePlans;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Dosing;

/// <summary>The label as a hard stop: dose, weekly total, gap and contact time.</summary>
/// <remarks>
/// The label is the limit (US pesticide law; Reg. (EU) 528/2012). Levels are judged with the volume at its low end, since less water than
/// on file makes a dose stronger (findings: label-exceeded). A product without label data on file gives no stop and no leave: read the label.
/// </remarks>
public static class LabelStops
{
    private const double Hair = 1e-6;
    private const double LowEnd = 0.8;

    private static readonly Text DoseSays = new(
        "Stop: {0} would stand at {1} where the volume is at its low end; the label allows {2} for one dose. The label is the limit.",
        "Alto: {0} quedaría en {1} con el volumen por lo bajo; la etiqueta permite {2} por dosis. La etiqueta es el límite.",
        "Pare: {0} ficaria em {1} com o volume por baixo; o rótulo permite {2} por dose. O rótulo é o limite.");

    private static readonly Text WeekSays = new(
        "Stop: {0} would add up to {1} within a week; the label allows {2} a week. The label is the limit.",
        "Alto: {0} sumaría {1} en una semana; la etiqueta permite {2} por semana. La etiqueta es el límite.",
        "Pare: {0} somaria {1} em uma semana; o rótulo permite {2} por semana. O rótulo é o limite.");

    private static readonly Text GapSays = new(
        "Stop: two doses of {0} would be {1} apart; the label asks for at least {2}. The label is the limit.",
        "Alto: dos dosis de {0} quedarían a {1}; la etiqueta pide al menos {2}. La etiqueta es el límite.",
        "Pare: duas doses de {0} ficariam a {1}; o rótulo pede ao menos {2}. O rótulo é o limite.");

    private static readonly Text ContactSays = new(
        "Stop: {0} would be kept for {1}; the label asks for {2} of contact. The label is the limit.",
        "Alto: {0} se mantendría {1}; la etiqueta pide {2} de contacto. La etiqueta es el límite.",
        "Pare: {0} seria mantido por {1}; o rótulo pede {2} de contato. O rótulo é o limite.");

    /// <summary>What the label stops of a feed, in whatever mode it runs.</summary>
    /// <param name="product">The product with what is on file of its label.</param>
    /// <param name="mgPerL">Level of one dose or, in the other modes, the level held, mg/L as product.</param>
    /// <param name="mode">How it is paced.</param>
    /// <param name="feed">The feed with its weeks, days, starts and hold.</param>
    /// <param name="planWeeks">Weeks of the plan, 1 or more; null for the usual four.</param>
    /// <returns>All that is broken.</returns>
    /// <remarks>
    /// A dose is judged at the low end of the volume; a level that is held does not depend on the volume, and a week of it holds it once at the
    /// least. A plan without a hold keeps nothing.
    /// </remarks>
    public static IReadOnlyList<LabelStop> OfFeed(Product product, double mgPerL, FeedMode mode, Feed feed, int? planWeeks)
    {
        if (mode != FeedMode.DosePlan)
        {
            return Of(product, mgPerL, 1, dosesInAWeek: 1);
        }

        // A feed whose plan has no start yet is still one dose.
        var planned = PlannedDoses.Of(feed, planWeeks);
        return Of(product, mgPerL, LowEnd, Math.Max(1, planned.MostInAWeek), planned.LeastGapHours, (feed.HoldBleedShutMin ?? 0) / 60);
    }

    /// <summary>What the label stops.</summary>
    /// <param name="product">The product with what is on file of its label.</param>
    /// <param name="mgPerL">One dose, mg/L as product in the volume on file.</param>
    /// <param name="lowVolumeShare">Low end of the volume as a share of the volume on file, above 0, up to 1.</param>
    /// <param name="dosesInAWeek">Most doses within seven days, where doses differ in parts of this one; null where it is not known.</param>
    /// <param name="leastGapHours">Shortest time from start to start, h; null where it is not known.</param>
    /// <param name="holdHours">How long the dose is kept, h; null where it is not known.</param>
    /// <returns>All that is broken; empty where nothing on file is.</returns>
    public static IReadOnlyList<LabelStop> Of(Product product, double mgPerL, double lowVolumeShare = LowEnd, double? dosesInAWeek = null, double? leastGapHours = null, double? holdHours = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lowVolumeShare);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(lowVolumeShare, 1);
        var stops = new List<LabelStop>();
        var high = mgPerL / lowVolumeShare;
        if (product.LabelMaxMgPerL is { } most && high > most * (1 + Hair))
        {
            stops.Add(Stop(LabelStopKind.Dose, DoseSays, high, most, "mg/L"));
        }

        if (product.LabelMaxWeekMgPerL is { } week && dosesInAWeek is { } doses && high * doses > week * (1 + Hair))
        {
            stops.Add(Stop(LabelStopKind.Week, WeekSays, high * doses, week, "mg/L"));
        }

        if (product.LabelGapHours is { } gap && leastGapHours is { } apart && apart < gap * (1 - Hair))
        {
            stops.Add(Stop(LabelStopKind.Gap, GapSays, apart, gap, "h"));
        }

        if (product.LabelContactHours is { } contact && holdHours is { } hold && hold < contact * (1 - Hair))
        {
            stops.Add(Stop(LabelStopKind.Contact, ContactSays, hold, contact, "h"));
        }

        return stops;

        LabelStop Stop(LabelStopKind kind, Text says, double value, double limit, string unit) =>
            new(kind, new Said(says, product.Name, new Amount(value, unit), new Amount(limit, unit)), value, limit);
    }
}
