namespace LogBook.Web.Features.Round.Plan;

/// <summary>Addresses of the plan and the pack list.</summary>
public static class PlanLinks
{
    public const string Plan = "/round/plan";

    public const string Pack = "/round/pack";

    /// <summary>The plan from a day on.</summary>
    public static string PlanOf(DateOnly day, bool isWeek) => $"{Plan}?day={ReadingLinks.Day(day)}&span={(isWeek ? "week" : "day")}";

    /// <summary>The pack list of a person's day.</summary>
    public static string PackOf(DateOnly day, string person) => $"{Pack}?day={ReadingLinks.Day(day)}&person={Uri.EscapeDataString(person)}";
}
