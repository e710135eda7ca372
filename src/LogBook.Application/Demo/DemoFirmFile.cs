using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Application.Demo;

/// <summary>The firm as db/demo/firm.json tells it.</summary>
internal sealed record DemoFirmFile
{
    public required string Name { get; init; }

    public required string Laboratory { get; init; }

    public required IReadOnlyList<Person> People { get; init; }

    public required IReadOnlyList<Product> Products { get; init; }

    /// <summary>How the products behave in water; the firm does not know this, the plant does.</summary>
    public required IReadOnlyList<PlantProduct> PlantProducts { get; init; }

    public required IReadOnlyList<Instrument> Instruments { get; init; }

    /// <summary>Hand meter by technician.</summary>
    public required IReadOnlyDictionary<string, string> HandMeters { get; init; }

    public IReadOnlyList<MeterFault> MeterFaults { get; init; } = [];

    public required IReadOnlyList<ReagentLot> Lots { get; init; }

    public required IReadOnlyList<LotInUse> LotsInUse { get; init; }

    public required IReadOnlyList<Rule> Rules { get; init; }

    public IReadOnlyList<AnswerLine> Answers { get; init; } = [];

    /// <summary>A hand meter that goes wrong on a day and is no longer proved.</summary>
    internal sealed record MeterFault
    {
        public required string Instrument { get; init; }

        public required DateOnly From { get; init; }

        public required double Error { get; init; }

        public string? Note { get; init; }
    }

    /// <summary>A lot that serves a test from a day on, at all sites or at some.</summary>
    internal sealed record LotInUse
    {
        public required string Test { get; init; }

        public required string Lot { get; init; }

        public required DateOnly From { get; init; }

        public double Factor { get; init; } = 1;

        public IReadOnlyList<string> Sites { get; init; } = [];

        public string? Note { get; init; }
    }
}

/// <summary>One line of the answers as a file tells it.</summary>
internal sealed record AnswerLine
{
    public required string Story { get; init; }

    public required IReadOnlyList<string> Kinds { get; init; }

    public IReadOnlyDictionary<string, string> About { get; init; } = new Dictionary<string, string>();

    public required DateOnly Onset { get; init; }

    public required DateOnly Latest { get; init; }

    public IReadOnlyList<DemoForbidden> Forbidden { get; init; } = [];

    public DateOnly? Over { get; init; }

    public IReadOnlyList<string> Sites { get; init; } = [];

    public int? MostPlanOrAct { get; init; }

    public string? Note { get; init; }

    public DemoAnswer For(string? site) => new()
    {
        Story = Story,
        Site = site,
        System = site is null ? null : "CT-1",
        Kinds = Kinds,
        About = About,
        Onset = Onset,
        Latest = Latest,
        Forbidden = Forbidden,
        Over = Over,
        Sites = Sites,
        MostPlanOrAct = MostPlanOrAct,
        Note = Note,
    };
}
