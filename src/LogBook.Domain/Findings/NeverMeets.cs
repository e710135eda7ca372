using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Which products must never meet, by their labels ("neverWith").</summary>
internal static class NeverMeets
{
    /// <summary>Whether either product names the other, its kind, or its kind and whether it oxidises.</summary>
    public static bool Pair(Product a, Product b) => !FeedParts.Same(a.Code, b.Code) && (Names(a, b) || Names(b, a) || AreAcidAndOxidiser(a, b));

    /// <summary>Whether a product is one that must not collect anywhere: acids, oxidisers, and those that name others.</summary>
    public static bool IsReactive(Product product) => product.Kind == ProductKind.Acid || product.Oxidising == true || product.NeverWith.Count > 0;

    private static bool Names(Product a, Product b) => a.NeverWith.Any(other => FeedParts.Same(other, b.Code)
        || FeedParts.Same(other, KindOf(b))
        || (b.Oxidising is { } oxidising && FeedParts.Same(other, KindOf(b) + (oxidising ? ":oxidising" : ":non-oxidising"))));

    // Acid and an oxidiser never meet whatever the entries say: the mixture gives off gas (trade guide 4, sources 64 to 67).
    private static bool AreAcidAndOxidiser(Product a, Product b) =>
        (a.Kind == ProductKind.Acid && b.Oxidising == true) || (b.Kind == ProductKind.Acid && a.Oxidising == true);

    private static string KindOf(Product product) => product.Kind switch
    {
        ProductKind.Inhibitor => "inhibitor",
        ProductKind.Biocide => "biocide",
        ProductKind.Dispersant => "dispersant",
        ProductKind.Acid => "acid",
        ProductKind.Antifoam => "antifoam",
        _ => "other",
    };
}
