using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Findings;

/// <summary>What one rule says about one subject at one visit or on one day.</summary>
public sealed record Verdict
{
    // Most rules say this of most visits.
    private static readonly Verdict OfSystemClear = new((About?)null);

    private Verdict(About? about) => About = about;

    /// <summary>What it concerns.</summary>
    public About? About { get; }

    /// <summary>The evidence, when there is some.</summary>
    public Indication? Indication { get; private init; }

    /// <summary>Why the matter was not judged; null when it was.</summary>
    public Reason? NotJudgedBecause { get; private init; }

    /// <summary>Day on which the records allowed it, where that is not the day of the visit (a late result).</summary>
    public DateOnly? SeenOn { get; private init; }

    /// <summary>Visit whose record shows it, where that is not the latest one (a late result).</summary>
    public Guid? ShownBy { get; private init; }

    /// <summary>What explains the evidence away, in words; null when nothing does.</summary>
    public Said? ExplainedBy { get; private init; }

    /// <summary>Day of the first reading that the explanation concerns, with <see cref="ExplainedBy"/>.</summary>
    public DateOnly ExplainedFrom { get; private init; }

    /// <summary>The same evidence, explained by something that is no trouble of this plant.</summary>
    /// <param name="by">What explains it.</param>
    /// <param name="from">Day of the first reading that the explanation concerns.</param>
    /// <returns>The verdict; it opens nothing and withdraws what is open.</returns>
    public Verdict Explained(Said by, DateOnly from) => this with { ExplainedBy = by, ExplainedFrom = from };

    /// <summary>The same evidence with a lower severity.</summary>
    /// <param name="severity">At most this much.</param>
    /// <returns>The verdict.</returns>
    public Verdict AtMost(Severity severity) => Indication is { } shown && shown.Severity > severity ? this with { Indication = shown with { Severity = severity } } : this;

    /// <summary>The matter was judged and there is no evidence.</summary>
    /// <param name="about">Subject.</param>
    /// <returns>The verdict.</returns>
    public static Verdict Clear(About? about = null) => about is null ? OfSystemClear : about.Clear(static about => new Verdict(about));

    /// <summary>The matter could not be judged; what was open stays open.</summary>
    /// <param name="about">Subject.</param>
    /// <param name="because">Why.</param>
    /// <returns>The verdict.</returns>
    public static Verdict NotJudged(About? about, Reason because) => new(about) { NotJudgedBecause = because };

    /// <summary>There is evidence.</summary>
    /// <param name="about">Subject.</param>
    /// <param name="shown">Severity, words and figures.</param>
    /// <param name="seenOn">Day on which the records allowed it, where that is not the day of the visit.</param>
    /// <param name="shownBy">Visit whose record shows it, where that is not the latest one.</param>
    /// <returns>The verdict.</returns>
    public static Verdict Found(About? about, Indication shown, DateOnly? seenOn = null, Guid? shownBy = null) =>
        new(about) { Indication = shown, SeenOn = seenOn, ShownBy = shownBy };
}
