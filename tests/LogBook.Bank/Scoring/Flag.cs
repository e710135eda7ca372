using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;

namespace LogBook.Bank.Scoring;

/// <summary>Something a judge said about a system.</summary>
/// <param name="Kind">Kind of finding.</param>
/// <param name="About">What it concerns, for readers.</param>
/// <param name="Seen">Day it was first said, at any severity.</param>
/// <param name="Raised">Day it first was "plan" or "act"; null when it never was.</param>
/// <param name="Closed">Day it was closed; null when it stands at the end.</param>
/// <param name="Severity">Highest severity.</param>
/// <param name="Text">The sentence.</param>
internal sealed record Flag(string Kind, string About, DateOnly Seen, DateOnly? Raised, DateOnly? Closed, Severity Severity, string Text)
{
    /// <summary>How its severity went, in order of days; empty for a judge that knows one severity.</summary>
    public IReadOnlyList<SeverityStep> Steps { get; init; } = [];

    /// <summary>Day on which it told something about what begins on a day: it was first said then or later, or rose above all it had been before.</summary>
    /// <param name="onset">The first day that counts.</param>
    /// <param name="least">Lowest severity that counts.</param>
    public DateOnly? ToldFrom(DateOnly onset, Severity least)
    {
        if (Seen >= onset)
        {
            return least >= Severity.Plan ? Raised : Seen;
        }

        var before = Steps.TakeWhile(step => step.On < onset).Select(step => step.Severity).DefaultIfEmpty(Severity).Max();
        return Steps.Where(step => step.On >= onset && step.Severity > before && step.Severity >= least).Select(step => (DateOnly?)step.On).FirstOrDefault();
    }

    /// <summary>Whether it stood on a day it had been said before, and told nothing from then on.</summary>
    public bool OnlyStoodOn(DateOnly onset) => Seen < onset && (Closed is not { } closed || closed > onset) && ToldFrom(onset, Severity.Watch) is null;
}
