using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Two biocides meet in the plan as the controller holds it, or one poured by hand meets one from the plan.</summary>
/// <remarks>
/// The plan is unrolled over its weeks. Two non-oxidising products need the longer gap of their labels, or a day where none says; an oxidant
/// stays away while another product acts, unless its feed waits for it. Settings decide at once.
/// </remarks>
public sealed class DosePlanClash : IFindingRule
{
    private static readonly Text SaysGap = new(
        "{0} starts {1} after {2}; between them the gap is to be {3} ({4}). First time on {5}.",
        "{0} empieza {1} después de {2}; entre ambos deben pasar {3} ({4}). La primera vez el {5}.",
        "{0} começa {1} depois de {2}; entre eles devem passar {3} ({4}). A primeira vez em {5}.");

    private static readonly Text SaysContact = new(
        "{0} feeds {1} after {2}, which is to act alone for {3} ({4}). First time on {5}.",
        "{0} se dosifica {1} después de {2}, que debe actuar solo {3} ({4}). La primera vez el {5}.",
        "{0} é dosado {1} depois de {2}, que deve agir sozinho por {3} ({4}). A primeira vez em {5}.");

    private static readonly Text SaysContinuous = new(
        "{0} feeds by its measured value and does not wait for {1} ({2}).",
        "{0} se dosifica según su valor medido y no espera a {1} ({2}).",
        "{0} é dosado pelo valor medido e não espera por {1} ({2}).");

    private static readonly Text SaysPoured = new(
        "{0} was poured by hand on {1}, {2} away from a dose of {3} by the controller's own clock; the gap is to be {4} ({5}).",
        "{0} se vertió a mano el {1}, a {2} de una dosis de {3} según el propio reloj del controlador; deben pasar {4} ({5}).",
        "{0} foi despejado à mão em {1}, a {2} de uma dose de {3} pelo próprio relógio do controlador; devem passar {4} ({5}).");

    private static readonly Text OfLabel = new("gap of the label", "intervalo de la etiqueta", "intervalo do rótulo");
    private static readonly Text Between = new("time between both", "tiempo entre ambos", "tempo entre ambos");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.DosePlanClash, "the plan puts them too close", "el plan los pone demasiado juntos", "o plano os põe perto demais"),
        Looks.Cause(FindingKinds.ControllerClock, "clock or week of the controller slipped", "se corrió el reloj o la semana del controlador", "o relógio ou a semana do controlador deslizou"),
        Looks.Cause(FindingKinds.SettingsChanged, "somebody changed days or starts", "alguien cambió días o inicios", "alguém mudou dias ou inícios"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Read clock, week, days and starts of both.", "Lea reloj, semana, días e inicios de ambos.", "Leia relógio, semana, dias e inícios de ambos."),
        Looks.Say("Read both labels: some products may be fed together.", "Lea ambas etiquetas: algunos productos pueden dosificarse juntos.", "Leia os dois rótulos: alguns produtos podem ser dosados juntos."),
        Looks.LabelFirst,
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.DosePlanClash;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (ControllerPlan.Of(visit) is not { } programme)
        {
            yield break;
        }

        var biocides = programme.Feeds
            .Select(feed => (Feed: feed, Product: ControllerPlan.ProductOf(visit, feed)))
            .Where(pair => pair.Product?.Kind == ProductKind.Biocide)
            .Select(pair => new Fed(pair.Feed, pair.Product!, ControllerPlan.OutputOf(visit, pair.Feed)))
            .ToList();
        foreach (var one in biocides)
        {
            var clash = biocides.Where(other => other != one && !other.Feed.Drum.Equals(one.Feed.Drum, StringComparison.OrdinalIgnoreCase))
                .Select(other => Of(visit, programme, one, other, thresholds))
                .FirstOrDefault(indication => indication is not null)
                ?? Poured(visit, programme, one, thresholds);
            var about = new About { Output = one.Output, Drum = one.Output is null ? one.Feed.Drum : null };
            if (clash is not null)
            {
                yield return Verdict.Found(about, clash);
            }
            else if (one.IsPlanned || one.IsMeasured)
            {
                yield return Verdict.Clear(about);
            }
        }
    }

    // Whether "later" comes too soon after "first".
    private static Indication? Of(VisitFacts visit, Programme programme, Fed later, Fed first, FindingThresholds thresholds)
    {
        if (!first.IsPlanned || first.IsOxidising)
        {
            return null;
        }

        if (later.IsOxidising)
        {
            if (WaitsFor(later, first))
            {
                return null;
            }

            return later.IsMeasured ? Continuous(later, first, thresholds) : later.IsPlanned ? TooSoon(visit, programme, later, first, Alone(first) * thresholds.OxidantAlone.Value / 100, true, thresholds) : null;
        }

        return later.IsPlanned ? TooSoon(visit, programme, later, first, Gap(first.Product, later.Product, thresholds), false, thresholds) : null;
    }

    private static bool WaitsFor(Fed later, Fed first) =>
        first.Output is { } output && later.Feed.WaitsFor.Contains(output, StringComparer.OrdinalIgnoreCase);

    // How long a product is to act alone from the end of its feed: its label, else the hold that the programme gives it.
    private static double? Alone(Fed first) => first.Product.LabelContactHours ?? (first.Feed.HoldBleedShutMin is { } hold and > 0 ? hold / 60 : null);

    private static double Gap(Product a, Product b, FindingThresholds thresholds) =>
        a.LabelGapHours is null && b.LabelGapHours is null ? thresholds.BiocideGapHours.Value : Math.Max(a.LabelGapHours ?? 0, b.LabelGapHours ?? 0);

    private static Text BasisOf(Product a, Product b, FindingThresholds thresholds) =>
        a.LabelGapHours is null && b.LabelGapHours is null ? thresholds.BiocideGapHours.Basis : OfLabel;

    private static DateTime LastUntil(ReadOnlySpan<DateTime> starts, DateTime moment)
    {
        for (var i = starts.Length - 1; i >= 0; i--)
        {
            if (starts[i] <= moment)
            {
                return starts[i];
            }
        }

        return default;
    }

    private static Indication? TooSoon(VisitFacts visit, Programme programme, Fed later, Fed first, double? hours, bool isContact, FindingThresholds thresholds)
    {
        if (hours is not { } needed)
        {
            return null;
        }

        var weeks = programme.PlanWeeks ?? DosePlans.PlanCalendar.UsualWeeks;
        var from = visit.Visit.At;
        var to = from.AddDays(7 * (weeks + 1));
        var firsts = visit.History.Doses.Starts(programme, first.Feed, from, to);
        var laters = visit.History.Doses.Starts(programme, later.Feed, from, to);
        var run = isContact ? (first.Feed.RunMinutes ?? 0) / 60 : 0;
        foreach (var start in laters)
        {
            var before = LastUntil(firsts, start);
            if (before == default || (start - before).TotalHours >= needed + run - 1e-6)
            {
                continue;
            }

            var apart = (start - before).TotalHours;
            return new Indication(Severity.Plan, new Said(
                isContact ? SaysContact : SaysGap,
                later.Product.Name,
                new Amount(apart, "h"),
                first.Product.Name,
                new Amount(needed, "h"),
                isContact ? thresholds.OxidantAlone.Basis : BasisOf(first.Product, later.Product, thresholds),
                visit.History.DayOf(start)))
            {
                Evidence = [new EvidenceFigure(Between, apart, "h", LimitLow: needed + run)],
                Suggests = Causes,
                LookAtNext = Next,
            };
        }

        return null;
    }

    // Whether products must never meet is on the label; where it says nothing, only somebody who reads it can tell.
    private static Indication Continuous(Fed later, Fed first, FindingThresholds thresholds) => new(
        NeverMeets(first.Product, later.Product) || NeverMeets(later.Product, first.Product) ? Severity.Plan : Severity.Watch,
        new Said(SaysContinuous, later.Product.Name, first.Product.Name, thresholds.OxidantAlone.Basis))
    {
        Suggests = Causes,
        LookAtNext = Next,
    };

    private static bool NeverMeets(Product product, Product other) => product.NeverWith.Any(name =>
        name.Equals(other.Code, StringComparison.OrdinalIgnoreCase)
        || name.Equals("biocide", StringComparison.OrdinalIgnoreCase)
        || (name.Equals("biocide:oxidising", StringComparison.OrdinalIgnoreCase) && other.Oxidising == true)
        || (name.Equals("biocide:non-oxidising", StringComparison.OrdinalIgnoreCase) && other.Oxidising == false));

    // What people poured since the last visit, against the doses as the controller's clock and week really placed them.
    private static Indication? Poured(VisitFacts visit, Programme programme, Fed planned, FindingThresholds thresholds)
    {
        if (!planned.IsPlanned || planned.IsOxidising || visit.Previous is not { } previous)
        {
            return null;
        }

        foreach (var addition in visit.Record.Additions)
        {
            if (addition.At is not { } at
                || at.Utc < previous.Visit.At
                || visit.History.Firm.Products.GetValueOrDefault(addition.Product) is not { Kind: ProductKind.Biocide } product
                || product.Oxidising == true
                || product.Code.Equals(planned.Product.Code, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            var needed = Gap(product, planned.Product, thresholds);
            var until = at.Utc.AddHours(needed) < visit.Visit.At ? at.Utc.AddHours(needed) : visit.Visit.At;
            var starts = ControllerPlan.TrueStarts(visit, programme, planned.Feed, at.Utc.AddHours(-needed), until);
            if (starts.Count > 0)
            {
                var apart = starts.Min(start => Math.Abs((start - at.Utc).TotalHours));
                return new Indication(
                    Severity.Plan,
                    new Said(SaysPoured, product.Name, visit.History.DayOf(at.Utc), new Amount(apart, "h"), planned.Product.Name, new Amount(needed, "h"), BasisOf(product, planned.Product, thresholds)))
                {
                    Evidence = [new EvidenceFigure(Between, apart, "h", LimitLow: needed)],
                    Suggests = Causes,
                    LookAtNext = Next,
                };
            }
        }

        return null;
    }

    private sealed record Fed(Feed Feed, Product Product, string? Output)
    {
        public bool IsOxidising => Product.Oxidising == true;

        public bool IsPlanned => Feed.Mode == FeedMode.DosePlan;

        public bool IsMeasured => Feed.Mode is FeedMode.ByOrp or FeedMode.ByResidual;
    }
}
