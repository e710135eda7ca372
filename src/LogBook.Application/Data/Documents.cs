using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.Data;

/// <summary>Stored documents back as records of the exchange format.</summary>
internal static class Documents
{
    public static Visit Visit(string json) => JsonSerializer.Deserialize(json, ExchangeJson.Default.Visit)!;

    public static Site Site(string json) => JsonSerializer.Deserialize(json, ExchangeJson.Default.Site)!;

    public static WaterSystem System(string json) => JsonSerializer.Deserialize(json, ExchangeJson.Default.WaterSystem)!;

    public static Customer Customer(string json) => JsonSerializer.Deserialize(json, ExchangeJson.Default.Customer)!;

    public static Finding Finding(string json) => JsonSerializer.Deserialize(json, ExchangeJson.Default.Finding)!;

    public static Finding Finding(FindingRow row, Language language) => Finding(language switch
    {
        Language.Spanish => row.Spanish,
        Language.Portuguese => row.Portuguese,
        _ => row.English,
    });
}
