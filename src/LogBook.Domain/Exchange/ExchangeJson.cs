using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Exchange;

/// <summary>
/// How the records of the exchange format become JSON and back: generated at build time, because the domain also runs
/// trimmed in the browser. Names in camel case; what is null is not written.
/// </summary>
/// <remarks>
/// Reads without checking: The reader checks first. Writes in declaration order:
/// the writer makes the canonical form.
/// </remarks>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(ExchangeDocument))]
[JsonSerializable(typeof(TestDefinition))]
[JsonSerializable(typeof(Customer))]
[JsonSerializable(typeof(Person))]
[JsonSerializable(typeof(Product))]
[JsonSerializable(typeof(Instrument))]
[JsonSerializable(typeof(ReagentLot))]
[JsonSerializable(typeof(Rule))]
[JsonSerializable(typeof(Site))]
[JsonSerializable(typeof(WaterSystem))]
[JsonSerializable(typeof(Visit))]
[JsonSerializable(typeof(VisitedSystem))]
[JsonSerializable(typeof(Finding))]
public sealed partial class ExchangeJson : JsonSerializerContext
{
    /// <summary>The records of a document, each behind those that it is made of.</summary>
    /// <remarks>
    /// How a record is read is worked out when it is first asked for, and with it whatever it is made of: a browser takes some half a
    /// second for a whole document. Asked for in this order (<see cref="JsonSerializerContext.GetTypeInfo"/>), each takes little.
    /// </remarks>
    public static IReadOnlyList<Type> PartsFirst { get; } =
    [
        typeof(Moment), typeof(TestDefinition),
        typeof(Contact), typeof(Customer),
        typeof(Certificate), typeof(Person),
        typeof(ProductResidual), typeof(Product),
        typeof(InstrumentCheck), typeof(Instrument), typeof(ReagentLot),
        typeof(RuleBand), typeof(Rule),
        typeof(BleedTiming), typeof(OperatingHours), typeof(Season), typeof(Stop), typeof(Operation), typeof(Site),
        typeof(Probe), typeof(Output), typeof(Meter), typeof(Drum), typeof(Pump), typeof(MaRange), typeof(TestRange), typeof(BleedDown), typeof(Feed), typeof(MakeUpWater), typeof(Programme), typeof(WaterSystem),
        typeof(Dilution), typeof(Incubation), typeof(Reading), typeof(ProbeCalibration), typeof(ProbeReading), typeof(MeterReading), typeof(DrumReading), typeof(HoursReading), typeof(PumpReading), typeof(Drawdown),
        typeof(BleedTest), typeof(SwitchReading), typeof(SettingValue), typeof(SettingReading), typeof(MaReading), typeof(Addition), typeof(VisitEvent), typeof(AlarmReading), typeof(Observation), typeof(VisitAction),
        typeof(VisitedSystem), typeof(Photo), typeof(Recommendation), typeof(Signature), typeof(Sample), typeof(Visit),
        typeof(About), typeof(Evidence), typeof(Suggestion), typeof(Finding),
        typeof(ExchangeDocument),
    ];
}
