using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Dosing;

/// <summary>From a level to the setting of a feed, and from a setting to the level it gives, with uncertainty.</summary>
/// <remarks>
/// Steady level of a well-mixed system without demand, the mean over what leaves as liquid: p pump output, s density, C cycles, G water for
/// each run, b flow of the open bleed, W mean loss, V volume, B/W share of the loss that goes through the bleed. Reference: 02-dosing.md,
/// "Pump and paced feed"; 02-dosing.csv rows 022 to 028; 12-biocide-schedule.csv, feed_minutes.
/// </remarks>
public static class FeedCalculator
{
    private const double MgPerKg = 1e6;
    private const double Hair = 1e-9;

    private static readonly Text Source = new(
        "Mass balance of a well-mixed system, doses as product (conversions exact by the units' definitions)",
        "Balance de masa de un sistema bien mezclado, dosis como producto (conversiones exactas por definición de las unidades)",
        "Balanço de massa de um sistema bem misturado, doses como produto (conversões exatas por definição das unidades)");

    private static readonly Text Level = new("Level this setting feeds", "Nivel que dosifica este ajuste", "Nível que este ajuste dosa");

    private static readonly Text NotWhole = new(
        "The meter gives a pulse every {0}: {1} is not a whole number of pulses, so the runs come unevenly. Enter a multiple.",
        "El contador da un pulso cada {0}: {1} no es un número entero de pulsos y las marchas salen desiguales. Ponga un múltiplo.",
        "O hidrômetro dá um pulso a cada {0}: {1} não é um número inteiro de pulsos, e as partidas saem desiguais. Ponha um múltiplo.");

    private static readonly Text Longer = new(
        "More than the whole time is needed: the pump is too small for this level.",
        "Haría falta más que todo el tiempo: la bomba es pequeña para este nivel.",
        "Seria preciso mais que todo o tempo: a bomba é pequena para este nível.");

    private static readonly Text Bypass = new(
        "Leaks and drift bypass the bleed: on a leaking tower this feed falls short in proportion. A feed by make-up volume does not.",
        "Fugas y arrastre no pasan por la purga: en una torre con fugas esta dosificación queda corta en proporción. Por volumen de reposición no ocurre.",
        "Vazamentos e arraste não passam pela purga: numa torre com vazamento esta dosagem fica curta na proporção. Por volume de reposição isso não ocorre.");

    private static readonly Text WithLoad = new(
        "A fixed share of time does not follow the load: at half the load the level doubles.",
        "Una parte fija del tiempo no sigue la carga: con media carga el nivel se duplica.",
        "Uma parte fixa do tempo não segue a carga: com meia carga o nível dobra.");

    private static readonly Text EndsBefore = new(
        "Holds only if the feed ends before the next bleed begins.",
        "Vale solo si la dosificación termina antes de la purga siguiente.",
        "Vale só se a dosagem termina antes da purga seguinte.");

    /// <summary>The setting that holds a level; for a dose plan the run that gives one dose.</summary>
    /// <param name="feed">The feed with what its mode needs.</param>
    /// <param name="mgPerL">Level aimed at, mg/L as product, not negative.</param>
    /// <returns>The setting; its result has no value where a part is missing or cannot occur.</returns>
    public static FeedSetting SettingFor(FeedCase feed, double mgPerL)
    {
        var perUnit = LevelPerUnit(feed);
        var result = perUnit.Then(one => double.IsFinite(mgPerL) && mgPerL >= 0 && one.Value > 0
            ? Computed<Estimate>.Of(Estimate.Exact(mgPerL, UnitCode(feed.Mode)).Over(one, UnitCode(feed.Mode)))
            : Computed<Estimate>.None(DosingReasons.Impossible));
        var worked = new Worked(result, NameOf(feed.Mode), FormulaOf(feed.Mode), Source, [new FigureInput("level", mgPerL, "mg/L"), .. Inputs(feed)]);
        return new FeedSetting(
            worked,
            feed is { Mode: FeedMode.FixedShare, CycleMin: { } cycle } && result.HasValue ? result.Value.Value / 100 * cycle * 60 : null,
            result.HasValue ? [.. Notes(feed, result.Value.Value)] : []);
    }

    /// <summary>The level that a setting gives: "at this setting you feed X ± u mg/L".</summary>
    /// <param name="feed">The feed with what its mode needs.</param>
    /// <param name="setting">In the unit of the mode, not negative; alongside the bleed the pump output itself, L/h.</param>
    /// <returns>mg/L as product; for a dose plan the rise by one run.</returns>
    public static Worked LevelAt(FeedCase feed, double setting)
    {
        var result = LevelPerUnit(feed).Then(one => !double.IsFinite(setting) || setting < 0 ? Computed<Estimate>.None(DosingReasons.Impossible)
            : feed.Mode == FeedMode.AlongsideBleed ? Computed<Estimate>.Of(one.Times(OwnPump(feed, setting), "mg/L"))
            : Computed<Estimate>.Of(one.Scaled(setting, "mg/L")));
        return new Worked(result, Level, FormulaOf(feed.Mode), Source, [new FigureInput("setting:" + UnitCode(feed.Mode), setting, UnitCode(feed.Mode)), .. Inputs(feed)]);
    }

    /// <summary>Unit in which a mode is set.</summary>
    /// <param name="mode">One of the five modes.</param>
    /// <returns>UCUM code: s, L/h, %, min.</returns>
    public static string UnitCode(FeedMode mode) => mode switch
    {
        FeedMode.ByMakeUpVolume => "s",
        FeedMode.AlongsideBleed => "L/h",
        FeedMode.DosePlan => "min",
        _ => "%",
    };

    /// <summary>What is set in a mode.</summary>
    /// <param name="mode">One of the five modes.</param>
    /// <returns>The name.</returns>
    public static Text NameOf(FeedMode mode) => mode switch
    {
        FeedMode.ByMakeUpVolume => new("Run for each volume", "Marcha por cada volumen", "Marcha a cada volume"),
        FeedMode.AlongsideBleed => new("Pump output alongside the bleed", "Caudal de la bomba junto con la purga", "Vazão da bomba junto com a purga"),
        FeedMode.FixedShare => new("Fixed share of time", "Parte fija del tiempo", "Parte fixa do tempo"),
        FeedMode.ShareOfLastBleed => new("Share of the last bleed", "Parte de la última purga", "Parte da última purga"),
        FeedMode.DosePlan => new("Run for each dose", "Marcha por cada dosis", "Marcha a cada dose"),
        _ => throw new ArgumentOutOfRangeException(nameof(mode)),
    };

    // The uncertainty of a pump is a share of it, whatever it is set to.
    private static Estimate OwnPump(FeedCase feed, double lPerH) => feed.PumpLPerH.Value > 0 ? feed.PumpLPerH.Scaled(lPerH / feed.PumpLPerH.Value) : Estimate.Exact(lPerH, "L/h");

    /// <summary>Level for each second, L/h, percent or minute.</summary>
    private static Computed<Estimate> LevelPerUnit(FeedCase feed)
    {
        if (!(double.IsFinite(feed.DensityKgPerL) && feed.DensityKgPerL > 0) || (feed.PumpLPerH.Value <= 0 && feed.Mode != FeedMode.AlongsideBleed)
            || feed.BleedShareOfLoss is not (> 0 and <= 1))
        {
            return Computed<Estimate>.None(DosingReasons.Impossible);
        }

        // mg of product an hour while the pump runs.
        var mg = feed.PumpLPerH.Scaled(feed.DensityKgPerL * MgPerKg, "mg/h");
        return feed.Mode switch
        {
            FeedMode.ByMakeUpVolume => feed is { Cycles: { Value: > 0 } cycles, EveryL: > 0 and var every }
                ? Computed<Estimate>.Of(mg.Scaled(1 / 3600.0 / every).Times(cycles, "mg/L"))
                : Missing(feed.Cycles, feed.EveryL),
            FeedMode.AlongsideBleed => feed.BleedLPerH is { Value: > 0 } bleed
                ? Computed<Estimate>.Of(Estimate.Exact(feed.DensityKgPerL * MgPerKg * feed.BleedShareOfLoss, "mg/L").Over(bleed, "mg/L"))
                : Missing(feed.BleedLPerH),
            FeedMode.FixedShare => feed.LossLPerH is { Value: > 0 } loss ? Computed<Estimate>.Of(mg.Scaled(0.01).Over(loss, "mg/L")) : Missing(feed.LossLPerH),
            FeedMode.ShareOfLastBleed => feed.BleedLPerH is { Value: > 0 } flow
                ? Computed<Estimate>.Of(mg.Scaled(0.01 * feed.BleedShareOfLoss).Over(flow, "mg/L"))
                : Missing(feed.BleedLPerH),
            FeedMode.DosePlan => feed.VolumeL is { Value: > 0 } volume ? Computed<Estimate>.Of(mg.Scaled(1 / 60.0).Over(volume, "mg/L")) : Missing(feed.VolumeL),
            _ => Computed<Estimate>.None(DosingReasons.OtherMode),
        };
    }

    private static Computed<Estimate> Missing(params ReadOnlySpan<object?> parts)
    {
        foreach (var part in parts)
        {
            if (part is null)
            {
                return Computed<Estimate>.None(DosingReasons.PartMissing);
            }
        }

        return Computed<Estimate>.None(DosingReasons.Impossible);
    }

    private static IEnumerable<FigureInput> Inputs(FeedCase feed)
    {
        if (feed.Mode != FeedMode.AlongsideBleed)
        {
            yield return Input("pump-output", feed.PumpLPerH);
        }

        yield return new FigureInput("density", feed.DensityKgPerL, "kg/L");
        switch (feed.Mode)
        {
            case FeedMode.ByMakeUpVolume:
                if (feed.Cycles is { } cycles)
                {
                    yield return Input("cycles", cycles);
                }

                if (feed.EveryL is { } every)
                {
                    yield return new FigureInput("water-for-each-run", every, "L");
                }

                break;
            case FeedMode.AlongsideBleed or FeedMode.ShareOfLastBleed:
                if (feed.BleedLPerH is { } bleed)
                {
                    yield return Input("bleed-flow", bleed);
                }

                yield return new FigureInput("bleed-share-of-loss", 100 * feed.BleedShareOfLoss, "%");
                break;
            case FeedMode.FixedShare when feed.LossLPerH is { } loss:
                yield return Input("mean-loss", loss);
                break;
            case FeedMode.DosePlan when feed.VolumeL is { } volume:
                yield return Input("volume", volume);
                break;
            default:
                break;
        }
    }

    private static FigureInput Input(string name, Estimate estimate) => new(name, estimate.Value, estimate.Unit, estimate.StandardUncertainty);

    private static IEnumerable<Said> Notes(FeedCase feed, double setting)
    {
        if (feed is { Mode: FeedMode.ByMakeUpVolume, EveryL: { } every, LitresPerPulse: > 0 and var pulse } && Math.Abs((every / pulse) - Math.Round(every / pulse)) > Hair)
        {
            yield return new Said(NotWhole, new Amount(pulse, "L"), new Amount(every, "L"));
        }

        if (feed.Mode is FeedMode.FixedShare or FeedMode.ShareOfLastBleed && setting > 100)
        {
            yield return new Said(Longer);
        }

        if (feed.Mode is FeedMode.AlongsideBleed or FeedMode.ShareOfLastBleed)
        {
            yield return new Said(Bypass);
        }

        if (feed.Mode == FeedMode.ShareOfLastBleed)
        {
            yield return new Said(EndsBefore);
        }

        if (feed.Mode == FeedMode.FixedShare)
        {
            yield return new Said(WithLoad);
        }
    }

    private static Text FormulaOf(FeedMode mode) => mode switch
    {
        FeedMode.ByMakeUpVolume => Same("t = level / C × G / (p × s × 10⁶) × 3600"),
        FeedMode.AlongsideBleed => Same("p = level × b / (s × 10⁶ × B/W)"),
        FeedMode.FixedShare => Same("% = 100 × level × W / (p × s × 10⁶)"),
        FeedMode.ShareOfLastBleed => Same("% = 100 × level × b / (p × s × 10⁶ × B/W)"),
        FeedMode.DosePlan => Same("t = 60 × level × V / (p × s × 10⁶)"),
        _ => Same(""),
    };

    private static Text Same(string text) => new(text, text, text);
}
