using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;

namespace LogBook.Web.Features.SetUp.Phrases;

/// <summary>Words of the page of quick phrases.</summary>
public static class PhrasePageTexts
{
    public static readonly Text Title = new("Quick phrases", "Frases rápidas", "Frases rápidas");

    public static readonly Text Short = new("What one tap writes into a visit", "Lo que un toque escribe en una visita", "O que um toque escreve em uma visita");

    public static readonly Text Intro = new(
        "Phrases that this firm uses often. They stand before the built-in ones in the visit form, each in the language of whoever fills it in. Tablets have them from the next time they bring the round; visits that were written stay as they are.",
        "Frases que esta empresa usa a menudo. En el formulario de visita van antes de las incluidas, cada una en el idioma de quien lo rellena. Las tabletas las tienen desde la próxima vez que traigan la ronda; las visitas ya escritas quedan como están.",
        "Frases que esta empresa usa muito. No formulário de visita ficam antes das já incluídas, cada uma no idioma de quem o preenche. Os tablets as têm a partir da próxima vez que trouxerem a rota; as visitas já escritas ficam como estão.");

    public static readonly Text HowTo = new(
        "A phrase is needed in all three languages, because the customer may read another one than the technician. Keep it short: at most 60 characters, at most 12 for one place, without a semicolon. A phrase that is removed is no longer offered; what was written with it stays.",
        "Una frase se necesita en los tres idiomas, porque el cliente puede leer otro que el técnico. Que sea corta: como máximo 60 caracteres, 12 por lugar, sin punto y coma. Una frase quitada ya no se ofrece; lo escrito con ella queda.",
        "Uma frase é necessária nos três idiomas, porque o cliente pode ler outro que o técnico. Que seja curta: no máximo 60 caracteres, 12 por lugar, sem ponto e vírgula. Uma frase removida não é mais oferecida; o que foi escrito com ela fica.");

    public static readonly Text Phrase = new("Phrase", "Frase", "Frase");
    public static readonly Text English = new("English", "Inglés", "Inglês");
    public static readonly Text Spanish = new("Spanish", "Español", "Espanhol");
    public static readonly Text Portuguese = new("Portuguese", "Portugués", "Português");
    public static readonly Text BuiltIn = new("Built in: {0}", "Incluidas: {0}", "Já incluídas: {0}");

    private static readonly Dictionary<PhraseUse, Text> Names = new()
    {
        [PhraseUse.Stopped] = new("Why work stopped", "Por qué se paró el trabajo", "Por que o trabalho parou"),
        [PhraseUse.Changed] = new("What changed since the last visit", "Qué cambió desde la última visita", "O que mudou desde a última visita"),
        [PhraseUse.Seen] = new("What was seen at the tower", "Qué se vio en la torre", "O que se viu na torre"),
        [PhraseUse.RangeReason] = new("Why a value outside its range needs nothing", "Por qué un valor fuera de rango no requiere nada", "Por que um valor fora da faixa não exige nada"),
        [PhraseUse.Action] = new("What is to be done", "Qué hay que hacer", "O que há para fazer"),
        [PhraseUse.NotTaken] = new("Why a test was not taken", "Por qué no se hizo un ensayo", "Por que um ensaio não foi feito"),
        [PhraseUse.SettingReason] = new("Why a setting was changed or a switch is left", "Por qué se cambió un ajuste o se deja un interruptor", "Por que um ajuste foi mudado ou uma chave fica assim"),
        [PhraseUse.Unsigned] = new("Why nobody signs for the customer", "Por qué nadie firma por el cliente", "Por que ninguém assina pelo cliente"),
        [PhraseUse.LeftOpen] = new("Why something is left open", "Por qué algo queda abierto", "Por que algo fica em aberto"),
        [PhraseUse.Amended] = new("Why a visit is amended", "Por qué se corrige una visita", "Por que uma visita é corrigida"),
    };

    /// <summary>Where a phrase is offered.</summary>
    public static Text NameOf(PhraseUse use) => Names[use];
}
