using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Rounds;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Assessments;

/// <summary>What the records of one system mean as of a moment.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="AsOf">Moment it was made for, UTC.</param>
/// <param name="EngineVersion">Version of the rules that made it.</param>
/// <param name="Findings">Findings in every state, by first day, kind and subject; texts in English.</param>
/// <param name="Figures">Figures by visit, in order of event time.</param>
public sealed record SystemAssessment(
    string Site,
    string System,
    DateTime AsOf,
    string EngineVersion,
    IReadOnlyList<AssessedFinding> Findings,
    IReadOnlyList<Figure> Figures)
{
    /// <summary>Clocks that run under rules on the day it was made for.</summary>
    public IReadOnlyList<RunningClock> Clocks { get; init; } = [];

    /// <summary>What the last visit did not let the rules judge, with reasons, by kind and subject.</summary>
    public IReadOnlyList<NotJudged> NotJudged { get; init; } = [];

    /// <summary>What its records tell about the meters, lots and people it shares with other systems, for the round-wide assessment.</summary>
    public SystemClues Clues { get; init; } = new(Site, System, []);

    /// <summary>What lies ahead: clocks, drums, promises, and what a visit usually takes.</summary>
    public SystemAhead Ahead { get; init; } = SystemAhead.Nothing;
}
