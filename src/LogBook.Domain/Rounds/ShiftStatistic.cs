using LogBook.Domain.Estimates;

namespace LogBook.Domain.Rounds;

/// <summary>Median of comparisons on several sites with its standard error.</summary>
/// <remarks>A site that is visited often must not speak for the others: the median of all and that of the sites' own medians must agree.</remarks>
/// <param name="Median">The nearer to zero of both medians, %; zero when they lie on different sides.</param>
/// <param name="StandardError">Standard error of the median, percentage points.</param>
/// <param name="Sites">Number of sites.</param>
/// <param name="Count">Number of comparisons.</param>
/// <param name="Agreeing">Share of the sites whose own median lies on the same side.</param>
internal sealed record ShiftStatistic(double Median, double StandardError, int Sites, int Count, double Agreeing)
{
    // The median of normal values scatters by sqrt(pi / 2) more than their mean; 1.4826 turns a median deviation into a standard one.
    private const double OfMedian = 1.2533;
    private const double OfDeviation = 1.4826;

    /// <summary>Medians of the sites, %.</summary>
    public IReadOnlyList<double> SiteMedians { get; init; } = [];

    /// <summary>Whether enough sites show it by themselves, each at least half of the limit.</summary>
    /// <param name="limit">Limit, %.</param>
    /// <param name="least">Sites that must.</param>
    public bool ShownBySites(double limit, double least) => SiteMedians.Count(site => site * Math.Sign(Median) > limit / 2) >= least;

    /// <summary>Works out the statistic.</summary>
    /// <param name="comparisons">At least one.</param>
    /// <returns>The statistic; its error is the larger of the one that the readings' uncertainties give and the one seen.</returns>
    public static ShiftStatistic Of(IReadOnlyList<Comparison> comparisons)
    {
        var ofAll = Statistics.Median([.. comparisons.Select(c => c.Percent)]);
        var sites = comparisons.GroupBy(c => c.Site, StringComparer.OrdinalIgnoreCase).Select(site => site.ToList()).ToList();
        var own = comparisons.Average(c => c.Own * c.Own) / comparisons.Count;
        var ofSites = sites.Average(site => site[0].OfSite * site[0].OfSite) / sites.Count;
        List<double> siteMedians = [.. sites.Select(site => Statistics.Median([.. site.Select(c => c.Percent)]))];
        var bySites = Statistics.Median(siteMedians);
        var median = Math.Sign(ofAll) != Math.Sign(bySites) ? 0 : Math.Abs(ofAll) < Math.Abs(bySites) ? ofAll : bySites;
        var seen = OfDeviation * Statistics.Median([.. comparisons.Select(c => Math.Abs(c.Percent - ofAll))]) / Math.Sqrt(comparisons.Count);
        var agreeing = siteMedians.Count(site => Math.Sign(site) == Math.Sign(median));
        return new ShiftStatistic(median, OfMedian * Math.Max(Math.Sqrt(own + ofSites), seen), sites.Count, comparisons.Count, (double)agreeing / sites.Count) { SiteMedians = siteMedians };
    }
}
