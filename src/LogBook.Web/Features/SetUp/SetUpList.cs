using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp;

/// <summary>One kind of set-up record with its place in addresses and in the exchange format.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="Slug">Part of the address.</param>
/// <param name="Member">List in the exchange document.</param>
/// <param name="Title">Name of the list.</param>
/// <param name="One">Name of one record.</param>
/// <param name="Fields">Fields of its form.</param>
public sealed record SetUpList(SetUpKind Kind, string Slug, string Member, Text Title, Text One, IReadOnlyList<FormField> Fields)
{
    /// <summary>All lists, in the order in which a firm fills them.</summary>
    public static IReadOnlyList<SetUpList> All { get; } =
    [
        new(SetUpKind.Customer, "customers", "customers", SetUpTexts.Customers, SetUpTexts.Customer, FirmForms.Customer),
        new(SetUpKind.Site, "sites", "sites", SetUpTexts.Sites, SetUpTexts.Site, FirmForms.Site),
        new(SetUpKind.System, "systems", "systems", SetUpTexts.Systems, SetUpTexts.System, SystemForms.System),
        new(SetUpKind.Person, "people", "people", SetUpTexts.People, SetUpTexts.Person, FirmForms.Person),
        new(SetUpKind.Product, "products", "products", SetUpTexts.Products, SetUpTexts.Product, FirmForms.Product),
        new(SetUpKind.Instrument, "instruments", "instruments", SetUpTexts.Instruments, SetUpTexts.Instrument, FirmForms.Instrument),
        new(SetUpKind.Lot, "lots", "lots", SetUpTexts.Lots, SetUpTexts.Lot, FirmForms.Lot),
        new(SetUpKind.Rule, "rules", "rules", SetUpTexts.Rules, SetUpTexts.Rule, FirmForms.Rule),
        new(SetUpKind.Test, "tests", "tests", SetUpTexts.Tests, SetUpTexts.Test, FirmForms.Test),
    ];

    /// <summary>The list of an address, or null.</summary>
    public static SetUpList? Find(string? slug) => All.FirstOrDefault(list => string.Equals(list.Slug, slug, StringComparison.Ordinal));

    /// <summary>The list of a kind.</summary>
    public static SetUpList Of(SetUpKind kind) => All.First(list => list.Kind == kind);
}
