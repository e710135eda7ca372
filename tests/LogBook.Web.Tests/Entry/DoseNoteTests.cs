using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Web.Tests.Entry;

public sealed class DoseNoteTests
{
    // 10,000 L, judged with less water than on file: 2 L of density 1.05 make at least 210 mg/L.
    private static FirmSetUp Firm(DateOnly? expires) => new(new ExchangeDocument
    {
        Format = "logbook-exchange",
        Version = 1,
        Customers = [new Customer { Code = "YAF", Name = "Yaffleford College" }],
        People = [new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician, Certificates = [new Certificate { Name = "Applicator", Expires = expires }] }],
        Products =
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor },
            new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, DensityKgPerL = 1.05, LabelMaxMgPerL = 150 },
        ],
        Sites = [EntryFirm.Site],
        Systems = [EntryFirm.Tower],
    });

    [Theory]
    [InlineData("2", true)]
    [InlineData("0.5", false)]
    public async Task HandDose_AboveTheLabel_IsToldAtTheAct(string litres, bool isTold)
    {
        await using var page = new EntryPage(Firm(null));
        page.Go("Adjust");
        page.Press("Add: Product added by hand");
        page.Type("Product", "N-15");
        page.Type("Amount", litres);

        Assert.Equal(isTold, page.Words.Contains("the label allows 150", StringComparison.Ordinal));
        Assert.DoesNotContain("no valid certificate", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Biocide_ByAPersonWhoseCertificateExpired_IsStopped_AnInhibitorIsNot()
    {
        await using var page = new EntryPage(Firm(new DateOnly(2025, 3, 30)));
        page.Go("Adjust");
        page.Press("Add: Product added by hand");

        page.Type("Product", "P-40");
        Assert.DoesNotContain("no valid certificate", page.Words, StringComparison.Ordinal);
        page.Type("Product", "N-15");

        Assert.Contains("no valid certificate of R. Yaffle", page.Words, StringComparison.Ordinal);
    }
}
