using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Entry.Cautions;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp;

/// <summary>Cautions for what is being set up: label limits, products that must not meet, solid oxidisers.</summary>
internal static class SetUpCautions
{
    /// <summary>Cautions of a record's form.</summary>
    public static IEnumerable<string> Of(SetUpKind kind, FormGroup group, FormScope scope) => kind switch
    {
        SetUpKind.Product => OfProduct(group, scope.Language),
        SetUpKind.System => OfSite(group.Text("site"), group.Text("code"), group.Rows("drums").Select(drum => drum.Text("product")), scope),
        _ => [],
    };

    /// <summary>Cautions of a programme's form.</summary>
    public static IEnumerable<string> OfProgramme(FormGroup group, FormScope scope)
    {
        if (scope.System is not { } system)
        {
            yield break;
        }

        foreach (var caution in OfSite(system.Site, system.Code, system.Drums.Select(drum => drum.Product), scope))
        {
            yield return caution;
        }

        if (group.Rows("feeds").Any(feed => feed.Text("mode") == "feeder"))
        {
            yield return CautionTexts.Of(Caution.SolidOxidiser).In(scope.Language);
        }

        foreach (var feed in group.Rows("feeds"))
        {
            var drum = system.Drums.FirstOrDefault(drum => drum.Code.Equals(feed.Text("drum"), StringComparison.OrdinalIgnoreCase));
            if (drum is not null && scope.Firm.Products.TryGetValue(drum.Product, out var product)
                && (FormWriter.Number(feed, "targetMgPerL", scope.Language) ?? product.DoseMgPerL) is { } dose && product.LabelMaxMgPerL is { } most && dose > most)
            {
                yield return AboveLabel(product.Name, dose, most, scope.Language);
            }
        }
    }

    private static IEnumerable<string> OfProduct(FormGroup group, Language language)
    {
        if (FormWriter.Number(group, "doseMgPerL", language) is { } dose && FormWriter.Number(group, "labelMaxMgPerL", language) is { } most && dose > most)
        {
            yield return AboveLabel(group.Text("name"), dose, most, language);
        }

        if (group.Text("kind") == "biocide")
        {
            yield return SetUpTexts.LabelFirst.In(language) + " " + CautionTexts.Of(Caution.Biocide).In(language);
        }
    }

    // What stands on the other systems of the site counts too: drums of one room meet in hoses and hands, not in the pipes.
    private static IEnumerable<string> OfSite(string site, string system, IEnumerable<string> products, FormScope scope)
    {
        var others = scope.Firm.SystemsOf(site).Where(other => !other.Code.Equals(system, StringComparison.OrdinalIgnoreCase)).SelectMany(other => other.Drums).Select(drum => drum.Product);
        var there = products.Concat(others).Distinct(StringComparer.OrdinalIgnoreCase).Select(code => scope.Firm.Products.GetValueOrDefault(code)).OfType<Product>().ToList();
        if (there.Exists(product => product.Kind == ProductKind.Acid) && there.Exists(product => product.Oxidising == true))
        {
            yield return CautionTexts.Of(Caution.AcidAndHypochlorite).In(scope.Language);
        }

        foreach (var product in there)
        {
            foreach (var other in there.Where(other => other != product && product.NeverWith.Any(named => IsNamed(other, named))))
            {
                yield return SetUpTexts.NeverTogether.In(scope.Language, product.Name, other.Name);
            }
        }
    }

    private static bool IsNamed(Product product, string named) => named switch
    {
        "biocide:oxidising" => product.Kind == ProductKind.Biocide && product.Oxidising == true,
        "biocide:non-oxidising" => product.Kind == ProductKind.Biocide && product.Oxidising != true,
        _ => product.Code.Equals(named, StringComparison.OrdinalIgnoreCase)
            || (Enum.TryParse<ProductKind>(named, ignoreCase: true, out var kind) && product.Kind == kind),
    };

    private static string AboveLabel(string name, double dose, double most, Language language) =>
        SetUpTexts.DoseAboveLabel.In(language, name, Shown.Entered(dose, "mg/L", language), Shown.Entered(most, "mg/L", language));
}
