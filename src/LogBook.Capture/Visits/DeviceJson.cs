using System.Text.Json.Serialization;
using LogBook.Domain.Outcomes;

namespace LogBook.Capture.Visits;

/// <summary>How the server's issues are read; without reflection, which trimming takes away.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, PropertyNameCaseInsensitive = true, UseStringEnumConverter = true)]
[JsonSerializable(typeof(Issue[]))]
internal sealed partial class DeviceJson : JsonSerializerContext;
