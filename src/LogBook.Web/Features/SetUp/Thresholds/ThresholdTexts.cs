using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Thresholds;

/// <summary>Words of the pages of thresholds and uncertainties.</summary>
public static class ThresholdTexts
{
    public static readonly Text Title = new("Thresholds and uncertainties", "Umbrales e incertidumbres", "Limiares e incertezas");

    public static readonly Text Intro = new(
        "What the findings are judged by. Each has a default with its basis; a firm or one system may have its own value. A change is in force at once: within about a minute all visits are judged anew by it, past ones too. Labels, rules in force and the ranges of programmes stay as they are.",
        "Con qué se juzgan los hallazgos. Cada uno tiene un valor por defecto con su base; la empresa o un sistema puede tener el suyo. Un cambio rige al momento: en cosa de un minuto todas las visitas se juzgan de nuevo con él, también las pasadas. Etiquetas, normas en vigor y rangos de los programas quedan como están.",
        "Com que as constatações são avaliadas. Cada um tem um valor padrão com a sua base; a empresa ou um sistema pode ter o seu. Uma mudança vale na hora: em cerca de um minuto todas as visitas são avaliadas de novo por ela, também as passadas. Rótulos, regras em vigor e faixas dos programas ficam como estão.");

    public static readonly Text Short = new("What findings are judged by", "Con qué se juzgan los hallazgos", "Com que as constatações são avaliadas");

    public static readonly Text Few = new("{0} of {1} set by this firm", "{0} de {1} fijados por esta empresa", "{0} de {1} definidos por esta empresa");
    public static readonly Text HoldsFor = new("Holds for", "Rige para", "Vale para");
    public static readonly Text WholeFirm = new("the whole firm", "toda la empresa", "toda a empresa");
    public static readonly Text WithOwn = new("{0} ({1} own)", "{0} ({1} propios)", "{0} ({1} próprios)");
    public static readonly Text OnlyOwn = new("Only own values", "Solo valores propios", "Só valores próprios");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text Default = new("Default", "Por defecto", "Padrão");
    public static readonly Text OfFirm = new("Of the firm", "De la empresa", "Da empresa");
    public static readonly Text Basis = new("Basis of the default", "Base del valor por defecto", "Base do padrão");
    public static readonly Text Own = new("Own value", "Valor propio", "Valor próprio");
    public static readonly Text None = new("–", "–", "–");
    public static readonly Text Nothing = new("None fits what is asked for", "Ninguno corresponde a lo pedido", "Nenhum corresponde ao pedido");
    public static readonly Text Range = new("Sensible range", "Rango razonable", "Faixa razoável");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text ReasonHint = new("Stands with the change for whoever asks later.", "Queda con el cambio para quien pregunte después.", "Fica com a mudança para quem perguntar depois.");
    public static readonly Text ValueIn = new("Own value ({0})", "Valor propio ({0})", "Valor próprio ({0})");
    public static readonly Text InForce = new("In force now", "En vigor ahora", "Em vigor agora");
    public static readonly Text Undo = new("Undo: back to {0}", "Deshacer: volver a {0}", "Desfazer: voltar a {0}");
    public static readonly Text Undone = new("Undone; {0} is in force again.", "Deshecho; rige de nuevo {0}.", "Desfeito; vale de novo {0}.");
    public static readonly Text UndoneWhy = new("undone", "deshecho", "desfeito");
    public static readonly Text Reset = new("Back to {0}", "Volver a {0}", "Voltar a {0}");
    public static readonly Text ResetMeans = new(
        "The own value {0} is no longer used; all visits are judged by {1} again. It stays on record below.",
        "El valor propio {0} deja de usarse; todas las visitas se juzgan de nuevo con {1}. Queda registrado abajo.",
        "O valor próprio {0} deixa de ser usado; todas as visitas são avaliadas de novo por {1}. Fica registrado abaixo.");
    public static readonly Text WasReset = new("{0} is in force again.", "Rige de nuevo {0}.", "Vale de novo {0}.");
    public static readonly Text Changes = new("Changes so far", "Cambios hasta ahora", "Mudanças até agora");
    public static readonly Text When = new("When (UTC)", "Cuándo (UTC)", "Quando (UTC)");
    public static readonly Text Who = new("Who", "Quién", "Quem");
    public static readonly Text Value = new("Value", "Valor", "Valor");
    public static readonly Text ToDefault = new("back to the default", "vuelta al valor por defecto", "volta ao padrão");
    public static readonly Text Missing = new("{0}: missing; expected is {1}.", "{0}: falta; se espera {1}.", "{0}: falta; esperado {1}.");
}
