namespace LogBook.Domain.Rounds.Planning;

/// <summary>What lies ahead at one system as far as its records tell. Kept with its assessment, so that a list over all sites reads no visit.</summary>
public sealed record SystemAhead
{
    /// <summary>Nothing on record yet.</summary>
    public static SystemAhead Nothing { get; } = new();

    /// <summary>Clocks that run and are not met, by last day.</summary>
    public IReadOnlyList<DutyAhead> Duties { get; init => field = value ?? []; } = [];

    /// <summary>Drums whose stock is known, by code.</summary>
    public IReadOnlyList<DrumAhead> Drums { get; init => field = value ?? []; } = [];

    /// <summary>Open actions with a promised day, by day.</summary>
    public IReadOnlyList<PromiseAhead> Promises { get; init => field = value ?? []; } = [];

    /// <summary>Lengths of the last routine visits, latest first.</summary>
    public IReadOnlyList<VisitLength> Lengths { get; init => field = value ?? []; } = [];

    /// <summary>Readings taken at half or more of the last visits.</summary>
    public IReadOnlyList<UsualTest> Tests { get; init => field = value ?? []; } = [];

    /// <summary>Instruments used at the last visits.</summary>
    public IReadOnlyList<InstrumentUse> Instruments { get; init => field = value ?? []; } = [];

    /// <summary>Reagent lots used at the last visits, the newest of each person and test.</summary>
    public IReadOnlyList<LotUse> Lots { get; init => field = value ?? []; } = [];
}
