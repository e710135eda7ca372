using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Settings;
using LogBook.Web.Components;

namespace LogBook.Web.Features.Round.Leave;

/// <summary>Days off in words.</summary>
public static class LeaveWords
{
    /// <summary>"4 May 2026 to 8 May 2026"; one day once; weekdays before it.</summary>
    public static string Days(DaysOff off, Wording words) => (off.Weekdays.Count == 0 ? "" : words[LeaveTexts.Every, string.Join(", ", off.Weekdays.Select(day => DayName(day, words)))] + " ") + Span(off, words);

    /// <summary>"Sat".</summary>
    public static string DayName(Weekday day, Wording words) => words[SettingChoices.Days[day.ToString()[..3].ToLowerInvariant()]];

    private static string Span(DaysOff off, Wording words) => off.From == off.To ? words.Day(off.From) : words[LeaveTexts.FromTo, words.Day(off.From), words.Day(off.To)];

    /// <summary>"closed 4 May 2026: plant shut"; without the reason where nobody said it.</summary>
    public static string Closed(DaysOff off, Wording words) =>
        words[LeaveTexts.ClosedOn, Days(off, words)] + (off.Reason is { } reason ? $": {words[LeaveTexts.NameOf(reason)]}" : "");
}
