using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>Products that must never meet stand, or feed, where they can; any product in another's drum.</summary>
/// <remarks>
/// Decides at once, always "act", never folded. Two products dosed into the same water by their own feeds are not judged here: they
/// meet diluted, and how far apart in time they must stay is a matter of the dose plan.
/// </remarks>
public sealed class MixingHazard : IFindingRule
{
    private static readonly Text InDrum = new(
        "Drum {0} is for {1}; {2} was found in it.",
        "El bidón {0} es para {1}; se encontró {2} en él.",
        "A bombona {0} é para {1}; foi encontrado {2} nela.");

    private static readonly Text InDrumNever = new(
        "Drum {0} is for {1}; {2} was found in it. These two must never meet.",
        "El bidón {0} es para {1}; se encontró {2} en él. Estos dos no deben juntarse nunca.",
        "A bombona {0} é para {1}; foi encontrado {2} nela. Esses dois nunca podem se encontrar.");

    private static readonly Text Poured = new(
        "{0} was poured into drum {1}, which is for {2}.",
        "Se vertió {0} en el bidón {1}, que es para {2}.",
        "{0} foi despejado na bombona {1}, que é para {2}.");

    private static readonly Text OneLine = new(
        "Output {0} feeds both {1} and {2}, which must never meet.",
        "La salida {0} dosifica {1} y {2}, que no deben juntarse nunca.",
        "A saída {0} dosa {1} e {2}, que nunca podem se encontrar.");

    private static readonly Text OneFeeder = new(
        "One feeder (output {0}) is set up for two solid oxidisers, {1} and {2}: mixed they can burn or explode.",
        "Un mismo dosificador (salida {0}) está previsto para dos oxidantes sólidos, {1} y {2}: mezclados pueden arder o explotar.",
        "Um mesmo dosador (saída {0}) está previsto para dois oxidantes sólidos, {1} e {2}: misturados podem queimar ou explodir.");

    private static readonly Text OnePlace = new(
        "{0} and {1}, which must never meet, were poured at one place ({2}) on one visit.",
        "{0} y {1}, que no deben juntarse nunca, se vertieron en un mismo lugar ({2}) en una visita.",
        "{0} e {1}, que nunca podem se encontrar, foram despejados em um mesmo lugar ({2}) em uma visita.");

    private static readonly Text NoFlow = new(
        "Output {0} feeds {1} by a forced switch while nothing circulates: it collects in the pipe and arrives at once at restart.",
        "La salida {0} dosifica {1} con el selector forzado mientras nada circula: se acumula en la tubería y llega de golpe al arrancar.",
        "A saída {0} dosa {1} com a chave forçada enquanto nada circula: acumula-se no tubo e chega de uma vez na partida.");

    private static readonly Text Counted = new("such places", "lugares así", "lugares assim");

    private static readonly Said[] Next =
    [
        Looks.Say("Stop that feed; nobody opens anything before the labels and safety data sheets are read.", "Pare esa dosificación; nadie abre nada antes de leer etiquetas y fichas de seguridad.", "Pare essa dosagem; ninguém abre nada antes de ler rótulos e fichas de segurança."),
        Looks.Say("Separate tanks, hoses and fill points; follow the site's plan for spills and gas.", "Separe depósitos, mangueras y bocas de llenado; siga el plan del sitio para derrames y gas.", "Separe tanques, mangueiras e pontos de enchimento; siga o plano do local para derrames e gás."),
        Looks.Say("Tell the customer and the supervisor today.", "Avise hoy al cliente y al supervisor.", "Avise hoje o cliente e o supervisor."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.MixingHazard;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var drum in visit.History.DrumCodes)
        {
            var said = InDrumOf(visit, drum);
            if (said.Count > 0 || visit.Drum(drum)?.Reading.ProductFound is not null)
            {
                yield return Of(visit.History.Subjects.Drum(drum), said);
            }
        }

        foreach (var output in visit.History.System.Outputs)
        {
            yield return Of(visit.History.Subjects.Output(output.Code), AtOutput(visit, output.Code));
        }

        yield return Of(null, AtOnePlace(visit));
    }

    private static Verdict Of(About? about, IReadOnlyList<Said> said) => said.Count == 0
        ? Verdict.Clear(about)
        : Verdict.Found(about, new Indication(Severity.Act, said[0])
        {
            Evidence = [new EvidenceFigure(Counted, said.Count, "1", LimitHigh: 0)],
            LookAtNext = Next,
        });

    private static IReadOnlyList<Said> InDrumOf(VisitFacts visit, string drum)
    {
        if (visit.Record.Additions.Count == 0 && visit.Drum(drum)?.Reading.ProductFound is null)
        {
            return [];
        }

        var said = new List<Said>();
        var own = FeedParts.DrumOn(visit, drum)!.Product;
        if (visit.Drum(drum)?.Reading.ProductFound is { } found && !FeedParts.Same(found, own))
        {
            var never = FeedParts.ProductOf(visit, own) is { } a && FeedParts.ProductOf(visit, found) is { } b && NeverMeets.Pair(a, b);
            said.Add(new Said(never ? InDrumNever : InDrum, drum, NameOf(visit, own), NameOf(visit, found)));
        }

        said.AddRange(visit.Record.Additions
            .Where(addition => FeedParts.Same(addition.To, drum) && !FeedParts.Same(addition.Product, own))
            .Select(addition => new Said(Poured, NameOf(visit, addition.Product), drum, NameOf(visit, own))));
        return said;
    }

    private static IReadOnlyList<Said> AtOutput(VisitFacts visit, string output)
    {
        List<(FeedMode Mode, Product? Product)>? drums = null;
        foreach (var feed in visit.FeedsInForce)
        {
            if (FeedParts.Same(FeedParts.OutputOf(visit, feed.Drum), output) && FeedParts.ProductInDrum(visit, feed.Drum) is { } product
                && !IsAmong(drums, product))
            {
                (drums ??= []).Add((feed.Mode, product));
            }
        }

        if (drums is null || (drums.Count == 1 && visit.Record.Running != false))
        {
            return [];
        }

        var said = new List<Said>();
        foreach (var (i, a) in drums.Index())
        {
            foreach (var b in drums.Skip(i + 1))
            {
                if (NeverMeets.Pair(a.Product!, b.Product!))
                {
                    said.Add(new Said(OneLine, output, a.Product!.Name, b.Product!.Name));
                }
                else if (a.Mode == FeedMode.Feeder && b.Mode == FeedMode.Feeder && a.Product!.Oxidising == true && b.Product!.Oxidising == true)
                {
                    said.Add(new Said(OneFeeder, output, a.Product.Name, b.Product.Name));
                }
            }
        }

        var forced = visit.Record.Running == false && visit.Record.Switches.Any(s => FeedParts.Same(s.Output, output) && s.Found == SwitchPosition.ForcedOn);
        if (forced && drums.Find(pair => NeverMeets.IsReactive(pair.Product!)).Product is { } reactive)
        {
            said.Add(new Said(NoFlow, output, reactive.Name));
        }

        return said;
    }

    private static bool IsAmong(List<(FeedMode Mode, Product? Product)>? drums, Product product)
    {
        for (var i = 0; i < drums?.Count; i++)
        {
            if (FeedParts.Same(drums[i].Product!.Code, product.Code))
            {
                return true;
            }
        }

        return false;
    }

    // Poured at different places, or into the basin with hours between them, they meet diluted like any two doses.
    private static IReadOnlyList<Said> AtOnePlace(VisitFacts visit)
    {
        if (visit.Record.Additions.Count == 0)
        {
            return [];
        }

        var said = new List<Said>();

        foreach (var place in visit.Record.Additions.Where(addition => addition.To is not null).GroupBy(addition => addition.To!, StringComparer.OrdinalIgnoreCase))
        {
            var poured = place.ToList();
            foreach (var (i, a) in poured.Index())
            {
                foreach (var b in poured.Skip(i + 1))
                {
                    if (FeedParts.ProductOf(visit, a.Product) is { } first && FeedParts.ProductOf(visit, b.Product) is { } second
                        && NeverMeets.Pair(first, second) && AreClose(a, b))
                    {
                        said.Add(new Said(OnePlace, first.Name, second.Name, place.Key));
                    }
                }
            }
        }

        return said;
    }

    private static bool AreClose(Addition a, Addition b) =>
        a.At is not { } first || b.At is not { } second || Math.Abs((first.Utc - second.Utc).TotalHours) <= 1;

    private static string NameOf(VisitFacts visit, string code) => FeedParts.ProductOf(visit, code)?.Name ?? code;
}
