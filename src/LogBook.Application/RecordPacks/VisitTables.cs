using LogBook.Domain.Summaries;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>Visits, results, counters and whatever else was recorded.</summary>
internal static class VisitTables
{
    public static RecordTable Visits(RecordWords words) => new(
        RecordTexts.Visits,
        [
            new(RecordTexts.Day, 1.3), new(RecordTexts.Time, 1.2), new(RecordTexts.Kind, 1.2), new(RecordTexts.People, 1.6), new(RecordTexts.System, 1), new(RecordTexts.InUse, 0.8),
            new(RecordTexts.Version, 0.8, IsFigure: true), new(RecordTexts.Reviewed, 1.6), new(RecordTexts.Signatures, 2.6), new(RecordTexts.Note, 2), new(RecordTexts.Received, 0), new(RecordTexts.Visit, 0), new(RecordTexts.Hash, 0),
        ],
        [
            .. words.Pack.Visits.Select(entry =>
            {
                var visit = entry.Visit;
                var inUse = visit.Systems.Select(system => system.InUse).Where(known => known is not null).Distinct().ToList();
                return new RecordRow(
                [
                    words.DayOf(visit),
                    words.TimeOf(visit.Arrived.Utc) + (visit.Left is { } left ? "–" + words.TimeOf(left.Utc) : ""),
                    words[VisitTexts.NameOf(visit.Kind)],
                    words.People(visit),
                    string.Join(", ", visit.Systems.Select(system => system.System)),
                    inUse.Count == 1 ? words[inUse[0] == true ? RecordTexts.Yes : RecordTexts.No] : "",
                    entry.Versions[^1].Number,
                    entry.ReviewedAt is { } at ? words[RecordTexts.ReviewedBy, words.Day(words.DayOf(at)), entry.ReviewedBy] : "",
                    string.Join("; ", visit.Signatures.Select(signature => ResultWords.SignatureOf(signature, words.Language))),
                    string.Join("; ", new[] { entry.VoidedAt is { } voided ? words[RecordTexts.Void, words.Day(words.DayOf(voided)), entry.VoidedBy, entry.VoidedWhy] : null, visit.Reason, visit.Cleaning, visit.Notes }.Where(said => !string.IsNullOrWhiteSpace(said))),
                    words.Wall(entry.ReceivedAt),
                    visit.Id.ToString(),
                    entry.Versions[^1].Sha256,
                ]);
            }),
        ]);

    public static RecordTable Results(RecordWords words) => new(
        RecordTexts.Results,
        [
            new(RecordTexts.Day, 0), new(RecordTexts.System, 0), new(SummaryTexts.Test, 2.4), new(RecordTexts.Point, 1.5), new(RecordTexts.Source, 1.7),
            new(RecordTexts.Qualifier, 0), new(RecordTexts.Number, 0, IsFigure: true), new(RecordTexts.Unit, 0), new(RecordTexts.Basis, 0),
            new(SummaryTexts.Result, 1.9, IsFigure: true), new(RecordTexts.Lowest, 0, IsFigure: true), new(RecordTexts.Highest, 0, IsFigure: true), new(RecordTexts.RangeUnit, 0),
            new(SummaryTexts.Range, 2.1), new(SummaryTexts.Standing, 1.5), new(RecordTexts.Instrument, 1.4), new(RecordTexts.Lot, 0), new(RecordTexts.Method, 0),
            new(RecordTexts.TakenAt, 0), new(RecordTexts.ResultAt, 0), new(RecordTexts.ReceivedAt, 0), new(RecordTexts.Lab, 0), new(RecordTexts.LabRef, 0), new(RecordTexts.Visit, 0),
        ],
        [.. words.Records().SelectMany(pair => pair.Record.Readings.Select(reading => ResultOf(words, pair.Visit.Visit, pair.Record, reading)))],
        RecordTexts.ResultsIntro);

    public static RecordTable Counters(RecordWords words) => new(
        RecordTexts.Counters,
        [new(RecordTexts.Day, 0), new(RecordTexts.System, 0), new(RecordTexts.What, 2), new(RecordTexts.Kind, 2), new(RecordTexts.Number, 1, IsFigure: true), new(RecordTexts.Unit, 1), new(RecordTexts.Visit, 0)],
        [
            .. words.Records().SelectMany(pair => CountersOf(words, pair.Record).Select(counter => new RecordRow(
                [words.DayOf(pair.Visit.Visit), pair.Record.System, counter.What, counter.Kind, counter.Value, counter.Unit is null ? "" : Shown.Unit(counter.Unit, words.Language), pair.Visit.Visit.Id.ToString()],
                words.GroupOf(pair.Visit.Visit, pair.Record.System)))),
        ],
        IsOnPaper: false);

    /// <summary>Every field of every visit that no other part tells, in words: nothing that was recorded can be missing.</summary>
    public static RecordTable Everything(RecordWords words) => new(
        RecordTexts.Record,
        [new(RecordTexts.Day, 0), new(RecordTexts.What, 3), new(RecordTexts.Value, 3), new(RecordTexts.Visit, 0)],
        [
            .. words.Pack.Visits.Where(entry => entry.Counts).SelectMany(entry => VisitDifferences.Between(Bare(entry.Visit), WithoutResults(entry.Visit), words.Pack.Zone)
                .Where(place => place.After is not null)
                .Select(place => new RecordRow([words.DayOf(entry.Visit), words[place.Where], words[place.After!], entry.Visit.Id.ToString()], words.GroupOf(entry.Visit)))),
        ]);

    private static RecordRow ResultOf(RecordWords words, Visit visit, VisitedSystem record, Reading reading)
    {
        var range = RangeJudgement.RangeOf(words.HistoryOf(record.System)?.ProgrammeOn(words.DayOf(visit)), reading.At, reading.Test);
        DateTime? Wall(Domain.Exchange.Moment? moment) => moment is { } at ? words.Wall(at.Utc) : null;
        return new RecordRow(
            [
                words.DayOf(visit),
                record.System,
                words.Test(reading.Test),
                words.Point(reading.At),
                words[VisitTexts.NameOf(reading.Source)],
                reading.Qualifier ?? "",
                reading.NotTaken is null && reading.NotQuantifiable != true ? RangeJudgement.NumberOf(reading) : null,
                Shown.Unit(reading.Unit, words.Language),
                reading.Basis ?? "",
                ResultWords.ValueOf(reading, words.Language),
                range?.Low,
                range?.High,
                range is null ? "" : Shown.Unit(range.Unit, words.Language),
                range is null ? "" : ResultWords.RangeOf(range, words.Language),
                words[ResultWords.StandingOf(RangeJudgement.Of(reading, range))],
                string.Join(" ", new[] { reading.Instrument, reading.Lot }.Where(used => used is not null)),
                reading.Lot ?? "",
                reading.Method ?? "",
                Wall(reading.TakenAt),
                Wall(reading.ResultAt),
                Wall(reading.ReceivedAt),
                reading.Lab ?? "",
                reading.LabRef ?? "",
                visit.Id.ToString(),
            ],
            words.GroupOf(visit, record.System));
    }

    private static IEnumerable<(string What, string Kind, double Value, string? Unit)> CountersOf(RecordWords words, VisitedSystem record)
    {
        var system = words.HistoryOf(record.System)?.System;
        string Name(string field) => words[VisitDifferenceWords.NameOf(field)];
        foreach (var meter in record.Meters)
        {
            var unit = system?.Meters.FirstOrDefault(known => known.Code.Equals(meter.Meter, StringComparison.OrdinalIgnoreCase))?.Unit;
            if (meter.Dial is { } dial)
            {
                yield return (meter.Meter, Name("dial"), dial, unit);
            }

            if (meter.Total is { } total)
            {
                yield return (meter.Meter, Name("total"), total, unit);
            }
        }

        foreach (var hours in record.HoursRun)
        {
            yield return (hours.Output, Name("hours"), hours.Hours, "h");
        }

        foreach (var drum in record.Drums)
        {
            if (drum.Level is { } level)
            {
                yield return (drum.Drum, Name("level"), level, drum.Unit);
            }
        }
    }

    private static Visit Bare(Visit visit) => new() { Id = visit.Id, Site = visit.Site, Technician = visit.Technician, Kind = visit.Kind, Arrived = visit.Arrived };

    private static Visit WithoutResults(Visit visit) => visit with
    {
        Also = [], Left = null, Signatures = [], Notes = null, Cleaning = null, Reason = null, Photos = [], Recommendations = [],
        Systems = [.. visit.Systems.Select(record => record with { Readings = [], Observations = [], Actions = [], InUse = null })],
    };
}
