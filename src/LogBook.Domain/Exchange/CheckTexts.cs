using LogBook.Domain.Languages;

namespace LogBook.Domain.Exchange;

/// <summary>Wording of what does not agree within a document or with the known set-up.</summary>
internal static class CheckTexts
{
    public static readonly Text UnknownCode = new(
        "{0}: {1} is not known, expected is the code of {2}",
        "{0}: {1} no se conoce, se espera el código de {2}",
        "{0}: {1} não é conhecido, esperado o código de {2}");

    public static readonly Text Twice = new(
        "{0}: {1} stands twice (in any case of letters), expected is once",
        "{0}: {1} está dos veces (en mayúsculas o minúsculas), se espera una vez",
        "{0}: {1} aparece duas vezes (em maiúsculas ou minúsculas), esperado uma vez");

    public static readonly Text Differs = new(
        "{0} is known with other content, expected is the same content or an update",
        "{0} se conoce con otro contenido, se espera el mismo contenido o una actualización",
        "{0} é conhecido com outro conteúdo, esperado o mesmo conteúdo ou uma atualização");

    public static readonly Text Taken = new(
        "code: {0} is a standard test, expected is another code",
        "code: {0} es un ensayo estándar, se espera otro código",
        "code: {0} é um ensaio padrão, esperado outro código");

    public static readonly Text TimeZone = new(
        "timeZone: {0} is not known, expected is an IANA name, as Europe/London",
        "timeZone: {0} no se conoce, se espera un nombre IANA, como Europe/London",
        "timeZone: {0} não é conhecido, esperado um nome IANA, como Europe/London");

    public static readonly Text Unit = new(
        "unit: {0} does not fit {1}, expected is one of {2}",
        "unit: {0} no corresponde a {1}, se espera uno de {2}",
        "unit: {0} não corresponde a {1}, esperado um de {2}");

    public static readonly Text Negative = new(
        "{0}: {1} was found, expected for {2} is 0 or more",
        "{0}: se encontró {1}, para {2} se espera 0 o más",
        "{0}: encontrado {1}, para {2} esperado 0 ou mais");

    public static readonly Text Before = new(
        "{0}: {1} is before {2} {3}, expected is not before",
        "{0}: {1} es anterior a {2} {3}, se espera que no lo sea",
        "{0}: {1} é anterior a {2} {3}, esperado que não seja");

    public static readonly Text LowHigh = new(
        "high: {0} is below low {1}, expected is at least as much",
        "high: {0} es menor que low {1}, se espera al menos lo mismo",
        "high: {0} é menor que low {1}, esperado pelo menos o mesmo");

    public static readonly Text NoEnd = new(
        "low and high are missing, expected is at least one of them",
        "faltan low y high, se espera al menos uno",
        "faltam low e high, esperado pelo menos um");

    public static readonly Text Rising = new(
        "points[{0}]: {1} cm, {2} L does not rise above the point before, expected are levels and volumes that rise",
        "points[{0}]: {1} cm, {2} L no supera el punto anterior, se esperan niveles y volúmenes crecientes",
        "points[{0}]: {1} cm, {2} L não supera o ponto anterior, esperados níveis e volumes crescentes");

    public static readonly Text TwoPoints = new("points: expected are at least 2 points", "points: se esperan al menos 2 puntos", "points: esperados pelo menos 2 pontos");

    public static readonly Text MoreThan = new(
        "{0}: {1} {2} is more than {3} holds, expected is at most {4} {2}",
        "{0}: {1} {2} es más de lo que cabe en {3}, se espera como máximo {4} {2}",
        "{0}: {1} {2} é mais do que cabe em {3}, esperado no máximo {4} {2}");

    public static readonly Text RegisterTooLarge = new(
        "{0}: {1} was found, expected is less than {2}, where the register of {3} rolls over",
        "{0}: se encontró {1}, se espera menos de {2}, donde el registro de {3} vuelve a cero",
        "{0}: encontrado {1}, esperado menos de {2}, onde o registro de {3} volta a zero");

    public static readonly Text Monday = new(
        "weekOneFrom: {0} is no Monday, expected is a Monday",
        "weekOneFrom: {0} no es lunes, se espera un lunes",
        "weekOneFrom: {0} não é segunda-feira, esperada uma segunda-feira");

    public static readonly Text Week = new(
        "{0}: week {1} was found, expected is 1 to {2}",
        "{0}: se encontró la semana {1}, se espera de 1 a {2}",
        "{0}: encontrada a semana {1}, esperado de 1 a {2}");

    public static readonly Text OutputNeeded = new(
        "output is missing, needed where drum {0} has {1} pumps; expected is the code of an output",
        "falta output, necesario porque el bidón {0} tiene {1} bombas; se espera el código de una salida",
        "falta output, necessário porque a bombona {0} tem {1} bombas; esperado o código de uma saída");

    public static readonly Text ProbeNeeded = new(
        "probe is missing, needed where the system has {0} probes for {1}; expected is the code of a probe",
        "falta probe, necesario porque el sistema tiene {0} sondas de {1}; se espera el código de una sonda",
        "falta probe, necessário porque o sistema tem {0} sondas de {1}; esperado o código de uma sonda");

    public static readonly Text ProbeOf = new(
        "of: {0} was found, expected is {1}, what probe {2} measures",
        "of: se encontró {0}, se espera {1}, lo que mide la sonda {2}",
        "of: encontrado {0}, esperado {1}, o que a sonda {2} mede");

    public static readonly Text BandIsShorter = new(
        "an interval of {0} days after a result must be shorter than the rule's own",
        "un intervalo de {0} días tras un resultado debe ser más corto que el de la propia norma",
        "um intervalo de {0} dias após um resultado deve ser mais curto que o da própria regra");

    public static readonly Text RuleNeeds = new(
        "nothing is asked for, expected is one of test, task, onEvent",
        "no se pide nada, se espera uno de test, task, onEvent",
        "nada é pedido, esperado um de test, task, onEvent");

    public static readonly Text NeverWith = new(
        "neverWith: {0} is not known, expected is the code or kind of a product, or biocide:oxidising",
        "neverWith: {0} no se conoce, se espera el código o tipo de un producto, o biocide:oxidising",
        "neverWith: {0} não é conhecido, esperado o código ou tipo de um produto, ou biocide:oxidising");

    public static readonly Text AmendmentNeeds = new(
        "{0} is missing, needed for version {1} of a visit",
        "falta {0}, necesario para la versión {1} de una visita",
        "falta {0}, necessário para a versão {1} de uma visita");

    public static readonly Text AmendsLater = new(
        "amends: {0} was found, expected is a version before {1}",
        "amends: se encontró {0}, se espera una versión anterior a {1}",
        "amends: encontrado {0}, esperada uma versão anterior a {1}");

    public static readonly Text VersionNeeded = new(
        "version: {0} was found beside amends, expected is 2 or more",
        "version: se encontró {0} junto a amends, se espera 2 o más",
        "version: encontrado {0} junto a amends, esperado 2 ou mais");

    public static readonly Text StoppedNeeds = new(
        "reason is missing, needed for a visit of kind stopped",
        "falta reason, necesario para una visita de tipo stopped",
        "falta reason, necessário para uma visita do tipo stopped");

    public static readonly Text VisitTwice = new(
        "id: visit {0} version {1} stands twice, expected is once",
        "id: la visita {0} versión {1} está dos veces, se espera una vez",
        "id: a visita {0} versão {1} aparece duas vezes, esperado uma vez");

    public static readonly Text NeedsDrum = new(
        "unit: {0} needs {1} of drum {2}, expected is a unit that its set-up allows",
        "unit: {0} necesita {1} del bidón {2}, se espera una unidad que su configuración permita",
        "unit: {0} precisa de {1} da bombona {2}, esperada uma unidade que sua configuração permita");

    public static readonly Text ACustomer = new("a customer", "un cliente", "um cliente");
    public static readonly Text APerson = new("a person", "una persona", "uma pessoa");
    public static readonly Text AProduct = new("a product", "un producto", "um produto");
    public static readonly Text AnInstrument = new("an instrument", "un instrumento", "um instrumento");
    public static readonly Text ASite = new("a site", "una instalación", "uma instalação");
    public static readonly Text ASystem = new("a system of this site", "un sistema de esta instalación", "um sistema desta instalação");
    public static readonly Text ARule = new("a rule", "una norma", "uma norma");
    public static readonly Text ATest = new("a test", "un ensayo", "um ensaio");
    public static readonly Text APoint = new(
        "a sample point: make-up, tower, bleed, softened, raw or one of the system's own",
        "un punto de muestreo: make-up, tower, bleed, softened, raw o uno propio del sistema",
        "um ponto de amostragem: make-up, tower, bleed, softened, raw ou um do próprio sistema");
    public static readonly Text ADrum = new("a drum of this system", "un bidón de este sistema", "uma bombona deste sistema");
    public static readonly Text AnOutput = new("an output of this system", "una salida de este sistema", "uma saída deste sistema");
    public static readonly Text AMeter = new("a meter of this system", "un contador de este sistema", "um hidrômetro deste sistema");
    public static readonly Text APump = new("a pump of this system", "una bomba de este sistema", "uma bomba deste sistema");
    public static readonly Text AProbe = new("a probe of this system", "una sonda de este sistema", "uma sonda deste sistema");
    public static readonly Text AnEvent = new("an event, as started", "un evento, como started", "um evento, como started");
    public static readonly Text ThisFeed = new("this feed", "esta dosificación", "esta dosagem");
}
