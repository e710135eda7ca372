namespace LogBook.Application.Data;

/// <summary>A figure of the stored assessment; rebuilt from the documents at will.</summary>
public sealed class FigureRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int SiteId { get; set; }

    public int SystemId { get; set; }

    public int VisitRowId { get; set; }

    public string Code { get; set; } = "";

    /// <summary>Code of the drum, meter, probe or output; empty when it concerns the system.</summary>
    public string About { get; set; } = "";

    public DateTime? From { get; set; }

    public DateTime To { get; set; }

    public double? Value { get; set; }

    public double? StandardUncertainty { get; set; }

    public string? Unit { get; set; }

    /// <summary>Code of the first reason why there is no value.</summary>
    public string? ReasonCode { get; set; }

    /// <summary>Reasons in three languages, as JSON; null when there is a value.</summary>
    public string? Reasons { get; set; }

    /// <summary>Inputs as JSON, for "How was this worked out?".</summary>
    public string Inputs { get; set; } = "[]";
}
