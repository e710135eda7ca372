namespace LogBook.Application.MoveIn;

/// <summary>Where a value stands in the file.</summary>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Row">Row, from 0.</param>
/// <param name="Column">Column, from 0.</param>
/// <param name="Heading">Heading of the column.</param>
/// <param name="Value">What stands there.</param>
public sealed record MoveInPlace(string Sheet, int Row, int Column, string Heading, string Value)
{
    /// <summary>Address as spreadsheets write it.</summary>
    public string Address => MoveInSheet.Address(Row, Column);
}
