using System.Buffers.Binary;
using System.Security.Cryptography;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Reviews;

/// <summary>Which visits are drawn for a closer look, and what a number of looks can tell about all of them.</summary>
/// <remarks>
/// The draw follows from the identity of a visit alone: nobody chooses, it does not change as more visits come in, and it can be repeated
/// by whoever asks. What is said of all visits holds for a draw by chance from many; a supervisor who looks at other visits too learns more,
/// but that may not be counted here.
/// </remarks>
public static class AuditSample
{
    /// <summary>Share drawn where a firm has set none, 1 (common practice, no source).</summary>
    public const double UsualShare = 0.1;

    /// <summary>Confidence of what is said of all visits, 1.</summary>
    public const double Confidence = 0.95;

    /// <summary>Whether a visit is drawn.</summary>
    /// <param name="visit">Identity of the visit.</param>
    /// <param name="share">Share of visits to be drawn, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public static bool IsDrawn(Guid visit, double share)
    {
        CheckShare(share);
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(visit.ToByteArray(bigEndian: true), hash);
        return BinaryPrimitives.ReadUInt64BigEndian(hash) < share * ulong.MaxValue;
    }

    /// <summary>
    /// Largest share of faulty visits that the looks leave room for: the one-sided upper limit of Clopper and Pearson (NIST/SEMATECH
    /// e-Handbook of Statistical Methods, 7.2.4.2, with the whole risk on one side).
    /// </summary>
    /// <param name="looked">Visits drawn and looked at, 0 or more.</param>
    /// <param name="faulty">Of these, visits in which something did not hold, 0 to <paramref name="looked"/>.</param>
    /// <param name="confidence">Confidence, above 0 and below 1.</param>
    /// <returns>Share, 0 to 1; 1 when nothing was looked at.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is outside its range.</exception>
    public static double HighestShare(int looked, int faulty, double confidence = Confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(looked);
        ArgumentOutOfRangeException.ThrowIfNegative(faulty);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(faulty, looked);
        CheckShare(confidence);

        // P(at most f of n at share p) = 1 - I(p; f+1, n-f), which the limit makes equal to the risk.
        return looked == faulty ? 1 : SpecialFunctions.Bisect(share => SpecialFunctions.IncompleteBeta(faulty + 1, looked - faulty, share), confidence, 0, 1);
    }

    /// <summary>How many visits without a fault must be looked at until a share of faulty ones is ruled out.</summary>
    /// <param name="share">Share of faulty visits, above 0 and below 1.</param>
    /// <param name="confidence">Confidence, above 0 and below 1.</param>
    /// <returns>Number of visits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public static int Needed(double share, double confidence = Confidence)
    {
        CheckShare(confidence);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(share, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(share, 1);
        return (int)Math.Ceiling(Math.Log(1 - confidence) / Math.Log(1 - share));
    }

    private static void CheckShare(double share)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
    }
}
