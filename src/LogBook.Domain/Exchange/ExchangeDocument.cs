using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Exchange;

/// <summary>One document of the exchange format: set-up, visits and results.</summary>
public sealed record ExchangeDocument
{
    /// <summary>Always "logbook-exchange".</summary>
    public required string Format { get; init; }

    /// <summary>Always 1.</summary>
    public required int Version { get; init; }

    /// <summary>Counts additions.</summary>
    public int? Minor { get; init; }

    /// <summary>Tests the firm adds.</summary>
    public IReadOnlyList<TestDefinition> Tests { get; init; } = [];

    /// <summary>Customers.</summary>
    public IReadOnlyList<Customer> Customers { get; init; } = [];

    /// <summary>People.</summary>
    public IReadOnlyList<Person> People { get; init; } = [];

    /// <summary>Products.</summary>
    public IReadOnlyList<Product> Products { get; init; } = [];

    /// <summary>Instruments.</summary>
    public IReadOnlyList<Instrument> Instruments { get; init; } = [];

    /// <summary>Reagent lots.</summary>
    public IReadOnlyList<ReagentLot> Lots { get; init; } = [];

    /// <summary>Rules.</summary>
    public IReadOnlyList<Rule> Rules { get; init; } = [];

    /// <summary>Sites.</summary>
    public IReadOnlyList<Site> Sites { get; init; } = [];

    /// <summary>Systems.</summary>
    public IReadOnlyList<WaterSystem> Systems { get; init; } = [];

    /// <summary>Visits.</summary>
    public IReadOnlyList<Visit> Visits { get; init; } = [];

    /// <summary>Findings; ignored on the way in.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
