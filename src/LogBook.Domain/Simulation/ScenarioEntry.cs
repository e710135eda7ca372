using LogBook.Domain.Programmes;

namespace LogBook.Domain.Simulation;

/// <summary>One dated line of a plant's story: what goes wrong or is put right without anybody of the firm.</summary>
public sealed record ScenarioEntry
{
    /// <summary>When, local wall time of the site.</summary>
    public required DateTime On { get; init; }

    /// <summary>What happens.</summary>
    public required ScenarioAct Act { get; init; }

    /// <summary>Code of the output, drum or meter concerned.</summary>
    public string? Part { get; init; }

    /// <summary>Value that holds from then on, or that is reached at <see cref="Until"/>; its unit belongs to <see cref="Act"/>.</summary>
    public double Value { get; init; }

    /// <summary>Local wall time at which a gradual change is complete; absent means at once.</summary>
    public DateTime? Until { get; init; }

    /// <summary>Text value: product code for <see cref="ScenarioAct.DrumHolds"/>.</summary>
    public string? Text { get; init; }

    /// <summary>Settings after <see cref="ScenarioAct.SettingsReset"/>.</summary>
    public Programme? Settings { get; init; }

    /// <summary>Why, for readers.</summary>
    public string? Note { get; init; }
}
