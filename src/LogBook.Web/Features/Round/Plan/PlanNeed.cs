using LogBook.Domain.Rounds.Planning;
using LogBook.Web.Components;

namespace LogBook.Web.Features.Round.Plan;

/// <summary>What a visit needs, in words.</summary>
public static class PlanNeed
{
    /// <summary>"55 min, median of 12 visits here; its work asks for 63".</summary>
    public static string Words(VisitNeed need, Wording words) => need.IsRuleOfThumb
        ? words[PlanPageTexts.Thumb, words.Number(Math.Round(need.Minutes))]
        : words[PlanPageTexts.Median, words.Number(Math.Round(need.Minutes)), need.Visits, words.Number(Math.Round(need.MinutesOfWork))];
}
