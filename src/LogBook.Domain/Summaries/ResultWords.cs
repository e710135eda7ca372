using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Summaries;

/// <summary>A result, the range it is held against and where it stands, as papers tell them.</summary>
public static class ResultWords
{
    /// <summary>The result as entered, with qualifier, unit and basis; or why there is no number.</summary>
    public static string ValueOf(Reading reading, Language language)
    {
        if (reading.NotTaken is { } reason)
        {
            return reason == SystemVisit.ResultPending ? SummaryTexts.Pending.In(language) : SummaryTexts.NotTaken.In(language, reason);
        }

        if (reading.NotQuantifiable == true)
        {
            return SummaryTexts.NotQuantifiable.In(language);
        }

        if (RangeJudgement.NumberOf(reading) is not { } number)
        {
            return SummaryTexts.Pending.In(language);
        }

        var basis = reading.Basis is { } named ? " " + named : string.Empty;
        return (reading.Qualifier is { } qualifier ? qualifier + " " : string.Empty) + Shown.Entered(number, reading.Unit ?? "1", language) + basis;
    }

    /// <summary>A range.</summary>
    public static string RangeOf(TestRange range, Language language) => (range.Low, range.High) switch
    {
        // pH stands before its number, and once is enough.
        ({ } low, { } high) => Shown.EnteredRange(low, high, range.Unit, language),
        ({ } low, null) => SummaryTexts.AtLeast.In(language, Shown.Entered(low, range.Unit, language)),
        (null, { } high) => SummaryTexts.AtMost.In(language, Shown.Entered(high, range.Unit, language)),
        _ => string.Empty,
    };

    /// <summary>Where it stands.</summary>
    public static Text StandingOf(RangeStanding standing) => standing switch
    {
        RangeStanding.Inside => SummaryTexts.Inside,
        RangeStanding.Above => SummaryTexts.Above,
        RangeStanding.Below => SummaryTexts.Below,
        RangeStanding.Undecided => SummaryTexts.Undecided,
        _ => SummaryTexts.NoRange,
    };

    /// <summary>Who signed, or why nobody did.</summary>
    public static string SignatureOf(Signature signature, Language language)
    {
        var whose = (signature.By == SignedBy.Technician ? SummaryTexts.Technician : SummaryTexts.OfCustomer).In(language);
        return (signature.Name, signature.AbsentReason) switch
        {
            ({ } name, _) => SummaryTexts.Signed.In(language, whose, name + (signature.Role is { } role ? " (" + role + ")" : string.Empty)),
            (null, { } reason) => SummaryTexts.NotSigned.In(language, whose, reason),
            _ => SummaryTexts.NotSignedNoReason.In(language, whose),
        };
    }
}
