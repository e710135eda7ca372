namespace LogBook.Application.MoveIn;

/// <summary>One row as it was understood.</summary>
/// <param name="Sheet">Sheet.</param>
/// <param name="Row">Row, from 0.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Technician">Code of the person.</param>
/// <param name="Day">Day.</param>
/// <param name="Time">Time, where the file tells one.</param>
/// <param name="Values">What it says, by what it is about.</param>
/// <param name="Notes">Words.</param>
internal sealed record MoveInRow(string Sheet, int Row, string Site, string System, string Technician, DateOnly Day, TimeOnly? Time, IReadOnlyList<MoveInValue> Values, IReadOnlyList<string> Notes);
