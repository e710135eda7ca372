using System.Globalization;
using System.Text.Json;

namespace LogBook.Web.Api;

/// <summary>The idempotency key of a visit: its identity and version, as in "0197…/2".</summary>
public static class VisitKey
{
    /// <summary>The key of a document with one visit, bare or in an exchange document; null when it has none.</summary>
    public static string? Of(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var visit = document.RootElement;
            if (visit.ValueKind == JsonValueKind.Object && visit.TryGetProperty("visits", out var visits))
            {
                if (visits.ValueKind != JsonValueKind.Array || visits.GetArrayLength() != 1)
                {
                    return null;
                }

                visit = visits[0];
            }

            if (visit.ValueKind != JsonValueKind.Object
                || !visit.TryGetProperty("id", out var id) || id.ValueKind != JsonValueKind.String || !Guid.TryParse(id.GetString(), out var visitId))
            {
                return null;
            }

            var version = visit.TryGetProperty("version", out var given) && given.ValueKind == JsonValueKind.Number && given.TryGetInt32(out var number) ? number : 1;
            return Of(visitId, version);
        }
        catch (JsonException)
        {
            // Not JSON at all: the intake says where.
            return null;
        }
    }

    /// <summary>The key of a visit.</summary>
    public static string Of(Guid visitId, int version) => visitId.ToString("D") + "/" + version.ToString(CultureInfo.InvariantCulture);
}
