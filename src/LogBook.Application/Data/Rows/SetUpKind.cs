namespace LogBook.Application.Data;

/// <summary>Kinds of set-up records.</summary>
public enum SetUpKind
{
    Customer,
    Site,
    System,
    Person,
    Product,
    Instrument,
    Lot,
    Rule,
    Test,
}
