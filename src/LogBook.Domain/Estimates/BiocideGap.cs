namespace LogBook.Domain.Estimates;

/// <summary>What tells that a biocide works or does not.</summary>
internal enum BiocideGap
{
    /// <summary>The records do not tell.</summary>
    Unknown,

    /// <summary>It works, as far as the records tell.</summary>
    Works,

    /// <summary>Its pump did not run.</summary>
    DidNotRun,

    /// <summary>Its drum is at its heel.</summary>
    Empty,

    /// <summary>Nobody poured it.</summary>
    NotPoured,

    /// <summary>The water shows no residual.</summary>
    NoResidual,
}
