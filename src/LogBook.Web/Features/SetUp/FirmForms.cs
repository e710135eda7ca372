using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp;

/// <summary>Forms of what belongs to the firm and its customers; systems and programmes have their own.</summary>
internal static class FirmForms
{
    private static readonly FormOption[] Zones =
    [
        .. TimeZoneInfo.GetSystemTimeZones().Where(zone => zone.HasIanaId).OrderBy(zone => zone.Id, StringComparer.Ordinal).Select(zone => new FormOption(zone.Id, zone.Id.Replace('_', ' '))),
    ];

    public static readonly IReadOnlyList<FormField> Customer =
    [
        Ask.Code,
        Ask.Name,
        Ask.Rows(
            "contacts",
            new("Contacts", "Contactos", "Contatos"),
            new("Contact", "Contacto", "Contato"),
            Ask.Text("name", new("Name or office", "Nombre u oficina", "Nome ou escritório")).Needed(),
            new FormField("email", FormKind.Mail, new("E-mail address", "Correo electrónico", "E-mail")).Needed(),
            Ask.Choice("language", new("Language of what is sent", "Idioma de lo que se envía", "Idioma do que é enviado"), ChoiceTexts.Languages),
            Ask.Flag("getsSummaries", new("Gets visit summaries", "Recibe los resúmenes de visita", "Recebe os resumos da visita"))),
    ];

    public static readonly IReadOnlyList<FormField> Site =
    [
        Ask.Code,
        Ask.Choice("customer", ReadingTexts.Customer, (scope, _) => scope.Firm.Customers.Values.OrderBy(c => c.Code).Select(c => new FormOption(c.Code, $"{c.Code} – {c.Name}"))).Needed() with { IsFixed = true, Hint = new("A site stays with its customer.", "Un sitio se queda con su cliente.", "Um local permanece com o seu cliente.") },
        Ask.Name,
        new FormField("timeZone", FormKind.Lookup, new("Time zone", "Zona horaria", "Fuso horário"))
        {
            IsRequired = true,
            Options = (_, _) => Zones,
            Hint = new("Type a town, as Lisbon, and choose from the list.", "Escriba una ciudad, como Lisbon, y elija de la lista.", "Digite uma cidade, como Lisbon, e escolha da lista."),
        },
        Ask.Number("visitEveryDays", new("Visit every", "Visitar cada", "Visitar a cada"), "d"),
        Ask.Choice("assignedTo", new("On the round of", "En la ronda de", "Na ronda de"), (scope, _) => scope.Firm.People.Values.Where(p => p.Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator).OrderBy(p => p.Name).Select(p => new FormOption(p.Code, $"{p.Code} – {p.Name}"))),
        Ask.Number("summaryWithinHours", new("Summary promised within", "Resumen prometido en", "Resumo prometido em"), "h"),
        Ask.Whole("summaryByMonthDay", new("Summaries of a month promised by this day of the next", "Resúmenes de un mes prometidos para este día del siguiente", "Resumos de um mês prometidos até este dia do seguinte")) with { Hint = new("1 to 28, as 10 for “by the 10th”.", "De 1 a 28, como 10 para «hasta el día 10».", "De 1 a 28, como 10 para “até o dia 10”.") },
        new FormField("photosAllowed", FormKind.YesNo, new("Photos allowed", "Fotos permitidas", "Fotos permitidas")),
        Ask.Choice("units", new("Units people use there", "Unidades que usan allí", "Unidades usadas lá"), ChoiceTexts.Units),
        Ask.LongText("address", new("Address", "Dirección", "Endereço")),
        Ask.LongText("accessNotes", new("Access notes", "Notas de acceso", "Notas de acesso")) with { Hint = new("Gate, key, induction, permits. No passwords.", "Puerta, llave, inducción, permisos. Sin contraseñas.", "Portão, chave, integração, permissões. Sem senhas.") },
    ];

    public static readonly IReadOnlyList<FormField> Person =
    [
        Ask.Code,
        Ask.Text("name", new("Name as signed", "Nombre como firma", "Nome como assina")).Needed(),
        new FormField("email", FormKind.Mail, new("E-mail address", "Correo electrónico", "E-mail")),
        Ask.Choice("role", new("Role", "Función", "Função"), ChoiceTexts.Roles).Needed(),
        Ask.Rows(
            "certificates",
            new("Certificates", "Certificados", "Certificados"),
            new("Certificate", "Certificado", "Certificado"),
            Ask.Name,
            Ask.Text("number", new("Number", "Número", "Número")),
            Ask.Day("expires", new("Expires", "Vence", "Vence"))),
    ];

    public static readonly IReadOnlyList<FormField> Product =
    [
        Ask.Code,
        Ask.Text("name", new("Name on the label", "Nombre en la etiqueta", "Nome no rótulo")).Needed(),
        Ask.Choice("kind", new("What it is for", "Para qué sirve", "Para que serve"), ChoiceTexts.ProductKinds).Needed(),
        Ask.Flag("oxidising", new("Oxidising", "Oxidante", "Oxidante")).When(group => group.Text("kind") == "biocide"),
        Ask.Number("densityKgPerL", new("Density", "Densidad", "Densidade"), "kg/L"),
        Ask.Number("doseMgPerL", new("Usual level in the system, as product", "Nivel habitual en el sistema, como producto", "Nível habitual no sistema, como produto"), "mg/L"),
        Ask.Number("labelMaxMgPerL", new("Label limit for one application", "Límite de etiqueta por aplicación", "Limite do rótulo por aplicação"), "mg/L"),
        Ask.Number("labelMaxWeekMgPerL", new("Label limit for a week", "Límite de etiqueta por semana", "Limite do rótulo por semana"), "mg/L"),
        Ask.Number("labelGapHours", new("Shortest gap between applications", "Intervalo mínimo entre aplicaciones", "Intervalo mínimo entre aplicações"), "h"),
        Ask.Number("labelContactHours", new("Contact time on the label", "Tiempo de contacto en la etiqueta", "Tempo de contato no rótulo"), "h"),
        Ask.Text("registration", new("Registration number", "Número de registro", "Número de registro")),
        Ask.Picks("neverWith", new("Must never meet", "Nunca debe juntarse con", "Nunca deve encontrar"), Others),
        Ask.Group(
            "residual",
            new("Test that shows it", "Ensayo que lo muestra", "Ensaio que o mostra"),
            Ask.Choice("test", new("Test", "Ensayo", "Ensaio"), Tests).Needed(),
            Ask.Number("mgPerLPerMgProduct", new("mg/L found for each mg/L of product", "mg/L hallados por cada mg/L de producto", "mg/L encontrados por mg/L de produto")).Needed()),
    ];

    public static readonly IReadOnlyList<FormField> Instrument =
    [
        Ask.Code,
        Ask.Choice("kind", ReadingTexts.Kind, ChoiceTexts.InstrumentKinds).Needed(),
        Ask.Text("name", new("Name", "Nombre", "Nome")),
        Ask.Text("serial", new("Serial number", "Número de serie", "Número de série")),
        Ask.Rows(
            "checks",
            new("Checks against a standard", "Verificaciones con patrón", "Verificações com padrão"),
            new("Check", "Verificación", "Verificação"),
            new FormField("at", FormKind.Moment, new("When (UTC)", "Cuándo (UTC)", "Quando (UTC)")).Needed(),
            Ask.Number("standard", new("Standard", "Patrón", "Padrão")).Needed(),
            Ask.Number("read", new("Read", "Leído", "Lido")).Needed(),
            Ask.Choice("unit", ReadingTexts.Unit, (scope, _) => Ask.Units(UnitCodes.All, scope.Language)).Needed(),
            Ask.Text("standardLot", new("Lot of the standard", "Lote del patrón", "Lote do padrão"))),
    ];

    public static readonly IReadOnlyList<FormField> Lot =
    [
        Ask.Code,
        Ask.Choice("test", new("Test", "Ensayo", "Ensaio"), Tests).Needed(),
        Ask.Number("step", new("Smallest step of the kit", "Paso mínimo del kit", "Menor passo do kit")),
        Ask.Day("expires", new("Expires", "Vence", "Vence")),
    ];

    public static readonly IReadOnlyList<FormField> Test =
    [
        Ask.Code,
        Ask.Name,
        Ask.Choice("unit", ReadingTexts.Unit, (scope, _) => Ask.Units(UnitCodes.All, scope.Language)).Needed(),
        Ask.Text("basis", new("Expressed as", "Expresado como", "Expresso como")) with { Hint = new("As the bottle says: as CaCO3, as product.", "Como dice el frasco: as CaCO3, as product.", "Como diz o frasco: as CaCO3, as product.") },
        Ask.Number("step", new("Usual smallest step", "Paso mínimo habitual", "Menor passo habitual")),
    ];

    public static readonly IReadOnlyList<FormField> Rule =
    [
        Ask.Code,
        Ask.Day("from", new("In force from", "En vigor desde", "Em vigor desde")).Needed() with { IsFixed = true, Hint = new("A new version of the rule is a new entry with the same code and its own day.", "Una versión nueva de la norma es una entrada nueva con el mismo código y su día.", "Uma nova versão da regra é uma nova entrada com o mesmo código e o seu dia.") },
        Ask.Day("to", new("Last day in force", "Último día en vigor", "Último dia em vigor")),
        Ask.Name,
        Ask.Text("jurisdiction", new("Where it holds", "Dónde rige", "Onde vale")),
        Ask.Text("source", new("Where it was read", "Dónde se leyó", "Onde foi lido")) with { Hint = new("Law, section, day of reading: LogBook shows it with every due date.", "Ley, apartado, día de lectura: LogBook lo muestra con cada vencimiento.", "Lei, item, dia da leitura: o LogBook o mostra com cada vencimento.") },
        Ask.Choice("test", new("Asks for a test", "Pide un ensayo", "Pede um ensaio"), Tests),
        Ask.Text("task", new("Asks for a task", "Pide una tarea", "Pede uma tarefa")),
        Ask.Choice("onEvent", new("Starts with an event", "Empieza con un suceso", "Começa com um evento"), ChoiceTexts.Events),
        Ask.Number("everyDays", new("Every", "Cada", "A cada"), "d"),
        Ask.Number("withinDays", new("Within, after the event", "En el plazo de, tras el suceso", "Dentro de, após o evento"), "d"),
        Ask.Number("graceDays", new("Grace", "Gracia", "Tolerância"), "d"),
        Ask.Flag("operatingDaysOnly", new("Counts only days of operation", "Cuenta solo días de operación", "Conta só dias de operação")),
        new FormField("retestDays", FormKind.Numbers, new("Retest between which days", "Repetir entre qué días", "Repetir entre que dias")) { Hint = new("First and last day, as 3; 7.", "Primer y último día, como 3; 7.", "Primeiro e último dia, como 3; 7.") },
        Ask.Number("keepYears", new("Records kept for, from the last entry", "Registros guardados durante, desde la última entrada", "Registros guardados por, desde a última entrada")) with { Hint = new("In years. Shorter than five counts as five.", "En años. Menos de cinco cuenta como cinco.", "Em anos. Menos de cinco conta como cinco.") },
        Ask.Rows(
            "bands",
            new("Bands", "Bandas", "Faixas"),
            new("Band", "Banda", "Faixa"),
            Ask.Number("from", new("From the result", "Desde el resultado", "A partir do resultado")).Needed(),
            Ask.Choice("unit", ReadingTexts.Unit, (scope, band) => Ask.Units(TestCatalogue.Find(band.Root.Text("test"), scope.Firm)?.Units ?? UnitCodes.All, scope.Language)).Needed(),
            Ask.Choice("severity", ReadingTexts.Severity, ChoiceTexts.Severities).Needed(),
            Ask.Number("notifyWithinHours", new("Tell the authority within, from receipt", "Avisar a la autoridad en, desde la recepción", "Avisar a autoridade em, desde o recebimento"), "h"),
            Ask.Number("everyDays", new("Then every", "Después cada", "Depois a cada"), "d") with { Hint = new("Until a result lies below this band.", "Hasta que un resultado quede por debajo de esta banda.", "Até que um resultado fique abaixo desta faixa.") },
            Ask.LongText("says", new("What the rule says to do", "Qué manda hacer la norma", "O que a regra manda fazer"))),
    ];

    /// <summary>Tests of the catalogue and the firm's own.</summary>
    public static IEnumerable<FormOption> Tests(FormScope scope, FormGroup group) =>
        TestCatalogue.All.Concat(scope.Firm.Tests.Values.Select(TestCatalogue.Of)).Select(test => new FormOption(test.Code, test.Name.In(scope.Language))).OrderBy(option => option.Words, StringComparer.CurrentCultureIgnoreCase);

    private static IEnumerable<FormOption> Others(FormScope scope, FormGroup group) =>
        ChoiceTexts.NeverWith.Select(pair => new FormOption(pair.Key, pair.Value.In(scope.Language)))
            .Concat(scope.Firm.Products.Values.Where(product => !product.Code.Equals(group.Text("code"), StringComparison.OrdinalIgnoreCase)).OrderBy(product => product.Code).Select(product => new FormOption(product.Code, $"{product.Code} – {product.Name}")));
}
