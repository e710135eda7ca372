namespace LogBook.Web.Features.History;

/// <summary>What the chart draws; read by option.mjs. Moments are Unix milliseconds of the site's wall time.</summary>
public sealed record ChartModel(string Language, double From, double To, IReadOnlyList<ChartPanel> Panels, IReadOnlyList<ChartLane> Lanes, IReadOnlyDictionary<string, string> Texts)
{
    /// <summary>What the picture says above the chart.</summary>
    public string Title { get; init; } = "";

    /// <summary>Name of the picture's file.</summary>
    public string File { get; init; } = "";

    /// <summary>What the marks mean, for the legend under the picture.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
