using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;

namespace LogBook.Bank.Firms;

/// <summary>Products of the random firms; numbers differ from the demo firm's.</summary>
internal static class BankProducts
{
    public const string Oxidant = "OX-1";

    /// <summary>On file, fed nowhere: it only comes when somebody pours it.</summary>
    public const string Acid = "AC-1";

    public static IReadOnlyList<Product> OnFile { get; } =
    [
        Inhibitor("IN-1", 1.09),
        Inhibitor("IN-2", 1.18),
        Biocide("BI-1", 1.03, 165, 24, 4),
        Biocide("BI-2", 1.11, 210, 24, 5),
        new Product
        {
            Code = Oxidant,
            Name = "Oxidant OX-1",
            Kind = ProductKind.Biocide,
            Oxidising = true,
            DensityKgPerL = 1.19,
            Residual = new ProductResidual { Test = TestCodes.FreeHalogen, MgPerLPerMgProduct = 0.11 },
        },
        new Product { Code = Acid, Name = "Acid AC-1", Kind = ProductKind.Acid, DensityKgPerL = 1.24 },
    ];

    public static IReadOnlyList<PlantProduct> InThePlant { get; } =
    [
        new() { Code = "IN-1", Becomes = Substance.Inhibitor, DensityKgPerL = 1.09 },
        new() { Code = "IN-2", Becomes = Substance.Inhibitor, DensityKgPerL = 1.18 },
        new() { Code = "BI-1", Becomes = Substance.Biocide, DensityKgPerL = 1.03, HalfLifeH = 36, ContactHours = 4 },
        new() { Code = "BI-2", Becomes = Substance.SecondBiocide, DensityKgPerL = 1.11, HalfLifeH = 48, ContactHours = 5 },
        new() { Code = Oxidant, Becomes = Substance.Halogen, DensityKgPerL = 1.19, Share = 0.11, HalfLifeH = 7, ChloridePerMg = 1 },
        new() { Code = Acid, Becomes = Substance.Acid, DensityKgPerL = 1.24, Share = 0.4 },
    ];

    public static double DensityOf(string code) => InThePlant.First(p => p.Code == code).DensityKgPerL;

    public static double ContactOf(string code) => InThePlant.First(p => p.Code == code).ContactHours;

    private static Product Inhibitor(string code, double density) => new()
    {
        Code = code,
        Name = "Inhibitor " + code,
        Kind = ProductKind.Inhibitor,
        DensityKgPerL = density,
        DoseMgPerL = 90,
        Residual = new ProductResidual { Test = TestCodes.Inhibitor, MgPerLPerMgProduct = 1 },
    };

    private static Product Biocide(string code, double density, double max, double gap, double contact) => new()
    {
        Code = code,
        Name = "Biocide " + code,
        Kind = ProductKind.Biocide,
        Oxidising = false,
        DensityKgPerL = density,
        DoseMgPerL = 100,
        LabelMaxMgPerL = max,
        LabelGapHours = gap,
        LabelContactHours = contact,
    };
}
