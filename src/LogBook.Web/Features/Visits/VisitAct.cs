namespace LogBook.Web.Features.Visits;

/// <summary>What a supervisor is about to do to a visit.</summary>
public enum VisitAct
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Mark as reviewed.</summary>
    Review,

    /// <summary>Declare void.</summary>
    Void,

    /// <summary>Let a void visit count again.</summary>
    Restore,

    /// <summary>Move to the right site.</summary>
    Move,
}
