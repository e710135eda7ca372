using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>A calendar dose as it ran since the last visit: hours and drum against the plan.</summary>
/// <param name="Drum">The drum.</param>
/// <param name="Product">Its product, when on file.</param>
/// <param name="Output">Output that doses, or null.</param>
/// <param name="Since">Visit at which the stretch begins.</param>
/// <param name="Planned">Starts that the plan asks for on running days.</param>
/// <param name="HoursPlanned">Hours they take, h.</param>
/// <param name="HoursRun">Hours counted, h.</param>
/// <param name="LitresPlanned">Product they take, L.</param>
/// <param name="LitresUsed">Product that left the drum, L.</param>
internal sealed record PlannedDosing(
    Drum Drum,
    Product? Product,
    string? Output,
    VisitFacts Since,
    IReadOnlyList<PlannedRun> Planned,
    double HoursPlanned,
    Computed<Estimate> HoursRun,
    Computed<Estimate> LitresPlanned,
    Computed<Estimate> LitresUsed)
{
    // A dose that is due within so many hours of arrival may still wait for the bleed-down or for another dose.
    private const double CloseHours = 3;

    // Below this a dose hides in the tenths of the display, and hours are compared as they stand.
    private const double ShortestCountedH = 0.15;

    /// <summary>Doses that ran by the hours, whole ones where the display can tell them; null where hours are not known.</summary>
    public double? DosesRun => !HoursRun.HasValue || HoursPlanned <= 0 ? null
        : HoursOfOne >= ShortestCountedH ? Math.Round(HoursRun.Value.Value / HoursOfOne) : HoursRun.Value.Value / HoursOfOne;

    /// <summary>Share of the planned doses that ran by the hours; null where hours are not known.</summary>
    public double? HoursShare => DosesRun / Planned.Count;

    /// <summary>Hours of one dose, h.</summary>
    public double HoursOfOne => Planned.Count == 0 ? 0 : HoursPlanned / Planned.Count;

    /// <summary>Looks at every calendar dose of a visit.</summary>
    /// <param name="visit">End of the stretch.</param>
    /// <returns>One entry for each drum that a calendar dose draws from and that an earlier visit has figures for.</returns>
    public static IReadOnlyList<PlannedDosing> Of(VisitFacts visit)
    {
        var all = new List<PlannedDosing>();
        foreach (var feed in visit.Programme?.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan) ?? [])
        {
            if (FeedParts.DrumOn(visit, feed.Drum) is { } drum && Of(visit, feed, drum) is { } dosing)
            {
                all.Add(dosing);
            }
        }

        return all;
    }

    private static PlannedDosing? Of(VisitFacts visit, Feed feed, Drum drum)
    {
        var output = FeedParts.OutputOf(visit, drum.Code);
        var since = output is null ? null : visit.HoursSince(output);
        since = visit.Record.HoursRun.Any(h => FeedParts.Same(h.Output, output)) && since is not null ? since : FeedParts.LastLevelBefore(visit, drum.Code);
        if (since is null)
        {
            return null;
        }

        var planned = PlannedRuns.Of(visit.History, drum.Code, since.Visit.At, visit.Visit.At.AddHours(-CloseHours));
        var hours = planned.Sum(run => (run.Feed.RunMinutes ?? 0) / 60);
        var facts = visit.Drum(drum.Code);
        var amount = facts is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : ProductUse.AmountOf(visit, facts, feed);
        return new PlannedDosing(
            drum,
            FeedParts.ProductInDrum(visit, drum.Code),
            output,
            since,
            planned,
            hours,
            output is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : visit.HoursRun(output),
            amount.Map(one => one.Scaled(planned.Count, "L")),
            ProductUse.UsedBetween(since, visit, drum.Code));
    }

    /// <summary>Why doses that did not run are no fault: the plant stood still, or a person had agreed to it.</summary>
    /// <param name="visit">End of the stretch.</param>
    /// <returns>The reason, or null.</returns>
    public Reason? Excuse(VisitFacts visit)
    {
        foreach (var at in visit.Back())
        {
            if (at.Record.Running == false || at.Record.InUse == false || (at != Since && at.Record.Events.Any(e => e.Type is EventType.Stopped or EventType.Started or EventType.Drained)))
            {
                return VisitReasons.Idle;
            }

            if (at.Record.Switches.Any(s => FeedParts.Same(s.Output, Output) && s.Reason is not null && (s.Left ?? s.Found) == SwitchPosition.ForcedOff))
            {
                return VisitReasons.AgreedOff;
            }

            if (at == Since)
            {
                break;
            }
        }

        return null;
    }
}
