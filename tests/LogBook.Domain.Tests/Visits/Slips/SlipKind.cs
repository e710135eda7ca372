namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>What goes wrong between the eye and the record.</summary>
internal enum SlipKind
{
    TimesTen,
    DividedByTen,
    DroppedDigit,
    DoubledDigit,
    SwappedDigits,
    WrongField,
    WrongUnit,
}
