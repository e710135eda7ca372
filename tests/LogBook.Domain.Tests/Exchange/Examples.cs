using LogBook.Domain.Exchange;
using LogBook.Domain.History;

namespace LogBook.Domain.Tests.Exchange;

/// <summary>The examples of the format's description and others beside them.</summary>
internal static class Examples
{
    public static string Text(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Exchange", "examples", name + ".json"));

    public static ExchangeDocument Document(string name) => ExchangeReader.Read(Text(name)).Document!;

    public static FirmSetUp Firm() => new(Document("set-up"));

    /// <summary>A document with one site, one system and one visit whose system record is given as JSON members.</summary>
    public static string VisitWith(string members, string visitMembers = "") => $$"""
        { "format": "logbook-exchange", "version": 1, "visits": [{
          "id": "01955b40-5e60-7c77-9a57-0a6f8a0d2a99", "site": "YAF-1", "technician": "RYA", "arrived": "2025-03-03T09:05:00+00:00",
          {{(visitMembers.Length == 0 ? "" : visitMembers + ",")}}
          "systems": [{ "system": "CT-1"{{(members.Length == 0 ? "" : ", " + members)}} }] }] }
        """;
}
