using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>One test result as entered.</summary>
public sealed record Reading
{
    /// <summary>Sample point.</summary>
    public required string At { get; init; }

    /// <summary>Code of the test.</summary>
    public required string Test { get; init; }

    /// <summary>Who or what says it.</summary>
    public ReadingSource? Source { get; init; }

    /// <summary>Value in "unit".</summary>
    public double? Value { get; init; }

    /// <summary>Drops counted.</summary>
    public double? Drops { get; init; }

    /// <summary>Value of one drop.</summary>
    public double? PerDrop { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Basis, when not the test's own.</summary>
    public string? Basis { get; init; }

    /// <summary>Method.</summary>
    public string? Method { get; init; }

    /// <summary>"&lt;" or "&gt;" for a censored result.</summary>
    public string? Qualifier { get; init; }

    /// <summary>True for a result the laboratory could not quantify.</summary>
    public bool? NotQuantifiable { get; init; }

    /// <summary>Reason for a test not taken.</summary>
    public string? NotTaken { get; init; }

    /// <summary>Code of the instrument.</summary>
    public string? Instrument { get; init; }

    /// <summary>Code of the reagent lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Dilution before the test.</summary>
    public Dilution? Dilution { get; init; }

    /// <summary>What was entered first, when asked again.</summary>
    public double? FirstValue { get; init; }

    /// <summary>Whether a doubted value was confirmed.</summary>
    public bool? Confirmed { get; init; }

    /// <summary>When within the visit.</summary>
    public ReadingPhase? Phase { get; init; }

    /// <summary>When the sample was taken.</summary>
    public Moment? TakenAt { get; init; }

    /// <summary>When the result was there.</summary>
    public Moment? ResultAt { get; init; }

    /// <summary>When it was received; starts legal clocks.</summary>
    public Moment? ReceivedAt { get; init; }

    /// <summary>Laboratory.</summary>
    public string? Lab { get; init; }

    /// <summary>The laboratory's number.</summary>
    public string? LabRef { get; init; }

    /// <summary>Bottle.</summary>
    public string? SampleId { get; init; }

    /// <summary>How it was incubated.</summary>
    public Incubation? Incubation { get; init; }
}
