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

    /// <summary>A threshold or default uncertainty that the installation has set; not part of the exchange format.</summary>
    Setting,

    /// <summary>The firm's own quick phrases, one record; not part of the exchange format.</summary>
    Phrases,

    /// <summary>Who goes where on a day; not part of the exchange format.</summary>
    DayPlan,

    /// <summary>A notification of an authority; kept here for its version and audit, not part of the exchange format.</summary>
    Notice,

    /// <summary>The second key to the drafts of a person on a tablet; not part of the exchange format.</summary>
    TabletKey,

    /// <summary>A legal hold on a site's records; not part of the exchange format.</summary>
    LegalHold,

    /// <summary>How a firm's own spreadsheet is read; not part of the exchange format.</summary>
    SheetMapping,

    /// <summary>Leave of a person, or closed days of the firm or a site; not part of the exchange format.</summary>
    DaysOff,

    /// <summary>Where a draft out of a tablet's rescue file came from; not part of the exchange format.</summary>
    RescuedDraft,
}
