using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Domain.Exchange;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.Imports;

internal static class Documents
{
    public static async Task<ExchangeDocument> SetUpAsync()
    {
        await using var json = SampleFirm.SetUp();
        using var reader = new StreamReader(json);
        return ExchangeReader.Read(await reader.ReadToEndAsync()).Document!;
    }

    public static async Task<ImportOutcome> ImportAsync(TestDatabase database, ExchangeDocument document, bool partial = false, bool update = false)
    {
        // As a person would write it: the order of the document is kept, because paths count in it.
        using var json = new MemoryStream(Encoding.UTF8.GetBytes(System.Text.Json.JsonSerializer.Serialize(document, ExchangeJson.Default.ExchangeDocument)));
        return await database.Get<ExchangeImport>().ImportAsync(Viewer.System("test"), json, partial, update);
    }
}
