using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;

namespace LogBook.Entry.Phrases;

/// <summary>Phrases that a firm uses often, each in three languages; one tap writes it.</summary>
/// <remarks>The firm's own stand before the ones that come with the form.</remarks>
public sealed class PhraseBook
{
    private static readonly Dictionary<PhraseUse, Text[]> BuiltIn = new()
    {
        [PhraseUse.Stopped] =
        [
            new("no access to the plant", "sin acceso a la planta", "sem acesso à planta"),
            new("permit or escort missing", "falta permiso o acompañante", "falta permissão ou acompanhante"),
            new("product spilled or leaking", "producto derramado o con fuga", "produto derramado ou vazando"),
            new("guard or wiring damaged", "protección o cableado dañado", "proteção ou fiação danificada"),
            new("roof or ladder cannot be used", "no se puede usar la cubierta o la escalera", "não se pode usar o telhado ou a escada"),
            new("others at work on the equipment", "otros trabajan en el equipo", "outros trabalham no equipamento"),
        ],
        [PhraseUse.Changed] =
        [
            new("nothing changed", "nada cambió", "nada mudou"),
            new("load much higher", "carga mucho mayor", "carga muito maior"),
            new("load much lower", "carga mucho menor", "carga muito menor"),
            new("plant was stopped for some days", "la planta estuvo parada unos días", "a planta ficou parada alguns dias"),
            new("somebody worked on the system", "alguien trabajó en el sistema", "alguém trabalhou no sistema"),
        ],
        [PhraseUse.Seen] =
        [
            new("clean", "limpio", "limpo"),
            new("light slime", "limo leve", "limo leve"),
            new("light algae", "algas leves", "algas leves"),
            new("scale on the fill", "incrustación en el relleno", "incrustação no enchimento"),
            new("overflow running", "rebosadero corriendo", "extravasor correndo"),
            new("leak", "fuga", "vazamento"),
        ],
        [PhraseUse.RangeReason] =
        [
            new("dose just fed", "recién dosificado", "acabou de dosar"),
            new("plant just restarted", "planta recién arrancada", "planta acabou de partir"),
            new("will be measured again at the next visit", "se medirá otra vez en la próxima visita", "será medido de novo na próxima visita"),
        ],
        [PhraseUse.Action] =
        [
            new("raise the feed", "subir la dosificación", "aumentar a dosagem"),
            new("lower the feed", "bajar la dosificación", "reduzir a dosagem"),
            new("clean the probe", "limpiar la sonda", "limpar a sonda"),
            new("check the bleed valve", "revisar la válvula de purga", "verificar a válvula de purga"),
            new("customer to repair", "el cliente debe reparar", "o cliente deve consertar"),
        ],
        [PhraseUse.NotTaken] =
        [
            new("reagent used up", "reactivo agotado", "reagente acabou"),
            new("no flow at the sample point", "sin caudal en el punto de muestra", "sem vazão no ponto de amostra"),
            new("instrument faulty", "instrumento averiado", "instrumento com defeito"),
        ],
        [PhraseUse.SettingReason] =
        [
            new("as in the programme", "según el programa", "conforme o programa"),
            new("asked by the customer", "a petición del cliente", "a pedido do cliente"),
            new("repair pending", "reparación pendiente", "conserto pendente"),
        ],
        [PhraseUse.Unsigned] =
        [
            new("nobody on site", "nadie en el sitio", "ninguém no local"),
            new("office closed", "oficina cerrada", "escritório fechado"),
            new("told by phone", "avisado por teléfono", "avisado por telefone"),
        ],
        [PhraseUse.LeftOpen] =
        [
            new("not reachable today", "no accesible hoy", "não acessível hoje"),
            new("called away", "llamado a otro lugar", "chamado para outro lugar"),
            new("comes with the next visit", "va con la próxima visita", "fica para a próxima visita"),
        ],
        [PhraseUse.Amended] =
        [
            new("result came in", "llegó el resultado", "chegou o resultado"),
            new("typing error", "error al anotar", "erro de digitação"),
        ],
    };

    private readonly IReadOnlyDictionary<PhraseUse, IReadOnlyList<Text>> _own;

    /// <summary>Makes a book.</summary>
    /// <param name="own">Phrases of the firm; none for the built-in ones alone.</param>
    public PhraseBook(IReadOnlyDictionary<PhraseUse, IReadOnlyList<Text>>? own = null) => _own = own ?? new Dictionary<PhraseUse, IReadOnlyList<Text>>();

    /// <summary>Makes a book of what a firm has set up.</summary>
    /// <param name="own">Phrases of the firm.</param>
    public PhraseBook(QuickPhrases own)
        : this(own.ByUse)
    {
    }

    /// <summary>The built-in phrases alone.</summary>
    public static PhraseBook Default { get; } = new();

    /// <summary>Phrases of one use.</summary>
    /// <param name="use">Where they belong.</param>
    /// <returns>The firm's first.</returns>
    public IReadOnlyList<Text> Of(PhraseUse use) => [.. _own.GetValueOrDefault(use) ?? [], .. BuiltIn[use]];
}
