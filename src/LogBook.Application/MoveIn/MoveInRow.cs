namespace LogBook.Application.MoveIn;

/// <summary>One row as it was understood.</summary>
/// <param name="At">Where its day stands.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Technician">Code of the person.</param>
/// <param name="Told">What the file itself tells of the person; empty where it was said for the file as a whole.</param>
/// <param name="Day">Day.</param>
/// <param name="Time">Time, where the file tells one.</param>
/// <param name="Values">What it says, by what it is about.</param>
/// <param name="Notes">Words.</param>
internal sealed record MoveInRow(MoveInPlace At, string Site, string System, string Technician, string Told, DateOnly Day, TimeOnly? Time, IReadOnlyList<MoveInValue> Values, IReadOnlyList<string> Notes)
{
    /// <summary>Sheet.</summary>
    public string Sheet => At.Sheet;

    /// <summary>Row, from 0.</summary>
    public int Row => At.Row;
}
