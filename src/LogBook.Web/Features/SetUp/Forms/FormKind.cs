namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>How a field of a set-up form is filled in and written.</summary>
public enum FormKind
{
    /// <summary>One line of text.</summary>
    Text,

    /// <summary>Several lines of text.</summary>
    LongText,

    /// <summary>A mail address.</summary>
    Mail,

    /// <summary>A number, read by the parser of the visit form.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Yes when ticked, otherwise not said.</summary>
    Flag,

    /// <summary>Yes, no or not said.</summary>
    YesNo,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A moment, entered in UTC.</summary>
    Moment,

    /// <summary>One of a list.</summary>
    Choice,

    /// <summary>One of a long list, found by typing.</summary>
    Lookup,

    /// <summary>Any number of a list.</summary>
    Picks,

    /// <summary>Words between commas.</summary>
    Words,

    /// <summary>Numbers between semicolons or blanks.</summary>
    Numbers,

    /// <summary>A group of fields.</summary>
    Group,

    /// <summary>Any number of groups.</summary>
    Rows,

    /// <summary>Any number of pairs of numbers.</summary>
    Pairs,
}
