namespace LogBook.Domain.Trends;

/// <summary>Which intercept goes with a Theil-Sen slope: the literature has two.</summary>
public enum InterceptDefinition
{
    /// <summary>Median of y − slope × median of x.</summary>
    MedianOfEach,

    /// <summary>Median of (y − slope × x).</summary>
    MedianOfResiduals,
}
