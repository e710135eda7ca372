using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;

namespace LogBook.Application.Reviews;

/// <summary>Makes the rows of an assessment; the same for storing and for verifying.</summary>
internal static class ResultRows
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>What a finding concerns, as one text: "drum:D-INH". Empty when it concerns the system.</summary>
    public static string AboutKey(About? about) => About.Key(about);

    /// <summary>Rows of the findings of a system, with people's answers laid over those that are open.</summary>
    /// <param name="system">The system.</param>
    /// <param name="assessment">Its assessment.</param>
    /// <param name="marks">Answers to findings of the system.</param>
    /// <param name="today">Day at the site, for what sleeps.</param>
    public static IEnumerable<FindingRow> Findings(SystemRow system, SystemAssessment assessment, IReadOnlyList<FindingMarkRow> marks, DateOnly today) =>
        assessment.Findings.Select(finding => Row(system, finding, assessment.EngineVersion, marks, today));

    /// <summary>Rows of the round-wide findings, which are the firm's own.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="engineVersion">Version of the rules and settings that made them.</param>
    /// <param name="marks">Answers to them.</param>
    /// <param name="today">Day, for what sleeps.</param>
    public static IEnumerable<FindingRow> Findings(IReadOnlyList<AssessedFinding> findings, string engineVersion, IReadOnlyList<FindingMarkRow> marks, DateOnly today) =>
        findings.Select(finding => Row(null, finding, engineVersion, marks, today));

    /// <summary>Findings that people closed, for the engine.</summary>
    /// <param name="marks">Answers.</param>
    public static IReadOnlyList<FindingAnswer> Closed(IEnumerable<FindingMarkRow> marks) =>
    [
        .. marks.Where(mark => mark.State == FindingState.Closed)
            .Select(mark => new FindingAnswer(mark.Kind, mark.AboutKey, mark.FirstSeen, DateTime.SpecifyKind(mark.At, DateTimeKind.Utc), mark.Because)),
    ];

    private static FindingRow Row(SystemRow? system, AssessedFinding finding, string engineVersion, IReadOnlyList<FindingMarkRow> marks, DateOnly today)
    {
        var key = AboutKey(finding.InEnglish.About);
        var mark = marks.LastOrDefault(m => m.Kind == finding.InEnglish.Kind && m.AboutKey == key && m.FirstSeen == finding.InEnglish.FirstSeen);
        var answered = finding.InEnglish.State == FindingState.Open && mark is not null && Holds(mark, finding.InEnglish.Severity, today) ? mark : null;
        Finding Laid(Finding one) => answered is null
            ? one
            : one with { State = answered.State, Until = answered.Until, Because = Words(answered) };
        var shown = Laid(finding.InEnglish);
        return new FindingRow
        {
            CustomerId = system?.CustomerId,
            SiteId = system?.SiteId,
            SystemId = system?.Id,
            Kind = shown.Kind,
            AboutKey = key,
            Severity = shown.Severity,
            State = shown.State,
            FirstSeen = shown.FirstSeen,
            LastSeen = shown.LastSeen,
            ClosedOn = shown.ClosedOn,
            Until = shown.Until,
            FirstVisit = shown.FirstVisit,
            English = ExchangeWriter.CanonicalOf(shown),
            Spanish = ExchangeWriter.CanonicalOf(Laid(finding.InSpanish)),
            Portuguese = ExchangeWriter.CanonicalOf(Laid(finding.InPortuguese)),
            EngineVersion = engineVersion,
        };
    }

    private static string? Words(FindingMarkRow mark) => mark.Owner is null ? mark.Because : string.IsNullOrWhiteSpace(mark.Because) ? mark.Owner : $"{mark.Owner}: {mark.Because}";

    // Sleep ends on its day, and any answer to a mild finding ends when it gets worse. What a person closed the engine closes itself.
    private static bool Holds(FindingMarkRow mark, Severity severity, DateOnly today) =>
        mark.State is FindingState.Acknowledged or FindingState.Snoozed && (mark.Until is null || today <= mark.Until) && (mark.Severity is null || severity <= mark.Severity);

    /// <summary>Rows of the figures.</summary>
    public static IEnumerable<FigureRow> Figures(SystemRow system, SystemAssessment assessment, IReadOnlyDictionary<Guid, int> visits) =>
        assessment.Figures.Select(figure => new FigureRow
        {
            CustomerId = system.CustomerId,
            SiteId = system.SiteId,
            SystemId = system.Id,
            VisitRowId = visits[figure.VisitId],
            Code = figure.Code,
            About = figure.About ?? "",
            From = figure.From,
            To = figure.To,
            Value = figure.Result.HasValue ? figure.Result.Value.Value : null,
            StandardUncertainty = figure.Result.HasValue ? figure.Result.Value.StandardUncertainty : null,
            Unit = figure.Result.HasValue ? figure.Result.Value.Unit : null,
            ReasonCode = figure.Result.HasValue ? null : figure.Result.Reasons[0].Code,
            Reasons = figure.Result.HasValue ? null : JsonSerializer.Serialize(figure.Result.Reasons, Json),
            Inputs = JsonSerializer.Serialize(figure.Inputs, Json),
        });

    /// <summary>All that a finding's row says, apart from its number.</summary>
    public static (string, string, DateOnly, string, string, string, string, FindingState, Severity, DateOnly, DateOnly?, DateOnly?, Guid?) Content(FindingRow row) =>
        (row.Kind, row.AboutKey, row.FirstSeen, row.English, row.Spanish, row.Portuguese, row.EngineVersion, row.State, row.Severity, row.LastSeen, row.ClosedOn, row.Until, row.FirstVisit);

    /// <summary>All that a figure's row says, apart from its number.</summary>
    public static (int, string, string, DateTime?, DateTime, double?, double?, string?, string?, string?, string) Content(FigureRow row) =>
        (row.VisitRowId, row.Code, row.About, row.From, row.To, row.Value, row.StandardUncertainty, row.Unit, row.ReasonCode, row.Reasons, row.Inputs);
}
