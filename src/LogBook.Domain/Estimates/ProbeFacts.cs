using System.Globalization;
using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>One conductivity probe compared with a reference at one visit.</summary>
/// <param name="Probe">Code of the probe.</param>
/// <param name="Reading">What was read.</param>
/// <param name="Instrument">Code of the hand meter, or null.</param>
/// <param name="IsProved">Whether the hand meter was checked in a standard within 30 days.</param>
/// <param name="AsFoundUsPerCm">Display as found, µS/cm.</param>
/// <param name="Reference">Reference, µS/cm.</param>
/// <param name="ErrorFound">Error as found, % of the reference.</param>
/// <param name="ErrorCleaned">Error after cleaning, %; none when it was not cleaned.</param>
/// <param name="ErrorLeft">Error as left, %.</param>
public sealed record ProbeFacts(
    string Probe,
    ProbeReading Reading,
    string? Instrument,
    bool IsProved,
    double AsFoundUsPerCm,
    Computed<Estimate> Reference,
    Computed<Estimate> ErrorFound,
    Computed<Estimate> ErrorCleaned,
    Computed<Estimate> ErrorLeft)
{
    /// <summary>The error as found, as it goes into figures over several visits: its name keeps the wall time at the site. Null without an error.</summary>
    internal FigureInput? ErrorInput { get; private init; }

    /// <summary>Whether the series of errors begins anew after this visit.</summary>
    public bool Restarts => Reading.AfterCleaning is not null || Reading.Calibrated == true;

    /// <summary>The conductivity probes that a visit compared.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each comparison with a conductivity in a known unit.</returns>
    public static IReadOnlyList<ProbeFacts> Of(VisitFacts visit)
    {
        var all = new List<ProbeFacts>();
        foreach (var reading in visit.Record.Probes.Where(reading => (reading.Of ?? ProbeKind.Conductivity) == ProbeKind.Conductivity))
        {
            var code = reading.Probe ?? visit.History.System.Probes.FirstOrDefault(probe => probe.Of == ProbeKind.Conductivity)?.Code;
            var found = Units.Convert(reading.AsFound, reading.Unit, "uS/cm");
            if (code is not null && found.HasValue)
            {
                all.Add(Of(visit, code, reading, found.Value));
            }
        }

        return all;
    }

    private static ProbeFacts Of(VisitFacts visit, string code, ProbeReading reading, double found)
    {
        // The reference may stand beside the probe or only among the readings of the tower water.
        var beside = visit.Tests.FirstOrDefault(test => test.Reading is { Test: TestCodes.Conductivity, At: SamplePoints.Tower, Source: ReadingSource.Reference }
            && test.Reading.Phase is null or ReadingPhase.Found);
        var instrument = reading.Instrument ?? beside?.Reading.Instrument;
        var reference = reading.Reference is { } number
            ? Units.Convert(number, reading.Unit, "uS/cm").Map(value => ReadingEstimates.HandMeter(visit.History, visit.Visit, instrument).On(value, "uS/cm"))
            : beside is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : Computed<Estimate>.Of(beside.Value);
        var table = visit.History.Firm.Engine.Uncertainties;
        var error = ErrorOf(found, reference, table);
        return new ProbeFacts(
            code,
            reading,
            instrument,
            ReadingEstimates.IsProved(visit.History, instrument, visit.Visit.At),
            found,
            reference,
            error,
            ErrorOf(In(reading.AfterCleaning, reading.Unit), reference, table),
            ErrorOf(In(reading.AsLeft, reading.Unit), reference, table))
        {
            ErrorInput = error.HasValue ? InputOf(error.Value, TimeZoneInfo.ConvertTimeFromUtc(visit.Visit.At, visit.History.Zone)) : null,
        };
    }

    private static FigureInput InputOf(Estimate error, DateTime at) =>
        new(string.Create(CultureInfo.InvariantCulture, $"error-on:{at:yyyy-MM-dd HH:mm}"), error.Value, error.Unit, error.StandardUncertainty);

    private static double? In(double? value, string unit) => value is { } number ? Units.Convert(number, unit, "uS/cm").Value : null;

    private static Computed<Estimate> ErrorOf(double? shown, Computed<Estimate> reference, UncertaintyTable table) => shown is not { } number
        ? Computed<Estimate>.None(VisitReasons.NotMeasured)
        : reference.Then(truth => truth.Value > 0
            ? Computed<Estimate>.Of(table.ControllerDisplay().On(number, "uS/cm").Over(truth).Minus(Estimate.Exact(1)).Scaled(100, "%"))
            : Computed<Estimate>.None(VisitReasons.NotMeasured));
}
