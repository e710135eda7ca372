namespace LogBook.Application.Data;

/// <summary>Where a visit stands after it has been received.</summary>
public enum VisitState
{
    /// <summary>Received, waiting for a supervisor.</summary>
    Closed,

    /// <summary>Looked at by a supervisor.</summary>
    Reviewed,

    /// <summary>Amended after it had been received.</summary>
    Reissued,
}
