using LogBook.Domain.Visits;

namespace LogBook.Application.Data;

/// <summary>One test result of the current version of a visit that counts; made from the document, for history and queries.</summary>
public sealed class ReadingRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int VisitRowId { get; set; }

    public int SystemId { get; set; }

    /// <summary>Code of the test, lower case as in the catalogue.</summary>
    public string Test { get; set; } = "";

    /// <summary>Sample point.</summary>
    public string SampleAt { get; set; } = "";

    public ReadingSource? Source { get; set; }

    public ReadingPhase? Phase { get; set; }

    /// <summary>Arrival of the visit.</summary>
    public DateTime ArrivedAt { get; set; }

    /// <summary>Value in <see cref="Unit"/>, or drops times value of a drop; null when not taken or not quantifiable.</summary>
    public double? Value { get; set; }

    /// <summary>UCUM unit as entered.</summary>
    public string Unit { get; set; } = "";

    public string? Basis { get; set; }

    /// <summary>"&lt;" or "&gt;".</summary>
    public string? Qualifier { get; set; }

    public string? NotTaken { get; set; }

    public string? Instrument { get; set; }

    public string? Lot { get; set; }

    /// <summary>Place among the readings of its system in the document, from 0.</summary>
    public int Place { get; set; }
}
