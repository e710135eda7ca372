using System.Text.Json.Serialization;
using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;

namespace LogBook.Capture.Visits;

/// <summary>How texts of the server and of the device are read; without reflection, which trimming takes away.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, PropertyNameCaseInsensitive = true, UseStringEnumConverter = true)]
[JsonSerializable(typeof(Issue[]))]
[JsonSerializable(typeof(TypedText[]))]
[JsonSerializable(typeof(EngineSettingChange[]))]
[JsonSerializable(typeof(DeviceAction[]))]
internal sealed partial class DeviceJson : JsonSerializerContext;
