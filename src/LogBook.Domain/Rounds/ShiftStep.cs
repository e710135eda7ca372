namespace LogBook.Domain.Rounds;

/// <summary>What is known of a shift from a moment on.</summary>
/// <param name="Known">Moment from which this is known, UTC.</param>
/// <param name="Share">By how much the meter or lot reads high, as a share of the true value; negative for low.</param>
/// <param name="From">First reading that it concerns, UTC.</param>
/// <param name="Until">End of it, UTC; null while it is open.</param>
public sealed record ShiftStep(DateTime Known, double Share, DateTime From, DateTime? Until);
