using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Application.Sites;

/// <summary>A record of the exchange format with what its row needs: kind, key and name.</summary>
internal sealed record SetUpRecord(SetUpKind Kind, string Code, string? Site, DateOnly? From, string Name, object Record)
{
    /// <summary>Key within its kind.</summary>
    public (SetUpKind Kind, string Site, string Code, DateOnly From) Key => KeyOf(Kind, Code, Site, From);

    /// <summary>Takes a record apart.</summary>
    /// <exception cref="ArgumentException">It is no set-up.</exception>
    public static SetUpRecord Of(object record) => record switch
    {
        Customer r => new(SetUpKind.Customer, r.Code, null, null, r.Name, r),
        Site r => new(SetUpKind.Site, r.Code, null, null, r.Name, r),
        WaterSystem r => new(SetUpKind.System, r.Code, r.Site, null, r.Name, r),
        Person r => new(SetUpKind.Person, r.Code, null, null, r.Name, r),
        Product r => new(SetUpKind.Product, r.Code, null, null, r.Name, r),
        Instrument r => new(SetUpKind.Instrument, r.Code, null, null, r.Name ?? r.Code, r),
        ReagentLot r => new(SetUpKind.Lot, r.Code, null, null, r.Code, r),
        Rule r => new(SetUpKind.Rule, r.Code, null, r.From, r.Name, r),
        TestDefinition r => new(SetUpKind.Test, r.Code, null, null, r.Name, r),
        _ => throw new ArgumentException($"{record.GetType().Name} is no set-up.", nameof(record)),
    };

    /// <summary>Key of a record.</summary>
    public static (SetUpKind Kind, string Site, string Code, DateOnly From) KeyOf(SetUpKind kind, string code, string? site, DateOnly? from) =>
        (kind, site is null ? "" : CodeKeys.Of(site), CodeKeys.Of(code), from ?? DateOnly.MinValue);

    /// <summary>Every set-up record of a document, owners before what they own.</summary>
    public static IEnumerable<SetUpRecord> AllOf(ExchangeDocument document) => new IEnumerable<object>[]
    {
        document.Tests, document.Customers, document.People, document.Products, document.Instruments, document.Lots, document.Rules, document.Sites, document.Systems,
    }.SelectMany(list => list).Select(Of);

    /// <summary>Canonical JSON of the record.</summary>
    public string Canonical() => Record switch
    {
        Customer r => ExchangeWriter.CanonicalOf(r),
        Site r => ExchangeWriter.CanonicalOf(r),
        WaterSystem r => ExchangeWriter.CanonicalOf(r),
        Person r => ExchangeWriter.CanonicalOf(r),
        Product r => ExchangeWriter.CanonicalOf(r),
        Instrument r => ExchangeWriter.CanonicalOf(r),
        ReagentLot r => ExchangeWriter.CanonicalOf(r),
        Rule r => ExchangeWriter.CanonicalOf(r),
        TestDefinition r => ExchangeWriter.CanonicalOf(r),
        _ => throw new InvalidOperationException("No set-up."),
    };

    /// <summary>A document that holds this record alone, for the checks.</summary>
    public ExchangeDocument AsDocument()
    {
        var empty = new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version };
        return Record switch
        {
            Customer r => empty with { Customers = [r] },
            Site r => empty with { Sites = [r] },
            WaterSystem r => empty with { Systems = [r] },
            Person r => empty with { People = [r] },
            Product r => empty with { Products = [r] },
            Instrument r => empty with { Instruments = [r] },
            ReagentLot r => empty with { Lots = [r] },
            Rule r => empty with { Rules = [r] },
            TestDefinition r => empty with { Tests = [r] },
            _ => throw new InvalidOperationException("No set-up."),
        };
    }
}
