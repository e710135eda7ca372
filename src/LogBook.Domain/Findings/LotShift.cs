using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Findings;

/// <summary>A reagent lot that shows the same offset on several sites.</summary>
/// <remarks>
/// Each result stands against the site's own median with other lots, unless the product used over the water lost says by itself that
/// more or less was fed: a real overfeed is none of the lot's. Sites that test with other lots must not have moved with it.
/// One person's technique or the season can look alike where all sites of the lot share them.
/// </remarks>
internal static class LotShift
{
    private const double LeastAgreeing = 0.75;

    private static readonly Text Says = new(
        "Lot {0} reads {1} {2} off on {3} sites against what each site has had with other lots ({4} results, standard error {5}; limit {6}, {7}), and other lots have not moved.",
        "El lote {0} da {1} con {2} de desvío en {3} sitios frente a lo que cada sitio tuvo con otros lotes ({4} resultados, error estándar {5}; límite {6}, {7}), y los otros lotes no se han movido.",
        "O lote {0} dá {1} com {2} de desvio em {3} locais contra o que cada local teve com outros lotes ({4} resultados, erro padrão {5}; limite {6}, {7}), e os outros lotes não se moveram.");

    private static readonly Text Offset = new("offset of the lot", "desvío del lote", "desvio do lote");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("reading", "the reagent lot reads wrong: age, storage, filling", "el lote de reactivo da mal: edad, almacenamiento, llenado", "o lote de reagente dá errado: idade, armazenagem, enchimento"),
        Looks.Cause("laboratory", "one way of working, where one person uses the lot", "una forma de trabajar, si una sola persona usa el lote", "um modo de trabalhar, se uma só pessoa usa o lote"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Test one sample with this lot and with another.", "Analice una muestra con este lote y con otro.", "Teste uma amostra com este lote e com outro."),
        Looks.Say("Change no feed on results of this lot alone.", "No cambie ninguna dosificación solo por resultados de este lote.", "Não mude nenhuma dosagem só por resultados deste lote."),
        Looks.Say("Test a standard with this lot.", "Analice un patrón con este lote.", "Teste um padrão com este lote."),
    ];

    public static About AboutOf(string lot) => new() { Lot = lot };

    public static ShiftStatistic? Find(ShiftState lot, IEnumerable<Comparison> others, DateTime known, FindingThresholds thresholds)
    {
        var from = known.AddDays(-thresholds.ShiftDays.Value);
        var stretch = lot.Comparisons.Where(c => c.At > from && c.At <= known).ToList();
        if (stretch.Count < thresholds.ShiftComparisons.Value)
        {
            return null;
        }

        var found = ShiftStatistic.Of(stretch);
        return found.Sites >= thresholds.ShiftSites.Value && Math.Abs(found.Median) > thresholds.LotShiftPercent.Value && Math.Abs(found.Median) > 2 * found.StandardError
            && found.Agreeing >= LeastAgreeing && found.ShownBySites(thresholds.LotShiftPercent.Value, thresholds.ShiftSites.Value)
            && !InstrumentShift.Moved([.. others.Where(c => c.At > from && c.At <= known)], found, thresholds.LotShiftPercent.Value)
                ? found
                : null;
    }

    /// <summary>Whether the results together no longer show the shift: a lot does not change by itself, so all of them count.</summary>
    public static bool Unmoved(ShiftState lot, FindingThresholds thresholds) => Math.Abs(ShiftStatistic.Of(lot.Comparisons).Median) < thresholds.LotShiftPercent.Value / 2;

    public static Indication BySites(string lot, string test, ShiftStatistic found, FindingThresholds thresholds)
    {
        var limit = thresholds.LotShiftPercent;
        return new Indication(
            Severity.Plan,
            new Said(
                Says, lot, TestTexts.NameOf(test.ToLowerInvariant()), new Amount(found.Median, "%"), (double)found.Sites, (double)found.Count, new Amount(found.StandardError, "%"), new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence = [new EvidenceFigure(Offset, found.Median, "%", found.Median - (2 * found.StandardError), found.Median + (2 * found.StandardError), -limit.Value, limit.Value)],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
