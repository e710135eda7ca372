using System.Globalization;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A dose, the total of a week or the gap between two doses is beyond the product's label.</summary>
/// <remarks>
/// Decides at once, always "act", never folded: the label is the limit. Judged with the volume at its low end, since less water than on
/// file makes a dose stronger. Sources: what the programme asks, what the settings as found and as left make of it, what was poured by
/// hand, and what left the drum beyond the uncertainty of its levels.
/// </remarks>
public sealed class LabelExceeded : IFindingRule
{
    private const double DaysOfAWeek = 7;
    private const double Hair = 1e-6;

    private static readonly Text DoseSays = new(
        "{0}: one dose of {1} gives {2} in {3} of water; the label allows {4}. The label is the limit.",
        "{0}: una dosis de {1} da {2} en {3} de agua; la etiqueta permite {4}. La etiqueta es el límite.",
        "{0}: uma dose de {1} dá {2} em {3} de água; o rótulo permite {4}. O rótulo é o limite.");

    private static readonly Text WeekSays = new(
        "{0}: {1} within a week gives {2} in {3} of water; the label allows {4} a week. The label is the limit.",
        "{0}: {1} en una semana dan {2} en {3} de agua; la etiqueta permite {4} por semana. La etiqueta es el límite.",
        "{0}: {1} em uma semana dão {2} em {3} de água; o rótulo permite {4} por semana. O rótulo é o limite.");

    private static readonly Text GapSays = new(
        "{0}: two doses are {1} apart; the label asks for at least {2}. The label is the limit.",
        "{0}: dos dosis están a {1}; la etiqueta pide al menos {2}. La etiqueta es el límite.",
        "{0}: duas doses estão a {1}; o rótulo pede ao menos {2}. O rótulo é o limite.");

    private static readonly Text DoseFigure = new("one dose, volume at its low end", "una dosis, con el volumen por lo bajo", "uma dose, com o volume por baixo");
    private static readonly Text WeekFigure = new("doses of a week, volume at its low end", "dosis de una semana, con el volumen por lo bajo", "doses de uma semana, com o volume por baixo");
    private static readonly Text GapFigure = new("time between two doses", "tiempo entre dos dosis", "tempo entre duas doses");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.SettingsChanged, "run time, days or starts ask for too much", "el tiempo, los días o los inicios piden demasiado", "o tempo, os dias ou os inícios pedem demais"),
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the pump ran forced on, or product was poured beside the plan", "la bomba marchó forzada, o se vertió producto además del plan", "a bomba funcionou forçada, ou despejou-se produto além do plano"),
        Looks.Cause("reading", "volume, density or amount is wrong on file", "volumen, densidad o cantidad están mal en la ficha", "volume, densidade ou quantidade estão errados no cadastro"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Stop and read the label on the drum; ask the supervisor before the next dose.", "Pare y lea la etiqueta del bidón; pregunte al supervisor antes de la próxima dosis.", "Pare e leia o rótulo da bombona; pergunte ao supervisor antes da próxima dose."),
        Looks.Say("Bring run time, days and starts within the label.", "Ajuste tiempo, días e inicios a la etiqueta.", "Ajuste tempo, dias e inícios ao rótulo."),
        Looks.Say("Measure the system's volume.", "Mida el volumen del sistema.", "Meça o volume do sistema."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.LabelExceeded;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var drums = new List<(string Code, Product Product)>(visit.History.DrumCodes.Length);
        foreach (var code in visit.History.DrumCodes)
        {
            if (FeedParts.ProductInDrum(visit, code) is { } product && HasLabel(product))
            {
                drums.Add((code, product));
            }
        }

        IReadOnlyList<Product> poured = visit.Record.Additions.Count == 0 ? [] :
        [
            .. visit.Record.Additions
                .Select(addition => FeedParts.ProductOf(visit, addition.Product))
                .OfType<Product>()
                .Where(product => HasLabel(product) && !drums.Exists(drum => drum.Product == product))
                .Distinct(),
        ];
        if (visit.History.System.VolumeL is not { } volume || volume <= 0)
        {
            foreach (var drum in drums)
            {
                yield return Verdict.NotJudged(visit.History.Subjects.Drum(drum.Code), VisitReasons.NoProgramme);
            }

            yield break;
        }

        var water = volume * thresholds.LabelVolumeShare.Value;
        foreach (var drum in drums)
        {
            yield return Of(visit.History.Subjects.Drum(drum.Code), new Case(visit, drum.Code, drum.Product, water).Excesses());
        }

        // Poured by hand from no drum on file: without a drum there is nothing else to name.
        yield return poured.Count == 0 ? Verdict.Clear() : Of(null, [.. poured.SelectMany(product => new Case(visit, null, product, water).Excesses())]);
    }

    private static Verdict Of(About? about, IReadOnlyList<(Said Said, EvidenceFigure Figure)> excesses) => excesses.Count == 0
        ? Verdict.Clear(about)
        : Verdict.Found(about, new Indication(Severity.Act, excesses[0].Said)
        {
            Evidence = [.. excesses.Select(excess => excess.Figure)],
            Suggests = Causes,
            LookAtNext = Next,
        });

    private static bool HasLabel(Product product) => product.LabelMaxMgPerL is not null || product.LabelMaxWeekMgPerL is not null || product.LabelGapHours is not null;

    private sealed class Case(VisitFacts visit, string? drum, Product product, double water)
    {
        private static readonly (Weekday Day, string Name)[] Weekdays = [.. Enum.GetValues<Weekday>().Select(day => (day, day.ToString()))];

        private List<(Said, EvidenceFigure)>? _excesses;

        public IReadOnlyList<(Said, EvidenceFigure)> Excesses()
        {
            if (drum is not null && FeedParts.FeedOf(visit, drum) is { Mode: FeedMode.DosePlan } feed)
            {
                foreach (var variant in Variants(feed))
                {
                    OfPlan(variant);
                }
            }

            OfHand();
            OfDrum();
            return _excesses ?? [];
        }

        // What the programme asks, unless the controller was read: then what it was found and left at.
        private Feed[] Variants(Feed feed)
        {
            var output = FeedParts.OutputOf(visit, drum!);
            List<SettingReading>? read = null;
            var settings = visit.Record.Settings;
            for (var i = 0; i < settings.Count; i++)
            {
                var setting = settings[i];
                if (setting.NotRead != true && output is not null && setting.Name.Length > output.Length && setting.Name[output.Length] == '/' && setting.Name.StartsWith(output, StringComparison.OrdinalIgnoreCase))
                {
                    (read ??= []).Add(setting);
                }
            }

            if (read is null)
            {
                return [feed];
            }

            var (found, left) = (With(feed, read, static s => s.Found), With(feed, read, static s => s.Left ?? s.Found));
            return found == left ? [found] : [found, left];
        }

        private static Feed With(Feed feed, List<SettingReading> read, Func<SettingReading, SettingValue?> which)
        {
            foreach (var setting in read)
            {
                if (which(setting) is not { } value)
                {
                    continue;
                }

                feed = setting.Name[(setting.Name.IndexOf('/', StringComparison.Ordinal) + 1)..] switch
                {
                    "runMinutes" when value.Number is { } minutes && setting.Unit is null or "min" => feed with { RunMinutes = value.Number },
                    "starts" when value.Text is { } starts => feed with { Starts = starts.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) },
                    "starts" when value.IsNone => feed with { Starts = [] },
                    "weeks" when value.Text is { } weeks => feed with { Weeks = [.. Numbers(weeks)] },
                    "days" when value.Text is { } days => feed with { Days = [.. Days(days)] },
                    _ => feed,
                };
            }

            return feed;
        }

        private static IEnumerable<int> Numbers(string text) => text.Split(',', StringSplitOptions.TrimEntries)
            .Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)
            .Where(number => number > 0);

        private static IEnumerable<Weekday> Days(string text) => text.Split(',', StringSplitOptions.TrimEntries)
            .Select(part => Weekdays.Where(day => day.Name.StartsWith(part, StringComparison.OrdinalIgnoreCase)).Select(day => (Weekday?)day.Day).FirstOrDefault())
            .Where(day => day is not null)
            .Select(day => day!.Value);

        private void OfPlan(Feed feed)
        {
            var programme = visit.Programme!;
            if (AmountOf(feed) is not { } litres)
            {
                return;
            }

            Dose(litres);
            var from = visit.Visit.At;

            // Wall times: when the clocks move forward a week has an hour less, and the next start belongs to the next week all the same.
            var walls = visit.History.Doses.Walls(programme, feed, from, from.AddDays(DaysOfAWeek * ((programme.PlanWeeks ?? 4) + 1)));
            Week(MostWithinAWeek(walls) * litres);
            if (walls.Length > 1)
            {
                var least = double.MaxValue;
                for (var i = 1; i < walls.Length; i++)
                {
                    least = Math.Min(least, (walls[i] - walls[i - 1]).TotalHours);
                }

                Gap(least);
            }
        }

        // Counted from each start on: where the clocks moved back, a later one may stand before it on the wall, but never by a day.
        private static int MostWithinAWeek(ReadOnlySpan<DateTime> walls)
        {
            var most = 0;
            for (var i = 0; i < walls.Length; i++)
            {
                var (end, count) = (walls[i].AddDays(DaysOfAWeek), 0);
                for (var later = i; later < walls.Length && walls[later] < end.AddDays(1); later++)
                {
                    count += walls[later] < end ? 1 : 0;
                }

                most = Math.Max(most, count);
            }

            return most;
        }

        private double? AmountOf(Feed feed) => feed.RunMinutes is { } minutes && FeedParts.PumpOf(visit, drum!)?.RatedLPerH is { } rated
            ? minutes / 60 * rated
            : (feed.TargetMgPerL ?? product.DoseMgPerL) is { } target && visit.History.System.VolumeL is { } volume
                ? target * volume / 1e6 / (product.DensityKgPerL ?? 1)
                : null;

        private void OfHand()
        {
            if (visit.Record.Additions.Count == 0)
            {
                return;
            }

            var now = Poured(visit).ToList();
            if (now.Count == 0)
            {
                return;
            }

            Dose(now.Max(pour => pour.Litres));
            var all = visit.Back().TakeWhile(earlier => earlier == visit || (visit.Visit.At - earlier.Visit.At).TotalDays <= 5 * DaysOfAWeek).SelectMany(Poured).ToList();
            var planned = drum is null
                ? []
                : PlannedRuns.Of(visit.History, drum, now.Min(pour => pour.At).AddDays(-DaysOfAWeek), visit.Visit.At)
                    .Select(run => (At: run.Start, Litres: AmountOf(run.Feed) ?? 0, IsTimed: true))
                    .ToList();
            List<(DateTime At, double Litres, bool IsTimed)> doses = [.. all, .. planned];
            Week(now.Max(pour => doses.Where(dose => dose.At <= pour.At && dose.At > pour.At.AddDays(-DaysOfAWeek)).Sum(dose => dose.Litres)));
            var timed = now.Where(pour => pour.IsTimed).ToList();
            foreach (var pour in timed)
            {
                var gaps = doses.Where(dose => dose.IsTimed && dose != pour).Select(dose => Math.Abs((dose.At - pour.At).TotalHours)).ToList();
                if (gaps.Count > 0)
                {
                    Gap(gaps.Min());
                }
            }
        }

        private IEnumerable<(DateTime At, double Litres, bool IsTimed)> Poured(VisitFacts of) => of.Record.Additions
            .Where(addition => FeedParts.Same(addition.Product, product.Code) && !of.History.System.Drums.Any(d => FeedParts.Same(d.Code, addition.To)))
            .Select(addition => (At: (addition.At ?? of.Visit.Visit.Arrived).Utc, Litres: FeedParts.Litres(addition.Amount, addition.Unit, product), IsTimed: addition.At is not null))
            .Where(pour => pour.Litres.HasValue)
            .Select(pour => (pour.At, pour.Litres.Value, pour.IsTimed));

        // Whatever left a drum in so many days, some week of them took at least its share.
        private void OfDrum()
        {
            if (drum is null || FeedParts.LastLevelBefore(visit, drum) is not { } from
                || ProductUse.UsedBetween(from, visit, drum) is not { HasValue: true, Value: var used })
            {
                return;
            }

            var weeks = Math.Ceiling((visit.Visit.At - from.Visit.At).TotalDays / DaysOfAWeek);
            Week(used.Low / Math.Max(1, weeks));
        }

        private double MgPerL(double litres) => litres * (product.DensityKgPerL ?? 1) * 1e6 / water;

        private void Dose(double litres) => Compare(litres, product.LabelMaxMgPerL, DoseSays, DoseFigure);

        private void Week(double litres) => Compare(litres, product.LabelMaxWeekMgPerL, WeekSays, WeekFigure);

        private void Compare(double litres, double? limit, Text says, Text figure)
        {
            if (limit is { } most && MgPerL(litres) > most * (1 + Hair))
            {
                (_excesses ??= []).Add((
                    new Said(says, product.Name, new Amount(litres, "L"), new Amount(MgPerL(litres), "mg/L"), new Amount(water, "L"), new Amount(most, "mg/L")),
                    new EvidenceFigure(figure, MgPerL(litres), "mg/L", LimitHigh: most)));
            }
        }

        private void Gap(double hours)
        {
            if (product.LabelGapHours is { } least && hours < least * (1 - Hair))
            {
                (_excesses ??= []).Add((
                    new Said(GapSays, product.Name, new Amount(hours, "h"), new Amount(least, "h")),
                    new EvidenceFigure(GapFigure, hours, "h", LimitLow: least)));
            }
        }
    }
}
