using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Sites;

/// <summary>One water system of a site with its equipment. Volumes L, flows L/h unless the name says otherwise.</summary>
public sealed record WaterSystem
{
    /// <summary>Code of its site.</summary>
    public required string Site { get; init; }

    /// <summary>Unique within the site.</summary>
    public required string Code { get; init; }

    /// <summary>Name people use.</summary>
    public required string Name { get; init; }

    /// <summary>Only open-recirculating systems are judged by the engine.</summary>
    public required SystemKind Kind { get; init; }

    /// <summary>Volume of the whole circuit, L; often known to 20 %.</summary>
    public double? VolumeL { get; init; }

    /// <summary>Heat rejected at full load, kW.</summary>
    public double? FullLoadKw { get; init; }

    /// <summary>Recirculation, L/min.</summary>
    public double? RecirculationLPerMin { get; init; }

    /// <summary>Flow of the open bleed valve, L/h.</summary>
    public double? BleedValveLPerH { get; init; }

    /// <summary>Bleed flow timed into a bucket.</summary>
    public BleedTiming? BleedTimed { get; init; }

    /// <summary>Wetted metals.</summary>
    public IReadOnlyList<Metal> Metals { get; init => field = value ?? []; } = [];

    /// <summary>Highest conductivity that the permit for the discharge allows, µS/cm at 25 °C; null where none is on file.</summary>
    public double? DischargeUsPerCm { get; init; }

    /// <summary>Where that limit was read: permit, number, day.</summary>
    public string? DischargeSource { get; init; }

    /// <summary>Day new galvanised steel went into use.</summary>
    public DateOnly? NewGalvanisedFrom { get; init; }

    /// <summary>Codes of the rules that apply.</summary>
    public IReadOnlyList<string> Rules { get; init => field = value ?? []; } = [];

    /// <summary>When the plant runs.</summary>
    public Operation? Operation { get; init; }

    /// <summary>Further sample points beyond the standard ones.</summary>
    public IReadOnlyList<string> SamplePoints { get; init => field = value ?? []; } = [];

    /// <summary>Fixed probes.</summary>
    public IReadOnlyList<Probe> Probes { get; init => field = value ?? []; } = [];

    /// <summary>Controller outputs.</summary>
    public IReadOnlyList<Output> Outputs { get; init => field = value ?? []; } = [];

    /// <summary>Water meters.</summary>
    public IReadOnlyList<Meter> Meters { get; init => field = value ?? []; } = [];

    /// <summary>Drums and tanks of product.</summary>
    public IReadOnlyList<Drum> Drums { get; init => field = value ?? []; } = [];

    /// <summary>Feed pumps.</summary>
    public IReadOnlyList<Pump> Pumps { get; init => field = value ?? []; } = [];

    /// <summary>What was to be done, each from its day on.</summary>
    public IReadOnlyList<Programme> Programmes { get; init => field = value ?? []; } = [];

    /// <summary>Quantities as a person entered them, by field name with the suffix "Entered".</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Entered { get; set; }
}
