using LogBook.Domain.Calculators;
using LogBook.Domain.Cycles;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Settings;

/// <summary>Target → setting → measured, for the bleed and each feed, as of a visit.</summary>
internal static class SettingTargets
{
    private static readonly Text Cycles = new("cycles", "ciclos", "ciclos");
    private static readonly Text CyclesName = new("Cycles at this set point", "Ciclos con este punto de consigna", "Ciclos com este ponto de ajuste");
    private static readonly Text CyclesFormula = new(
        "C with make-up × C × (1 − bend × (C − 1)) = set point − half the differential",
        "C con reposición × C × (1 − curvatura × (C − 1)) = punto de consigna − medio diferencial",
        "C com reposição × C × (1 − curvatura × (C − 1)) = ponto de ajuste − meio diferencial");

    private static readonly Text CyclesSource = new(
        "Mass balance; conductivity against cycles computed with PHREEQC", "Balance de masa; conductividad frente a ciclos calculada con PHREEQC", "Balanço de massa; condutividade contra ciclos calculada com PHREEQC");

    public static IReadOnlyList<TargetLine> Of(VisitFacts visit, Programme programme)
    {
        var held = ControllerPlan.Of(visit) ?? programme;
        var settings = ProgrammeSettings.Of(held, visit.History.System);
        List<TargetLine> lines = [Bleed(visit, held, settings)];
        lines.AddRange(programme.Feeds
            .Where(feed => feed.Mode is not (FeedMode.ByHand or FeedMode.Feeder))
            .Select(feed => FeedLine(visit, feed, held, settings))
            .OfType<TargetLine>());
        return lines;
    }

    private static TargetLine Bleed(VisitFacts visit, Programme held, IReadOnlyList<ControllerSetting> settings)
    {
        var makeUp = MakeUpMean.Of(visit, TestCodes.Conductivity) is { HasValue: true, Value: var mean } ? mean
            : held.MakeUp?.ConductivityUsPerCm is > 0 and var asked ? new Estimate(asked, "uS/cm", 0.1 * asked) : null;
        Worked? worked = null;
        if (makeUp is not null && held.SetPointUsPerCm is { } setPoint)
        {
            var middle = setPoint - ((held.DifferentialUsPerCm ?? 0) / 2);
            var cycles = Propagation.Of(
                x => ConductivityLaw.Of(x[0], Math.Clamp(x[1], 0, 0.06)).Then(law => law.CyclesAt(middle)),
                [makeUp, new Estimate(ConductivityLaw.UsualBend, "1", ConductivityLaw.BendUncertainty)],
                "1");
            worked = new Worked(cycles, CyclesName, CyclesFormula, CyclesSource,
            [
                new Assessments.FigureInput("set-point", setPoint, "uS/cm"),
                new Assessments.FigureInput("make-up-conductivity", makeUp.Value, "uS/cm", makeUp.StandardUncertainty),
            ]);
        }

        var (best, at) = Newest(visit, earlier => earlier.Cycles.Best is { HasValue: true, Value: var value } ? value : null);
        return new TargetLine(
            null, null, held.TargetCycles, "1", [.. settings.Where(setting => SettingNames.PurposeOf(setting.Name) == SettingPurpose.Bleed)], worked, best, at?.Day, best is null ? null : Cycles);
    }

    private static TargetLine? FeedLine(VisitFacts visit, Feed feed, Programme held, IReadOnlyList<ControllerSetting> settings)
    {
        if (ControllerPlan.OutputOf(visit, feed) is not { } output)
        {
            return null;
        }

        var product = ControllerPlan.ProductOf(visit, feed);
        var test = product is null ? null : FeedParts.ResidualTest(visit, product);
        var own = held.Feeds.FirstOrDefault(f => FeedParts.Same(ControllerPlan.OutputOf(visit, f), output)) ?? feed;
        var (measured, at) = test is null ? (null, null) : Newest(visit, earlier => earlier.TowerReading(test)?.Value);
        return new TargetLine(
            output,
            product?.Code,
            feed.TargetMgPerL ?? product?.DoseMgPerL,
            "mg/L",
            [.. settings.Where(setting => FeedParts.Same(SettingNames.OutputOf(setting.Name), output))],
            FeedCaseOf(visit, own, product) is { } feedCase && SettingOf(own, visit) is { } setting ? FeedCalculator.LevelAt(feedCase, setting) : null,
            measured,
            at?.Day,
            measured is null ? null : TestTexts.NameOf(test!));
    }

    private static double? SettingOf(Feed feed, VisitFacts visit) => feed.Mode switch
    {
        FeedMode.ByMakeUpVolume => feed.RunSeconds,
        FeedMode.FixedShare or FeedMode.ShareOfLastBleed => feed.SharePercent,
        FeedMode.DosePlan => feed.RunMinutes,
        FeedMode.AlongsideBleed => KnownPumps.Of(visit.History, visit, FeedParts.PumpOf(visit, feed.Drum))?.Estimate.Value,
        _ => null,
    };

    private static FeedCase? FeedCaseOf(VisitFacts visit, Feed feed, Product? product)
    {
        // As the dose plan takes it: measured where it was, else rated.
        if (KnownPumps.Of(visit.History, visit, FeedParts.PumpOf(visit, feed.Drum)) is not { Estimate.Value: > 0 } pump)
        {
            return null;
        }

        var engine = visit.History.Firm.Engine.Uncertainties;
        return new FeedCase
        {
            Mode = feed.Mode,
            PumpLPerH = pump.Estimate,
            DensityKgPerL = product?.DensityKgPerL ?? 1,
            Cycles = Newest(visit, earlier => earlier.Cycles.Best is { HasValue: true, Value: var best } ? best : null).Value
                ?? (visit.Programme?.TargetCycles is > 1 and var target ? new Estimate(target, "1", 0.1 * target) : null),
            EveryL = feed.EveryL,
            BleedLPerH = visit.History.System.BleedValveLPerH is > 0 and var valve ? engine.BleedValve(false).On(valve, "L/h") : null,
            CycleMin = feed.CycleMin,
            VolumeL = visit.History.System.VolumeL is > 0 and var volume ? engine.SystemVolume().On(volume, "L") : null,
        };
    }

    // The newest value within a year: settings are compared with what the water does, not with what it once did.
    private static (Estimate? Value, VisitFacts? At) Newest(VisitFacts visit, Func<VisitFacts, Estimate?> of)
    {
        for (var earlier = visit; earlier is not null && (visit.Visit.At - earlier.Visit.At).TotalDays <= 366; earlier = earlier.Previous)
        {
            if (of(earlier) is { } value)
            {
                return (value, earlier);
            }
        }

        return (null, null);
    }
}
