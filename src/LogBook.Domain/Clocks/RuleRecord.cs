using LogBook.Domain.Programmes;

namespace LogBook.Domain.Clocks;

/// <summary>What one rule asked for in a period, and when it was met.</summary>
public sealed record RuleRecord
{
    /// <summary>Code of the rule.</summary>
    public required string Code { get; init; }

    /// <summary>Its versions in force in the period, by first day.</summary>
    public required IReadOnlyList<Rule> Versions { get; init; }

    /// <summary>What it asked for, by the day that set it running.</summary>
    public required IReadOnlyList<RuleSpell> Spells { get; init; }

    /// <summary>First and last day of the period on which the records do not tell, because the first visit came later; null where they do.</summary>
    public (DateOnly From, DateOnly To)? Unknown { get; init; }

    /// <summary>The rule names neither an interval nor an event that LogBook can follow: its results are recorded, its dates are not judged.</summary>
    public bool IsWithoutClock { get; init; }

    /// <summary>How many spells stand so.</summary>
    /// <param name="standing">The standing.</param>
    /// <returns>Number of spells.</returns>
    public int Count(RuleStanding standing) => Spells.Count(spell => spell.Standing == standing);
}
