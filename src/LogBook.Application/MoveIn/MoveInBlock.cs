namespace LogBook.Application.MoveIn;

/// <summary>A part of a sheet under one heading. A sheet has more than one where its heading comes again with columns moved.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="HeadFrom">First row of the heading, from 0.</param>
/// <param name="HeadRows">Rows of the heading.</param>
/// <param name="LastRow">Last row of the block, from 0.</param>
/// <param name="Headings">Heading of each column, the rows joined; "" for a column without one.</param>
public sealed record MoveInBlock(MoveInSheet Sheet, int HeadFrom, int HeadRows, int LastRow, IReadOnlyList<string> Headings)
{
    /// <summary>First row below the heading, from 0.</summary>
    public int FirstRow => HeadFrom + HeadRows;
}
