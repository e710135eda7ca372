using System.Text.Json;
using LogBook.Domain.Exchange;

namespace LogBook.Application.Rescue;

/// <summary>Where a draft on the server came from, as it is stored.</summary>
/// <param name="Holder">Account whose draft it is on the server.</param>
/// <param name="Technician">Code of the person who entered it, as the draft says.</param>
/// <param name="Account">Account under whose key it lay sealed; null when it came as text.</param>
/// <param name="Tablet">Name of the tablet.</param>
/// <param name="KeptAt">When it was last kept there.</param>
/// <param name="TakenAt">When it was taken in, UTC.</param>
/// <param name="TakenBy">Who took it in.</param>
/// <param name="Amends">Whether it amends a visit.</param>
public sealed record RescuedDraft(int Holder, string Technician, string? Account, string? Tablet, DateTimeOffset? KeptAt, DateTime TakenAt, string TakenBy, bool Amends)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>Canonical text.</summary>
    internal string Write() => CanonicalJson.Of(JsonSerializer.SerializeToElement(this, Json));

    /// <summary>Reads <see cref="Write"/>.</summary>
    internal static RescuedDraft Read(string document) => JsonSerializer.Deserialize<RescuedDraft>(document, Json)!;
}
