using CsCheck;
using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Tests.Estimates;

public class DoseCalendarsTests
{
    private static readonly Gen<(int From, int Length)> Stretch = Gen.Select(Gen.Int[0, 800 * 24 * 60], Gen.Int[0, 90 * 24 * 60]);

    [Theory]
    [InlineData("UTC")]
    [InlineData("Europe/Madrid")]
    [InlineData("America/New_York")]
    [InlineData("Australia/Lord_Howe")]
    public void Starts_AnyStretchesInAnyOrder_SaysWhatThePlanSays(string zoneId)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(zoneId);
        var programme = new Programme { From = new DateOnly(2025, 1, 8), PlanWeeks = 3 };
        var feed = new Feed
        {
            Drum = "D1",
            Mode = FeedMode.DosePlan,
            Weeks = [1, 3],
            Days = [Weekday.Monday, Weekday.Saturday, Weekday.Sunday],
            Starts = ["23:45", "01:30", "02:15", "00:10"],
        };

        Stretch.Array[1, 12].Sample(stretches =>
        {
            var doses = new DoseCalendars(zone);
            return Array.TrueForAll(stretches, stretch =>
            {
                var from = new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddMinutes(stretch.From);
                var to = from.AddMinutes(stretch.Length);
                return doses.Starts(programme, feed, from, to).ToArray().SequenceEqual(PlannedDoses.Starts(programme, feed, zone, from, to));
            });
        }, iter: 200);
    }
}
