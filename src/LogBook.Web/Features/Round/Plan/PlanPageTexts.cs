using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Round.Plan;

/// <summary>Words of the plan and the pack list.</summary>
public static class PlanPageTexts
{
    public static readonly Text Title = new("Plan the round", "Planificar la ronda", "Planejar a ronda");
    public static readonly Text OneDay = new("One day", "Un día", "Um dia");
    public static readonly Text Week = new("Seven days", "Siete días", "Sete dias");
    public static readonly Text Earlier = new("Earlier", "Antes", "Antes");
    public static readonly Text Later = new("Later", "Después", "Depois");
    public static readonly Text Today = new("Today", "Hoy", "Hoje");
    public static readonly Text Span = new("Days shown", "Días mostrados", "Dias mostrados");
    public static readonly Text NothingPlanned = new("nobody is planned", "no hay nadie planificado", "ninguém está planejado");
    public static readonly Text NothingPlannedOwn = new("nothing is planned for you", "nada planificado para usted", "nada planejado para você");
    public static readonly Text Stops = new("{0} stops", "{0} paradas", "{0} paradas");
    public static readonly Text OneStop = new("1 stop", "1 parada", "1 parada");
    public static readonly Text OnSite = new("{0} min on site of {1} min a day", "{0} min en sitio de {1} min al día", "{0} min no local de {1} min por dia");
    public static readonly Text TooMuch = new("more than a day holds", "más de lo que cabe en un día", "mais do que cabe em um dia");
    public static readonly Text WayNotIn = new("The way between sites is not in these minutes.", "El camino entre sitios no está en estos minutos.", "O caminho entre locais não está nestes minutos.");
    public static readonly Text Median = new("{0} min, median of {1} visits here; {2} by its work (rule of thumb)", "{0} min, mediana de {1} visitas aquí; {2} por su trabajo (regla aproximada)", "{0} min, mediana de {1} visitas aqui; {2} pelo seu trabalho (regra aproximada)");
    public static readonly Text Thumb = new("{0} min, rule of thumb", "{0} min, regla aproximada", "{0} min, regra aproximada");
    public static readonly Text ThumbSays = new(
        "Rule of thumb (common practice, no source): {0} min for the site, {1} for each system, {2} for each reading, {3} for each drum. From {4} routine visits without doubts on, the site's own median stands instead.",
        "Regla aproximada (práctica común, sin fuente): {0} min por el sitio, {1} por sistema, {2} por lectura, {3} por bidón. Desde {4} visitas de rutina sin dudas vale la mediana del propio sitio.",
        "Regra aproximada (prática comum, sem fonte): {0} min pelo local, {1} por sistema, {2} por leitura, {3} por bombona. A partir de {4} visitas de rotina sem dúvidas vale a mediana do próprio local.");
    public static readonly Text Planned = new("Planned", "Planificada", "Planejada");
    public static readonly Text PlannedFor = new("Planned today: {0}", "Planificada hoy: {0}", "Planejada hoje: {0}");
    public static readonly Text NotMade = new("Planned, no visit on record", "Planificada, sin visita registrada", "Planejada, sem visita registrada");
    public static readonly Text NoLongerServed = new("no longer served", "ya no se atiende", "não é mais atendido");
    public static readonly Text MoveEarlier = new("Make {0} earlier", "Adelantar {0}", "Adiantar {0}");
    public static readonly Text MoveLater = new("Make {0} later", "Atrasar {0}", "Atrasar {0}");
    public static readonly Text TakeOff = new("Take off", "Quitar", "Tirar");
    public static readonly Text HandOver = new("Hand this day to a colleague", "Pasar este día a un compañero", "Passar este dia a um colega");
    public static readonly Text HandedOver = new("{0} stops of {1} are now planned for {2}.", "{0} paradas del {1} están ahora planificadas para {2}.", "{0} paradas de {1} agora estão planejadas para {2}.");
    public static readonly Text HandedAway = new("Handed over by you: {0}, now with {1}.", "Pasadas por usted: {0}, ahora con {1}.", "Passadas por você: {0}, agora com {1}.");
    public static readonly Text TakeBack = new("Take this day back", "Recuperar este día", "Retomar este dia");
    public static readonly Text HandBack = new("Give it back to {0}", "Devolverlo a {0}", "Devolver a {0}");
    public static readonly Text Spent = new("{0} min spent", "{0} min empleados", "{0} min gastos");
    public static readonly Text SpentOfNeed = new("visits made: {0} min spent, {1} min needed", "visitas hechas: {0} min empleados, {1} min necesarios", "visitas feitas: {0} min gastos, {1} min necessários");
    public static readonly Text Moved = new("{0} is now stop {1} of {2}.", "{0} es ahora la parada {1} de {2}.", "{0} agora é a parada {1} de {2}.");
    public static readonly Text TakenOff = new("{0} is off the plan of {1}.", "{0} ya no está en el plan del {1}.", "{0} saiu do plano de {1}.");
    public static readonly Text Done = new("{0} is planned for {1} on {2}.", "{0} está planificado para {1} el {2}.", "{0} está planejado para {1} em {2}.");
    public static readonly Text DoneMany = new("{0} sites are planned on {1}.", "{0} sitios están planificados el {1}.", "{0} locais estão planejados em {1}.");
    public static readonly Text Meanwhile = new("The plan of this day was changed meanwhile. It is shown as it stands now; please try again.", "El plan de este día cambió entretanto. Se muestra como está ahora; inténtelo de nuevo.", "O plano deste dia mudou nesse meio-tempo. É mostrado como está agora; tente de novo.");
    public static readonly Text NotAllowed = new("Your account may not change this.", "Su cuenta no puede cambiar esto.", "Sua conta não pode alterar isto.");
    public static readonly Text Open = new("Not planned yet", "Sin planificar", "Ainda não planejados");
    public static readonly Text OpenNone = new("All sites with a clock stand in the plan.", "Todos los sitios con plazo están en el plan.", "Todos os locais com prazo estão no plano.");
    public static readonly Text OpenLater = new("{0} more, due later or without a clock", "{0} más, vencen después o sin plazo", "mais {0}, vencem depois ou sem prazo");
    public static readonly Text For = new("For", "Para", "Para");
    public static readonly Text On = new("On", "El", "Em");
    public static readonly Text OwnTechnician = new("the site's own technician", "el técnico del propio sitio", "o técnico do próprio local");
    public static readonly Text NobodyGoes = new("The technician of {0} is away on that day or has left: choose who goes.", "El técnico de {0} está ausente ese día o ya no está: elija quién va.", "O técnico de {0} está ausente nesse dia ou já saiu: escolha quem vai.");
    public static readonly Text PlanIt = new("Plan", "Planificar", "Planejar");
    public static readonly Text PlanAll = new("Plan all {0} that are due by {1}", "Planificar los {0} que vencen hasta el {1}", "Planejar os {0} que vencem até {1}");
    public static readonly Text WhoGoes = new("{0} has no technician of its own: choose who goes.", "{0} no tiene técnico propio: elija quién va.", "{0} não tem técnico próprio: escolha quem vai.");
    public static readonly Text Pack = new("Pack list", "Lista para preparar", "Lista para preparar");
    public static readonly Text PackEmpty = new("Nothing to pack: no stop is planned, or nothing is known of the sites yet", "Nada que preparar: no hay paradas planificadas o aún no se sabe nada de los sitios", "Nada a preparar: não há paradas planejadas ou ainda não se sabe nada dos locais");
    public static readonly Text PackOf = new("{0}, {1}", "{0}, {1}", "{0}, {1}");
    public static readonly Text Reagents = new("Reagents", "Reactivos", "Reagentes");
    public static readonly Text Times = new("Samples", "Muestras", "Amostras");
    public static readonly Text Test = new("Test", "Ensayo", "Ensaio");
    public static readonly Text Lots = new("Lots", "Lotes", "Lotes");
    public static readonly Text NoLot = new("no lot in date on file", "ningún lote vigente registrado", "nenhum lote válido registrado");
    public static readonly Text LotInUse = new("in use", "en uso", "em uso");
    public static readonly Text LotExpired = new("expired on {0}", "caducó el {0}", "venceu em {0}");
    public static readonly Text LotSoon = new("expires on {0}", "caduca el {0}", "vence em {0}");
    public static readonly Text LotGood = new("until {0}", "hasta el {0}", "até {0}");
    public static readonly Text LotUnknown = new("no last day on file", "sin fecha registrada", "sem data registrada");
    public static readonly Text Bottles = new("Bottles and dip slides", "Frascos y láminas de cultivo", "Frascos e lâminas de cultura");
    public static readonly Text Due = new("Due by", "Vence", "Vence");
    public static readonly Text EachVisit = new("at most visits", "en la mayoría de visitas", "na maioria das visitas");
    public static readonly Text Where = new("Where", "Dónde", "Onde");
    public static readonly Text Products = new("Products", "Productos", "Produtos");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Take = new("Take about", "Llevar unos", "Levar cerca de");
    public static readonly Text There = new("There on the day, about", "Habrá ese día, unos", "Haverá no dia, cerca de");
    public static readonly Text OfCapacity = new("{0} of {1}", "{0} de {1}", "{0} de {1}");
    public static readonly Text NoProduct = new("No drum of these stops needs product by then.", "Ningún bidón de estas paradas necesita producto hasta entonces.", "Nenhuma bombona destas paradas precisa de produto até lá.");
    public static readonly Text Enough = new("{0} drums have enough", "{0} bidones tienen bastante", "{0} bombonas têm o bastante");
    public static readonly Text Lasts = new("To last until", "Para durar hasta", "Para durar até");
    public static readonly Text NoneNeeded = new("none", "nada", "nada");
    public static readonly Text ProductsSay = new(
        "Litres from use and stock of the run-out, so that the product lasts until the visit after the next one; the expanded uncertainty (k = 2) is added. Calculated from entered values; a competent person approves. Not more than the drum, the label and the vehicle allow.",
        "Litros según consumo y existencias del agotamiento, para que el producto dure hasta la visita siguiente a la próxima; la incertidumbre expandida (k = 2) está sumada. Calculado con valores introducidos; lo aprueba una persona competente. No más de lo que permiten el bidón, la etiqueta y el vehículo.",
        "Litros pelo consumo e estoque do esgotamento, para que o produto dure até a visita depois da próxima; a incerteza expandida (k = 2) está somada. Calculado com valores informados; uma pessoa competente aprova. Não mais do que a bombona, o rótulo e o veículo permitem.");
    public static readonly Text NeverTogether = new("{0} and {1} must never meet: carry them apart, as their labels and safety data sheets say.", "{0} y {1} nunca deben juntarse: llévelos separados, como indican sus etiquetas y fichas de seguridad.", "{0} e {1} nunca devem se encontrar: transporte-os separados, como dizem os rótulos e as fichas de segurança.");
    public static readonly Text Instruments = new("Instruments", "Instrumentos", "Instrumentos");
    public static readonly Text Instrument = new("Instrument", "Instrumento", "Instrumento");
    public static readonly Text LastCheck = new("Last check in a standard", "Última comprobación con patrón", "Última verificação com padrão");
    public static readonly Text NeverChecked = new("none on record", "ninguna registrada", "nenhuma registrada");
    public static readonly Text CheckDue = new("check it before the round", "compruébelo antes de la ronda", "verifique antes da ronda");
    public static readonly Text CheckGood = new("checked within {0} days", "comprobado en {0} días", "verificado em {0} dias");
    public static readonly Text CheckSays = new("A check counts as due {0} days after the last one ({1}).", "Una comprobación vence {0} días después de la última ({1}).", "Uma verificação vence {0} dias após a última ({1}).");
    public static readonly Text Print = new("Print", "Imprimir", "Imprimir");
}
