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
public sealed partial class ExchangeJson : JsonSerializerContext;
