using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Summaries;

/// <summary>
/// Words a visit for the customer: decisions first, then what was found, then what was done. Pure: the same source and
/// language give the same summary. Numbers come from the documents and the stored assessment; nothing is computed here.
/// </summary>
public sealed class SummaryBuilder
{
    // What concerns the firm's own instruments, records and mail is not the customer's to act on.
    private static readonly HashSet<string> OwnMatters = new(StringComparer.Ordinal)
    {
        FindingKinds.SecondLook, FindingKinds.ValueSuspect, FindingKinds.SummaryUndelivered,
        FindingKinds.NotMeasured, FindingKinds.InstrumentShift, FindingKinds.LotShift,
    };

    private static readonly string[] FiguresShown =
    [
        FigureCodes.CyclesBest, FigureCodes.CyclesByConductivity, FigureCodes.CyclesByChloride, FigureCodes.MakeUp, FigureCodes.Bleed,
        FigureCodes.Evaporation, FigureCodes.UnexplainedLoss, FigureCodes.ProductUsed, FigureCodes.ProductExpected,
        FigureCodes.UsedOverExpected, FigureCodes.ProbeError, FigureCodes.DaysToEmpty,
    ];

    private static readonly string[] Counts = [TestCodes.DipSlide, TestCodes.ColonyCount, TestCodes.Legionella];

    private readonly SummarySource _source;
    private readonly Language _language;
    private readonly Site _site;
    private readonly TimeZoneInfo _zone;

    private SummaryBuilder(SummarySource source, Language language)
    {
        _source = source;
        _language = language;
        _site = source.Firm.Sites[source.Visit.Site];
        _zone = TimeZoneInfo.FindSystemTimeZoneById(_site.TimeZone);
    }

    private Visit Visit => _source.Visit;

    /// <summary>Words a visit.</summary>
    /// <param name="source">Where everything comes from; the visit's site must be in its set-up.</param>
    /// <param name="language">Language of the reader.</param>
    /// <returns>The summary.</returns>
    public static VisitSummary Build(SummarySource source, Language language) => new SummaryBuilder(source, language).Build();

    private VisitSummary Build()
    {
        var version = Visit.Version ?? 1;
        return new VisitSummary
        {
            Language = _language,
            Firm = _source.FirmName,
            Customer = _source.Firm.Customers.TryGetValue(_site.Customer, out var customer) ? customer.Name : _site.Customer,
            SiteCode = _site.Code,
            SiteName = _site.Name,
            VisitId = Visit.Id,
            Version = version,
            ReissueReason = version > 1 ? Visit.Reason ?? string.Empty : null,
            Day = Shown.Day(DayOf(Visit.Arrived.Utc), _language),
            When = Shown.DayAndTime(Visit.Arrived.Utc, _zone, _language)
                + (Visit.Left is { } left ? " – " + TimeZoneInfo.ConvertTimeFromUtc(left.Utc, _zone).ToString("HH:mm", Cultures.Of(_language)) : string.Empty),
            By = string.Join(", ", new[] { Visit.Technician }.Concat(Visit.Also).Select(PersonName)),
            Purpose = VisitTexts.NameOf(Visit.Kind).In(_language),
            Stopped = Visit.Kind == VisitKind.Stopped ? Visit.Reason ?? string.Empty : null,
            IsAssessed = _source.IsAssessed,
            Needs = [.. Needs()],
            Systems = [.. Visit.Systems.Select(SystemOf)],
            Cautions = [.. Cautions()],
            Signatures = [.. Visit.Signatures.Select(signature => ResultWords.SignatureOf(signature, _language))],
        };
    }

    private IEnumerable<SummaryNeed> Needs()
    {
        foreach (var asked in Visit.Recommendations.Where(r => (r.State ?? RecommendationState.Asked) == RecommendationState.Asked))
        {
            yield return new SummaryNeed(asked.Text, asked.Consequence, null);
        }

        foreach (var action in Visit.Systems.SelectMany(s => s.Actions).Where(IsCustomers))
        {
            yield return new SummaryNeed(action.Text, null, DueOf(action));
        }
    }

    private SummarySystem SystemOf(VisitedSystem record)
    {
        var system = _source.Firm.System(_site.Code, record.System);
        var programme = system?.Programmes.Where(p => p.From <= DayOf(Visit.Arrived.Utc)).MaxBy(p => p.From);
        return new SummarySystem(
            system?.Name ?? record.System,
            system?.VolumeL is { } litres ? Shown.Entered(litres, "L", _language) : null,
            [.. FindingsOf(record.System)],
            [.. record.Observations.Select(seen => seen.About + ": " + seen.Text)],
            [.. record.Readings.Select(reading => ResultOf(reading, programme))],
            [.. FiguresOf(record.System)],
            [.. DoneOn(record, system)]);
    }

    private IEnumerable<SummaryFinding> FindingsOf(string system)
    {
        // What was known when this version was written; an old summary does not tell what came later.
        var known = DayOf((Visit.AmendedAt ?? Visit.Left ?? Visit.Arrived).Utc);
        return _source.Findings
            .Where(f => string.Equals(f.System, system, StringComparison.OrdinalIgnoreCase)
                && f.Severity != Severity.Watch && f.State != FindingState.Withdrawn && !OwnMatters.Contains(f.Kind)
                && f.FirstSeen <= known && (f.ClosedOn is not { } closed || closed > known))
            .OrderByDescending(f => f.Severity).ThenBy(f => f.FirstSeen).ThenBy(f => f.Kind, StringComparer.Ordinal)
            .Select(f => new SummaryFinding(UrgencyOf(f.Severity).In(_language), f.Text));
    }

    private SummaryResult ResultOf(Reading reading, Programme? programme)
    {
        var range = RangeJudgement.RangeOf(programme, reading.At, reading.Test);
        var standing = RangeJudgement.Of(reading, range);
        var name = (TestCatalogue.Find(reading.Test, _source.Firm)?.Name ?? TestTexts.NameOf(reading.Test)).In(_language)
            + ", " + TestTexts.NameOfPoint(reading.At).In(_language)
            + (reading.Source is { } source ? " (" + VisitTexts.NameOf(source).In(_language) + ")" : string.Empty);
        return new SummaryResult(
            name,
            ResultWords.ValueOf(reading, _language),
            range is null ? string.Empty : ResultWords.RangeOf(range, _language),
            ResultWords.StandingOf(standing).In(_language),
            standing is RangeStanding.Above or RangeStanding.Below);
    }

    private IEnumerable<SummaryFigure> FiguresOf(string system) => _source.Figures
        .Where(figure => string.Equals(figure.System, system, StringComparison.OrdinalIgnoreCase) && figure.Estimate is not null)
        .Select(figure => (figure, Place: Array.IndexOf(FiguresShown, figure.Code)))
        .Where(shown => shown.Place >= 0)
        .OrderBy(shown => shown.Place).ThenBy(shown => shown.figure.About, StringComparer.Ordinal)
        .Select(shown => new SummaryFigure(
            FigureTexts.NameOf(shown.figure.Code).In(_language) + (FigureTexts.SubjectOf(shown.figure.Code, shown.figure.About) is { Length: > 0 } subject ? ", " + AboutName(system, subject) : string.Empty),
            Shown.Estimated(shown.figure.Estimate!, _language)));

    private IEnumerable<string> DoneOn(VisitedSystem record, WaterSystem? system)
    {
        foreach (var probe in record.Probes.Where(p => p.AfterCleaning is not null || p.Calibrated == true))
        {
            yield return ProbeDone(probe);
        }

        foreach (var drum in record.Drums)
        {
            var product = ProductName(drum.ProductFound ?? (system is null ? null : PartsOnDay.DrumOn(system, drum.Drum, DayOf(Visit.Arrived.Utc))?.Product) ?? drum.Drum);
            if (drum.AddedL > 0)
            {
                yield return SummaryTexts.DrumFilled.In(_language, product, Shown.Entered(drum.AddedL.Value, "L", _language), drum.Drum);
            }

            if (drum.Swapped == true)
            {
                yield return SummaryTexts.DrumSwapped.In(_language, product, drum.Drum);
            }
        }

        foreach (var addition in record.Additions)
        {
            yield return WithReason(SummaryTexts.AddedByHand.In(_language, ProductName(addition.Product), Shown.Entered(addition.Amount, addition.Unit, _language)), addition.Reason);
        }

        foreach (var setting in record.Settings.Where(s => s.Left is not null && !Equals(s.Left, s.Found)))
        {
            yield return WithReason(
                SummaryTexts.SettingChanged.In(_language, VisitTexts.NameOfSetting(setting.Name).In(_language), SettingWords(setting, setting.Found), SettingWords(setting, setting.Left)),
                setting.Reason);
        }

        foreach (var output in record.Switches.Where(s => s.Left is { } left && (left != s.Found || left != SwitchPosition.Automatic)))
        {
            yield return WithReason(SummaryTexts.SwitchLeft.In(_language, output.Output, VisitTexts.NameOf(output.Left!.Value).In(_language)), output.Reason);
        }

        foreach (var happened in record.Events)
        {
            yield return WithReason(EventWords.NameOf(happened).In(_language) + (happened.Of is { } of ? ": " + of : string.Empty), EventWords.NoteOf(happened));
        }

        foreach (var action in record.Actions.Where(a => !IsCustomers(a)))
        {
            yield return action.State == ActionState.Done
                ? SummaryTexts.ActionDone.In(_language, action.Text)
                : SummaryTexts.ActionOpen.In(_language, action.Text) + (DueOf(action) is { } due ? " – " + due : string.Empty);
        }
    }

    private string ProbeDone(ProbeReading probe)
    {
        var unit = probe.Unit ?? "1";
        var line = (probe.Of is null or ProbeKind.Conductivity ? SummaryTexts.ProbeDone : SummaryTexts.OtherProbeDone).In(
            _language,
            probe.Probe ?? string.Empty,
            Shown.Entered(probe.AsFound, unit, _language),
            probe.Reference is { } reference ? Shown.Entered(reference, unit, _language) : "–",
            Shown.Entered(probe.AsLeft ?? probe.AfterCleaning ?? probe.AsFound, unit, _language));
        string?[] acts =
        [
            probe.AfterCleaning is null ? null : SummaryTexts.Cleaned.In(_language),
            probe.Calibrated == true ? SummaryTexts.Calibrated.In(_language) : null,
        ];
        return line + ": " + string.Join(", ", acts.Where(act => act is not null));
    }

    private IEnumerable<string> Cautions()
    {
        if (Visit.Systems.SelectMany(s => s.Readings).Any(r => Counts.Contains(r.Test, StringComparer.OrdinalIgnoreCase)))
        {
            yield return SummaryTexts.ResultCaution.In(_language);
        }

        if (Visit.Systems.SelectMany(s => s.Readings).Any(r => r.NotTaken is null && r.NotQuantifiable != true && RangeJudgement.NumberOf(r) is null)
            || Visit.Samples.Count > 0)
        {
            yield return SummaryTexts.LateResults.In(_language);
        }

        yield return SummaryTexts.CalculatedCaution.In(_language);
        yield return SummaryTexts.DeferCaution.In(_language);
    }

    private string WithReason(string text, string? reason) => string.IsNullOrWhiteSpace(reason) ? text : SummaryTexts.ReasonGiven.In(_language, text, reason);

    private string? DueOf(VisitAction action) => action.Due is { } due ? SummaryTexts.DueBy.In(_language, Shown.Day(due, _language)) : null;

    private static bool IsCustomers(VisitAction action) =>
        string.Equals(action.Owner, "customer", StringComparison.OrdinalIgnoreCase) && (action.State ?? ActionState.Open) == ActionState.Open;

    private string PersonName(string code) => _source.Firm.People.TryGetValue(code, out var person) ? person.Name : code;

    private string ProductName(string code) => _source.Firm.Products.TryGetValue(code, out var product) ? product.Name : code;

    private string AboutName(string systemCode, string about)
    {
        var drum = _source.Firm.System(_site.Code, systemCode) is { } system ? PartsOnDay.DrumOn(system, about, DayOf(Visit.Arrived.Utc)) : null;
        return drum is null ? about : ProductName(drum.Product);
    }

    private string SettingWords(SettingReading setting, SettingValue? value) =>
        SettingValues.In(setting.Name, value, setting.Unit ?? SettingNames.UnitOf(setting.Name, null), _language);

    private DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, _zone));

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static Text UrgencyOf(Severity severity) => severity switch
    {
        Severity.Act => SummaryTexts.BeforeLeaving,
        Severity.Plan => SummaryTexts.ByNextVisit,
        _ => SummaryTexts.KeepEye,
    };
}
