namespace LogBook.Application.MoveIn;

/// <summary>What a file would become with the answers given so far.</summary>
/// <param name="Columns">Headings and their meaning.</param>
/// <param name="Questions">What is still open, in the order of the file.</param>
/// <param name="Skipped">Rows and sheets that become no visit.</param>
/// <param name="Visits">Visits in order of event.</param>
/// <param name="SheetsWithoutPlace">Sheets whose site nobody has said yet.</param>
/// <param name="NeedsTechnician">Whether nobody has said who made the visits.</param>
/// <param name="Values">Readings, levels and counters in the visits.</param>
public sealed record MoveInResult(
    IReadOnlyList<MoveInColumn> Columns, IReadOnlyList<MoveInQuestion> Questions, IReadOnlyList<MoveInSkip> Skipped, IReadOnlyList<MoveInVisit> Visits, IReadOnlyList<string> SheetsWithoutPlace, bool NeedsTechnician, int Values)
{
    /// <summary>Whether nothing is open and there is something to move in.</summary>
    public bool MayMove => Questions.Count == 0 && SheetsWithoutPlace.Count == 0 && !NeedsTechnician && Visits.Count > 0 && Columns.All(column => column.Missing is null);
}
