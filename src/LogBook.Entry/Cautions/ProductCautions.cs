using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;

namespace LogBook.Entry.Cautions;

/// <summary>Cautions of products that stand, arrive or are dosed where they should not meet.</summary>
public static class ProductCautions
{
    /// <summary>Cautions of products that must be kept apart: planned on the site, found in a drum, or dosed by hand at this visit.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Cautions, the graver first; which pairs, common practice, no source.</returns>
    public static IEnumerable<Caution> Pairs(FormState state)
    {
        var there = CodesThere(state).Select(code => state.Firm.Products.GetValueOrDefault(code)).OfType<Product>().ToList();
        if (!there.Exists(p => p.Oxidising == true))
        {
            yield break;
        }

        if (there.Exists(p => p.Kind == ProductKind.Acid))
        {
            yield return Caution.AcidAndHypochlorite;
        }

        // A biocide of which nobody said that it oxidises is taken for one that does not.
        if (there.Exists(p => p.Kind == ProductKind.Biocide && p.Oxidising != true))
        {
            yield return Caution.UnlikeProducts;
        }
    }

    /// <summary>Cautions of product that arrives.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Cautions, the graver first.</returns>
    public static IReadOnlyList<Caution> OfDelivery(FormState state) => [.. Pairs(state), Caution.Delivery];

    /// <summary>Cautions of product that goes into a drum with a level switch, or takes its place.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Cautions, the graver first.</returns>
    public static IReadOnlyList<Caution> OfRefill(FormState state) => [.. Pairs(state), Caution.LevelSwitch, Caution.Delivery];

    /// <summary>Cautions of a label that is not of the drum's product.</summary>
    /// <param name="state">The form, which holds the product already.</param>
    /// <param name="planned">Product the drum is for.</param>
    /// <param name="found">Product of the label.</param>
    /// <returns>Cautions, the graver first; none where it is of the drum's product or of none.</returns>
    public static IReadOnlyList<Caution> OfLabel(FormState state, string planned, string found) =>
        found.Length > 0 && IsOther(planned, found) ? [Caution.OtherProduct, .. Pairs(state)] : [];

    /// <summary>Whether a drum of the system in hand holds another product than the one it is for.</summary>
    /// <param name="state">The form.</param>
    /// <returns>True when a label says so.</returns>
    public static bool IsAnyOther(FormState state) =>
        state.Plan?.System.Drums.Any(drum => state.Draft.Text(state.Key("drums", drum.Code, "productFound")) is { Length: > 0 } found && IsOther(drum.Product, found)) == true;

    private static bool IsOther(string planned, string found) => !found.Equals(planned, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> CodesThere(FormState state)
    {
        foreach (var plan in state.Plans)
        {
            string Key(params IReadOnlyList<string> parts) => DraftKey.Under(DraftKey.Of(DraftKey.Systems, plan.System.Code), parts);
            foreach (var drum in plan.System.Drums)
            {
                yield return drum.Product;
                yield return state.Draft.Text(Key("drums", drum.Code, "productFound"));
            }

            foreach (var addition in state.Draft.Rows(Key("additions")))
            {
                yield return state.Draft.Text(DraftKey.Under(addition, "product"));
            }
        }
    }
}
