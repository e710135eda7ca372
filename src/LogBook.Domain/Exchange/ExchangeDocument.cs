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
    public IReadOnlyList<TestDefinition> Tests { get; init => field = value ?? []; } = [];

    /// <summary>Customers.</summary>
    public IReadOnlyList<Customer> Customers { get; init => field = value ?? []; } = [];

    /// <summary>People.</summary>
    public IReadOnlyList<Person> People { get; init => field = value ?? []; } = [];

    /// <summary>Products.</summary>
    public IReadOnlyList<Product> Products { get; init => field = value ?? []; } = [];

    /// <summary>Instruments.</summary>
    public IReadOnlyList<Instrument> Instruments { get; init => field = value ?? []; } = [];

    /// <summary>Reagent lots.</summary>
    public IReadOnlyList<ReagentLot> Lots { get; init => field = value ?? []; } = [];

    /// <summary>Rules.</summary>
    public IReadOnlyList<Rule> Rules { get; init => field = value ?? []; } = [];

    /// <summary>Sites.</summary>
    public IReadOnlyList<Site> Sites { get; init => field = value ?? []; } = [];

    /// <summary>Systems.</summary>
    public IReadOnlyList<WaterSystem> Systems { get; init => field = value ?? []; } = [];

    /// <summary>Visits.</summary>
    public IReadOnlyList<Visit> Visits { get; init => field = value ?? []; } = [];

    /// <summary>Findings; ignored on the way in.</summary>
    public IReadOnlyList<Finding> Findings { get; init => field = value ?? []; } = [];
}
