using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Review;

/// <summary>Words of Visits to review.</summary>
public static class ReviewPageTexts
{
    public static readonly Text Title = new("Visits to review", "Visitas por revisar", "Visitas por revisar");
    public static readonly Text Empty = new("No visit waits for a review", "Ninguna visita espera revisión", "Nenhuma visita espera revisão");
    public static readonly Text Older = new("From before, not reviewed: {0}", "Anteriores sin revisar: {0}", "Anteriores não revisadas: {0}");
    public static readonly Text WithoutOlder = new("Only the last {0} days", "Solo los últimos {0} días", "Só os últimos {0} dias");
    public static readonly Text OnlyDrawn = new("Only those drawn", "Solo las sorteadas", "Só as sorteadas");
    public static readonly Text Drawn = new("Drawn: look closely", "Sorteada: mirar de cerca", "Sorteada: olhar de perto");
    public static readonly Text Amended = new("Amended: version {0}, see the differences", "Corregida: versión {0}, ver las diferencias", "Corrigida: versão {0}, ver as diferenças");
    public static readonly Text OpenActions = new("Actions left open: {0}", "Acciones pendientes: {0}", "Ações pendentes: {0}");
    public static readonly Text Unsigned = new("Not signed", "Sin firma", "Sem assinatura");
    public static readonly Text Note = new("Note: {0}", "Nota: {0}", "Nota: {0}");
    public static readonly Text Choose = new("Choose {0}", "Elegir {0}", "Escolher {0}");
    public static readonly Text ChooseUnmarked = new("Choose those without a mark ({0})", "Elegir las que no tienen marca ({0})", "Escolher as que não têm marca ({0})");
    public static readonly Text ChooseNone = new("Choose none", "No elegir ninguna", "Não escolher nenhuma");
    public static readonly Text SignOff = new("Mark as reviewed ({0})", "Marcar como revisadas ({0})", "Marcar como revisadas ({0})");
    public static readonly Text SignOffMeans = new(
        "Says that you have looked at these visits. {0} of them carry a mark that asks for reading them first.",
        "Indica que usted ha mirado estas visitas. {0} de ellas llevan una marca que pide leerlas antes.",
        "Indica que você olhou estas visitas. {0} delas têm uma marca que pede que sejam lidas antes.");
    public static readonly Text SignedOff = new("Reviewed: {0}.", "Revisadas: {0}.", "Revisadas: {0}.");
    public static readonly Text Sampling = new("Sampling plan", "Plan de muestreo", "Plano de amostragem");
    public static readonly Text SamplingMeans = new(
        "{0} of all visits are drawn by chance for a closer look: read beside photos and counters, or repeated in the plant. Nobody chooses which. When a look shows that something did not hold, say so on the visit with “Mark as reviewed”.",
        "Se sortea el {0} de todas las visitas para mirarlas de cerca: leerlas junto a fotos y contadores, o repetirlas en la planta. Nadie elige cuáles. Si al mirar algo no se sostiene, dígalo en la visita con «Marcar como revisada».",
        "{0} de todas as visitas são sorteadas para um olhar mais de perto: lidas ao lado de fotos e contadores, ou repetidas na planta. Ninguém escolhe quais. Quando um olhar mostra que algo não se sustentou, diga isso na visita com “Marcar como revisada”.");
    public static readonly Text Visits = new("Visits in a year", "Visitas en un año", "Visitas em um ano");
    public static readonly Text DrawnCount = new("Drawn", "Sorteadas", "Sorteadas");
    public static readonly Text Looked = new("Looked at", "Miradas", "Olhadas");
    public static readonly Text Faulty = new("Did not hold", "No se sostuvieron", "Não se sustentaram");
    public static readonly Text Leaves = new("Leaves room for", "Deja margen para", "Deixa margem para");
    public static readonly Text LeavesShare = new("up to {0} of all", "hasta el {0} de todas", "até {0} de todas");
    public static readonly Text LeavesAll = new("no look yet", "todavía ninguna mirada", "nenhum olhar ainda");
    public static readonly Text How = new(
        "Upper limit of the share of visits in which something does not hold, with 95 % confidence, from those drawn and looked at (exact binomial limit; NIST/SEMATECH e-Handbook 7.2.4.2). {0} looks without a fault are needed to rule out one visit in ten.",
        "Límite superior de la proporción de visitas en que algo no se sostiene, con 95 % de confianza, según las sorteadas y miradas (límite binomial exacto; NIST/SEMATECH e-Handbook 7.2.4.2). Hacen falta {0} miradas sin falta para descartar una visita de cada diez.",
        "Limite superior da proporção de visitas em que algo não se sustenta, com 95 % de confiança, segundo as sorteadas e olhadas (limite binomial exato; NIST/SEMATECH e-Handbook 7.2.4.2). São precisos {0} olhares sem falha para excluir uma visita em cada dez.");
    public static readonly Text NotAccusation = new(
        "The draw judges records, not people: a fault may lie with an instrument, a lot or the form.",
        "El sorteo juzga registros, no personas: la falta puede estar en un instrumento, un lote o el formulario.",
        "O sorteio julga registros, não pessoas: a falha pode estar num instrumento, num lote ou no formulário.");
    public static readonly Text Change = new("Change the share", "Cambiar la proporción", "Mudar a proporção");
    public static readonly Text Share = new("Share of visits drawn, %", "Proporción de visitas sorteadas, %", "Proporção de visitas sorteadas, %");
    public static readonly Text ShareWrong = new("Share of visits drawn: “{0}” was found; a number from 0 to 100 is expected.", "Proporción de visitas sorteadas: se encontró «{0}»; se espera un número de 0 a 100.", "Proporção de visitas sorteadas: encontrou-se “{0}”; espera-se um número de 0 a 100.");
}
