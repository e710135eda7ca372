namespace LogBook.Application.Visits;

/// <summary>Which visits by their state.</summary>
public enum VisitStateFilter
{
    /// <summary>All that count.</summary>
    Counting,

    /// <summary>Waiting for a supervisor.</summary>
    ToReview,

    /// <summary>Declared void.</summary>
    Void,

    /// <summary>All, void or not.</summary>
    All,
}
