using LogBook.Domain.Assessments;
using LogBook.Domain.Cycles;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>Cycles of the water at one visit by every route that its readings allow.</summary>
/// <param name="RawConductivity">Conductivity of the tower over that of the make-up, as it stands; under-reads cycles.</param>
/// <param name="UnderReading">Factor by which conductivity under-reads here.</param>
/// <param name="ByConductivity">By conductivity, corrected.</param>
/// <param name="ByChloride">By chloride.</param>
/// <param name="ByCalcium">By calcium; a check for deposits, not a route.</param>
/// <param name="BySilica">By silica.</param>
/// <param name="ByVolume">By make-up over bleed; reads high.</param>
/// <param name="Best">By the best agreeing routes among conductivity, chloride and silica.</param>
/// <param name="AgreeingRoutes">Figure codes of the routes in <paramref name="Best"/>.</param>
public sealed record CyclesFacts(
    Computed<Estimate> RawConductivity,
    Estimate UnderReading,
    Computed<Estimate> ByConductivity,
    Computed<Estimate> ByChloride,
    Computed<Estimate> ByCalcium,
    Computed<Estimate> BySilica,
    Computed<Estimate> ByVolume,
    Computed<Estimate> Best,
    IReadOnlyList<string> AgreeingRoutes)
{
    private const int BaselineVisits = 5;
    private const int BaselineReach = 26;

    // Share of the correction itself that is taken as its standard uncertainty: PHREEQC waters scatter by about half of it (R01).
    private const double CorrectionUncertainty = 0.5;

    // Ratio of conductivity cycles to ion cycles and the ion cycles, where both are known; kept, because later visits ask for it again.
    private (double Ratio, double Cycles)? IonBaseline { get; init; }

    /// <summary>The system's own median of that ratio over at least five undisturbed visits before this one, or null.</summary>
    public double? OwnRatio { get; private init; }

    /// <summary>Whether there are several routes and no two of them agree.</summary>
    public bool RoutesContradict => AgreeingRoutes.Count == 1 && (ByConductivity.HasValue ? 1 : 0) + (ByChloride.HasValue ? 1 : 0) + (BySilica.HasValue ? 1 : 0) > 1;

    /// <summary>Whether make-up over bleed is known.</summary>
    public bool CyclesByVolumeIsKnown => ByVolume.HasValue;

    /// <summary>Cycles by the route of a figure code.</summary>
    /// <param name="code">One of the cycles codes of <see cref="FigureCodes"/>.</param>
    /// <returns>The route.</returns>
    public Computed<Estimate> Route(string code) => code switch
    {
        FigureCodes.CyclesByConductivity => ByConductivity,
        FigureCodes.CyclesByChloride => ByChloride,
        FigureCodes.CyclesByCalcium => ByCalcium,
        FigureCodes.CyclesBySilica => BySilica,
        FigureCodes.CyclesByVolume => ByVolume,
        _ => Best,
    };

    /// <summary>Works out the routes.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The routes with their reasons.</returns>
    public static CyclesFacts Of(VisitFacts visit)
    {
        var raw = Ratio(visit, TestCodes.Conductivity);
        var chloride = Ratio(visit, TestCodes.Chloride);
        var silica = Ratio(visit, TestCodes.Silica);
        var own = OwnRatioBefore(visit);
        var under = raw.HasValue ? UnderReadingOf(raw.Value.Value, own) : Estimate.Exact(1);
        var conductivity = raw.Map(value => value.Over(under));
        var candidates = new List<(string Code, bool IsIon, Estimate Value)>();
        Add(candidates, FigureCodes.CyclesByChloride, true, chloride);
        Add(candidates, FigureCodes.CyclesBySilica, true, silica);
        Add(candidates, FigureCodes.CyclesByConductivity, false, conductivity);
        var (best, routes) = BestAgreeing(candidates);
        return new CyclesFacts(
            raw, under, conductivity, chloride, Ratio(visit, TestCodes.Calcium), silica, visit.Water.CyclesByVolume, best, routes)
        {
            OwnRatio = own?.Ratio,
            IonBaseline = raw.HasValue && Ions(chloride, silica) is { Value: > 0 } ions ? (raw.Value.Value / ions.Value, ions.Value) : null,
        };
    }

    /// <summary>
    /// Factor by which conductivity under-reads cycles: C (1 − 0.025 (C − 1)) is the ratio read, times how the system's own ratio
    /// compares with that curve.
    /// </summary>
    /// <param name="ratio">Conductivity of the tower over that of the make-up.</param>
    /// <param name="own">The system's own ratio against the curve, or null before a baseline.</param>
    /// <returns>The factor. Its uncertainty is half of the correction (the curve before a baseline), or that of the baseline.</returns>
    internal static Estimate UnderReadingOf(double ratio, (double Ratio, double OverCurve, double StandardUncertainty)? own)
    {
        var scaled = ratio / (own?.OverCurve ?? 1);

        // The parabola turns over at C = 20.5; far below that the smaller root is the one meant.
        var root = (1.025 * 1.025) - (0.1 * Math.Min(scaled, 10));
        var curve = scaled <= 1 ? 1 : Curve((1.025 - Math.Sqrt(root)) / 0.05);
        return own is { } known
            ? new Estimate(curve * known.OverCurve, "1", 0).WithCommon("own-ratio", known.StandardUncertainty)
            : new Estimate(curve, "1", 0).WithCommon("conductivity-factor", CorrectionUncertainty * (1 - curve));
    }

    private static double Curve(double cycles) => cycles <= 1 ? 1 : 1 - (0.025 * (cycles - 1));

    private static Computed<Estimate> Ratio(VisitFacts visit, string test)
    {
        if (visit.TowerReading(test) is not { IsCensored: false } tower)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var makeUp = visit.MakeUp(test);
        return makeUp.HasValue ? CyclesOfConcentration.FromRatio(tower.Value, makeUp.Value) : makeUp;
    }

    private static Estimate? Ions(Computed<Estimate> chloride, Computed<Estimate> silica) => (chloride.HasValue, silica.HasValue) switch
    {
        (true, true) => WeightedMean([chloride.Value, silica.Value]),
        (true, false) => WeightedMean([chloride.Value]),
        (false, true) => WeightedMean([silica.Value]),
        _ => null,
    };

    private static (double Ratio, double OverCurve, double StandardUncertainty)? OwnRatioBefore(VisitFacts visit)
    {
        Span<double> ratios = stackalloc double[BaselineReach];
        Span<double> overCurve = stackalloc double[BaselineReach];
        var count = 0;
        for (var earlier = visit.Previous; earlier is not null && count < BaselineReach; earlier = earlier.Previous)
        {
            if (earlier.Unsettled is null && earlier.Cycles.IonBaseline is { } point)
            {
                (ratios[count], overCurve[count]) = (point.Ratio, point.Ratio / Curve(point.Cycles));
                count++;
            }
        }

        if (count < BaselineVisits)
        {
            return null;
        }

        ratios = ratios[..count];
        overCurve = overCurve[..count];
        var deviation = Statistics.StandardDeviation(ratios);

        // A median of normal values scatters by sqrt(pi/2) times the standard error of their mean.
        return (Statistics.MedianInPlace(ratios), Statistics.MedianInPlace(overCurve), 1.2533 * deviation / Math.Sqrt(count));
    }

    private static void Add(List<(string Code, bool IsIon, Estimate Value)> candidates, string code, bool isIon, Computed<Estimate> route)
    {
        if (route is { HasValue: true, Value.Value: > 0 })
        {
            candidates.Add((code, isIon, route.Value));
        }
    }

    // The largest group in which every pair agrees within 2u; among equals the one with an ion, then the most certain.
    private static (Computed<Estimate> Best, IReadOnlyList<string> Routes) BestAgreeing(List<(string Code, bool IsIon, Estimate Value)> candidates)
    {
        if (candidates.Count == 0)
        {
            return (Computed<Estimate>.None(VisitReasons.NotMeasured), []);
        }

        if (candidates.Count == 1)
        {
            return (Computed<Estimate>.Of(WeightedMean([candidates[0].Value])), [candidates[0].Code]);
        }

        // All of them together are the largest group there can be, and mostly they do agree.
        var all = (1 << candidates.Count) - 1;
        var best = AllAgree(candidates, all) ? GroupOf(candidates, all) : null;
        for (var mask = 1; best?.Mask != all && mask < all; mask++)
        {
            if (AllAgree(candidates, mask) && GroupOf(candidates, mask) is var group && (best is null || group.IsBetterThan(best)))
            {
                best = group;
            }
        }

        return (Computed<Estimate>.Of(best!.Mean), best.Codes);
    }

    private static bool AllAgree(List<(string Code, bool IsIon, Estimate Value)> candidates, int mask)
    {
        for (var i = 0; i < candidates.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if ((mask & (1 << i)) != 0 && (mask & (1 << j)) != 0 && !Agree(candidates[j].Value, candidates[i].Value))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Group GroupOf(List<(string Code, bool IsIon, Estimate Value)> candidates, int mask)
    {
        var (codes, values, hasIon) = (new List<string>(candidates.Count), new List<Estimate>(candidates.Count), false);
        for (var i = 0; i < candidates.Count; i++)
        {
            if ((mask & (1 << i)) != 0)
            {
                codes.Add(candidates[i].Code);
                values.Add(candidates[i].Value);
                hasIon |= candidates[i].IsIon;
            }
        }

        return new Group(mask, [.. codes], hasIon, WeightedMean(values));
    }

    private sealed record Group(int Mask, string[] Codes, bool HasIon, Estimate Mean)
    {
        private double Relative { get; } = Mean.StandardUncertainty / Mean.Value;

        public bool IsBetterThan(Group other) => Codes.Length != other.Codes.Length ? Codes.Length > other.Codes.Length
            : HasIon != other.HasIon ? HasIon
            : Relative < other.Relative;
    }

    private static bool Agree(Estimate a, Estimate b) => Math.Abs(a.Value - b.Value) <= 2 * a.UncertaintyOfDifference(b);

    private static Estimate WeightedMean(IReadOnlyList<Estimate> values)
    {
        var weights = new double[values.Count];
        var sum = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = 1 / Math.Max(1e-12, values[i].StandardUncertainty * values[i].StandardUncertainty);
            sum += weights[i];
        }

        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] /= sum;
        }

        return Estimate.WeightedSum(values, weights);
    }
}
