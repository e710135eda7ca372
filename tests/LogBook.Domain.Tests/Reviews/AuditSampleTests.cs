using CsCheck;
using LogBook.Domain.Reviews;

namespace LogBook.Domain.Tests.Reviews;

public sealed class AuditSampleTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.2: 4 of 20, 5 % on the upper side. The value is from SciPy 1.10
    // (beta.ppf(0.95, 5, 16)), which solves the equation printed there.
    [Fact]
    public void HighestShare_HandbookExample() => Assert.Equal(0.4010281173319745, AuditSample.HighestShare(20, 4), 9);

    // With nothing found the limit is in closed form: (1 - p)^n = 0.05.
    [Theory]
    [InlineData(1)]
    [InlineData(29)]
    [InlineData(299)]
    public void HighestShare_NothingFound_IsTheClosedForm(int looked) => Assert.Equal(1 - Math.Pow(0.05, 1.0 / looked), AuditSample.HighestShare(looked, 0), 9);

    [Fact]
    public void HighestShare_NothingLookedAt_LeavesRoomForAll() => Assert.Equal((1.0, 1.0), (AuditSample.HighestShare(0, 0), AuditSample.HighestShare(3, 3)));

    [Fact]
    public void Needed_RulesOutTheShare_AndOneFewerDoesNot() => Gen.Double[0.005, 0.5].Sample(share =>
    {
        var needed = AuditSample.Needed(share);
        Assert.True(AuditSample.HighestShare(needed, 0) <= share + 1e-9);
        Assert.True(needed == 1 || AuditSample.HighestShare(needed - 1, 0) > share - 1e-9);
    });

    // Over many identities the share drawn is the share asked for: within five standard deviations.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    public void IsDrawn_ManyVisits_DrawsTheShare(double share)
    {
        var visits = new Random(1).GetItems([.. Enumerable.Range(0, 1 << 20)], 20_000).Distinct().Select(i => new Guid(i, 7, 7, new byte[8])).ToList();

        var drawn = visits.Count(visit => AuditSample.IsDrawn(visit, share));

        Assert.InRange(drawn, (share * visits.Count) - (5 * Math.Sqrt(share * (1 - share) * visits.Count)), (share * visits.Count) + (5 * Math.Sqrt(share * (1 - share) * visits.Count)));
    }

    [Fact]
    public void IsDrawn_LargerShare_KeepsWhoWasDrawn() => Gen.Guid.Sample(visit =>
    {
        Assert.True(!AuditSample.IsDrawn(visit, 0.1) || AuditSample.IsDrawn(visit, 0.2));
        Assert.True(AuditSample.IsDrawn(visit, 1));
        Assert.False(AuditSample.IsDrawn(visit, 0));
    });

    [Fact]
    public void OutOfRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AuditSample.HighestShare(2, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => AuditSample.IsDrawn(Guid.Empty, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => AuditSample.Needed(0));
    }
}
