namespace LogBook.Application.RecordPacks;

/// <summary>What authorities were told of results: who told whom, when and how.</summary>
internal static class NoticeTable
{
    public static RecordTable Of(RecordWords words) => new(
        RecordTexts.Notices,
        [
            new(RecordTexts.System, 0.8), new(RecordTexts.Rule, 1.4), new(RecordTexts.What, 1.4), new(RecordTexts.ToldOn, 1.6), new(RecordTexts.By, 1.4), new(RecordTexts.To, 2), new(RecordTexts.How, 2.6), new(RecordTexts.Visit, 0),
        ],
        [
            .. words.Pack.Systems.SelectMany(system => system.History.Notifications
                .Where(told => words.DayOf(told.At) >= words.Pack.From && words.DayOf(told.At) <= words.Pack.To).OrderBy(told => told.At)
                .Select(told => new RecordRow([system.History.System.Code, told.Rule, words.Test(told.Test), words.Moment(told.At), told.By, told.To, told.How, told.Visit.ToString()]))),
        ],
        RecordTexts.NoticesIntro);
}
