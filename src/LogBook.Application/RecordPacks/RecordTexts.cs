using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>Words of the record pack.</summary>
public static class RecordTexts
{
    public static readonly Text Title = new("Record pack", "Paquete de registros", "Pacote de registros");
    public static readonly Text PageOf = new("Page {0} of {1}", "Página {0} de {1}", "Página {0} de {1}");
    public static readonly Text Index = new("Index", "Índice", "Índice");
    public static readonly Text Entries = new("Entries", "Entradas", "Entradas");
    public static readonly Text Part = new("Part", "Parte", "Parte");
    public static readonly Text Period = new("Period", "Periodo", "Período");
    public static readonly Text FromTo = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    public static readonly Text Firm = new("Service firm", "Empresa de servicio", "Empresa de serviço");
    public static readonly Text Address = new("Address", "Dirección", "Endereço");
    public static readonly Text MadeAt = new("Made on", "Hecho el", "Feito em");
    public static readonly Text MadeBy = new("Made by", "Hecho por", "Feito por");
    public static readonly Text JudgedOn = new("Dates judged up to", "Fechas juzgadas hasta", "Datas julgadas até");
    public static readonly Text Keep = new("Keep at least until", "Conservar al menos hasta", "Guardar pelo menos até");
    public static readonly Text KeepMore = new(
        "{0}: five years from the last entry. A local rule or a contract may ask for more. LogBook deletes no record by itself.",
        "{0}: cinco años desde la última entrada. Una norma local o un contrato puede pedir más. LogBook no borra ningún registro por sí mismo.",
        "{0}: cinco anos desde a última entrada. Uma norma local ou um contrato pode pedir mais. O LogBook não apaga nenhum registro por si mesmo.");
    public static readonly Text Hold = new("Legal hold", "Retención legal", "Retenção legal");
    public static readonly Text HoldSince = new("since {0}, by {1}: {2}", "desde {0}, por {1}: {2}", "desde {0}, por {1}: {2}");
    public static readonly Text KeptFor = new("records kept {0} years", "registros guardados {0} años", "registros guardados por {0} anos");
    public static readonly Text HoldKeeps = new("until the legal hold is lifted", "hasta que se levante la retención legal", "até que a retenção legal seja levantada");

    public static readonly Text WhatItIs = new(
        "What this is: the records as they stand in LogBook on the day it was made, with the dates that rules asked for. For each rule it says \"met\", \"missed\" or \"unknown\" for that rule in that version, and nothing else. It is no certificate, no opinion about the plant and no legal advice. Whether a rule applies, and what it says today, is for the authority and for the person responsible for the plant.",
        "Qué es esto: los registros tal como constan en LogBook el día en que se hizo, con las fechas que pedían las normas. De cada norma dice «cumplida», «incumplida» o «desconocida» para esa norma en esa versión, y nada más. No es un certificado, ni una opinión sobre la instalación, ni asesoramiento legal. Si una norma se aplica, y qué dice hoy, corresponde a la autoridad y a la persona responsable de la instalación.",
        "O que é isto: os registros tal como constam no LogBook no dia em que foi feito, com as datas que as normas pediam. De cada norma diz «cumprida», «não cumprida» ou «desconhecida» para essa norma nessa versão, e nada mais. Não é certificado, nem opinião sobre a instalação, nem aconselhamento jurídico. Se uma norma se aplica, e o que diz hoje, cabe à autoridade e à pessoa responsável pela instalação.");
    public static readonly Text NotInIt = new(
        "Not in it: what LogBook suspects of instruments, lots or records; passwords and passcodes; pictures that have not come in or are withheld (each is listed under Photos with the reason).",
        "No contiene: lo que LogBook sospecha de instrumentos, lotes o registros; contraseñas y códigos; imágenes que no han llegado o se retienen (cada una figura en Fotos con el motivo).",
        "Não contém: o que o LogBook suspeita de instrumentos, lotes ou registros; senhas e códigos; imagens que não chegaram ou são retidas (cada uma está em Fotos com o motivo).");
    public static readonly Text PicturesIn = new("{0} in the folder \"photos\", {1} not in the pack", "{0} en la carpeta «photos», {1} no están en el paquete", "{0} na pasta «photos», {1} não estão no pacote");

    public static readonly Text Plan = new("Plan", "Plan", "Plano");
    public static readonly Text PlanIntro = new("Programmes in force in the period, as set up.", "Programas en vigor en el periodo, según la configuración.", "Programas em vigor no período, conforme a configuração.");
    public static readonly Text Visits = new("Visits", "Visitas", "Visitas");
    public static readonly Text Results = new("Results", "Resultados", "Resultados");
    public static readonly Text ResultsIntro = new(
        "As entered, against the range of the programme in force on the day of the visit. A result in or out of range says nothing about its uncertainty.",
        "Tal como se introdujeron, frente al rango del programa en vigor el día de la visita. Un resultado dentro o fuera de rango no dice nada sobre su incertidumbre.",
        "Como informados, contra a faixa do programa em vigor no dia da visita. Um resultado dentro ou fora da faixa não diz nada sobre sua incerteza.");
    public static readonly Text Counters = new("Counters", "Contadores", "Contadores");
    public static readonly Text Record = new("Everything else recorded", "Todo lo demás registrado", "Tudo o mais registrado");
    public static readonly Text Actions = new("Actions", "Acciones", "Ações");
    public static readonly Text ActionsIntro = new(
        "What was seen, asked for and done. The last state that a visit of the records tells.",
        "Lo observado, pedido y hecho. El último estado que cuenta una visita de los registros.",
        "O que foi visto, pedido e feito. O último estado que uma visita dos registros conta.");
    public static readonly Text Certificates = new("Certificates", "Certificados", "Certificados");
    public static readonly Text CertificatesIntro = new("Of the people who made visits in the period.", "De las personas que hicieron visitas en el periodo.", "Das pessoas que fizeram visitas no período.");
    public static readonly Text Instruments = new("Instruments and lots", "Instrumentos y lotes", "Instrumentos e lotes");
    public static readonly Text Deliveries = new("Deliveries", "Entregas", "Entregas");
    public static readonly Text Clocks = new("Clocks", "Plazos", "Prazos");
    public static readonly Text ClocksIntro = new(
        "What each rule asked for, and how often that was met in the period. Judged by the version in force on each day, from what is recorded today.",
        "Lo que pedía cada norma y cuántas veces se cumplió en el periodo. Juzgado por la versión en vigor cada día, según lo registrado hoy.",
        "O que cada norma pedia e quantas vezes foi cumprido no período. Julgado pela versão em vigor em cada dia, pelo que está registrado hoje.");
    public static readonly Text Gaps = new("Gaps", "Huecos", "Lacunas");
    public static readonly Text GapsIntro = new("Each time that something was not done in time, and each time about which the records do not tell.", "Cada vez que algo no se hizo a tiempo, y cada tiempo del que los registros no dicen nada.", "Cada vez que algo não foi feito a tempo, e cada tempo sobre o qual os registros não dizem nada.");
    public static readonly Text Notices = new("Authorities told", "Avisos a la autoridad", "Avisos à autoridade");
    public static readonly Text NoticesIntro = new(
        "Results of which an authority was told, as written down. Results that had to be told and were not stand under Gaps.",
        "Resultados de los que se avisó a una autoridad, según lo anotado. Los que debían avisarse y no se avisaron están en Huecos.",
        "Resultados de que uma autoridade foi avisada, conforme anotado. Os que deviam ser avisados e não foram estão em Lacunas.");
    public static readonly Text ToldOn = new("Told on", "Avisado el", "Avisado em");
    public static readonly Text To = new("To", "A quién", "A quem");
    public static readonly Text Spells = new("Clocks in full", "Plazos al completo", "Prazos por inteiro");
    public static readonly Text Amendments = new("Amendments", "Correcciones", "Correções");
    public static readonly Text AmendmentsIntro = new("Visits that were amended after they came in, and visits declared void. Every version is kept.", "Visitas corregidas después de llegar y visitas anuladas. Todas las versiones se conservan.", "Visitas corrigidas depois de chegarem e visitas anuladas. Todas as versões são mantidas.");
    public static readonly Text Photos = new("Photos", "Fotos", "Fotos");
    public static readonly Text PhotosIntro = new(
        "Every photo that a visit names. LogBook keeps each picture anew, without place and other tags: its file has another SHA-256 than the picture that was sent, which the visit names. It goes in only with the hash that it had on the day it was kept.",
        "Todas las fotos que nombra una visita. LogBook guarda cada imagen de nuevo, sin lugar ni otras etiquetas: su archivo tiene otra SHA-256 que la imagen enviada, que es la que nombra la visita. Solo entra con la suma que tenía el día en que se guardó.",
        "Todas as fotos que uma visita cita. O LogBook guarda cada imagem de novo, sem lugar nem outras marcas: seu arquivo tem outra SHA-256 que a da imagem enviada, que é a que a visita cita. Só entra com a soma que tinha no dia em que foi guardada.");
    public static readonly Text EarlierVersion = new("{0}; only an earlier version of the visit names it", "{0}; solo la nombra una versión anterior de la visita", "{0}; só uma versão anterior da visita a cita");

    public static readonly Text Day = new("Day", "Día", "Dia");
    public static readonly Text Time = new("Time", "Hora", "Hora");
    public static readonly Text System = new("System", "Sistema", "Sistema");
    public static readonly Text People = new("People", "Personas", "Pessoas");
    public static readonly Text Kind = new("Kind", "Tipo", "Tipo");
    public static readonly Text Version = new("Version", "Versión", "Versão");
    public static readonly Text Received = new("Received", "Recibida", "Recebida");
    public static readonly Text Reviewed = new("Reviewed", "Revisada", "Revisada");
    public static readonly Text ReviewedBy = new("{0}, {1}", "{0}, {1}", "{0}, {1}");
    public static readonly Text Signatures = new("Signatures", "Firmas", "Assinaturas");
    public static readonly Text Note = new("Note", "Nota", "Nota");
    public static readonly Text Void = new("void since {0}, {1}: {2}", "anulada desde {0}, {1}: {2}", "anulada desde {0}, {1}: {2}");
    public static readonly Text InUse = new("In use", "En uso", "Em uso");
    public static readonly Text Yes = new("yes", "sí", "sim");
    public static readonly Text No = new("no", "no", "não");
    public static readonly Text Point = new("Sample point", "Punto de muestra", "Ponto de amostra");
    public static readonly Text Source = new("Source", "Origen", "Origem");
    public static readonly Text Qualifier = new("Qualifier", "Calificador", "Qualificador");
    public static readonly Text Number = new("Number", "Número", "Número");
    public static readonly Text Unit = new("Unit", "Unidad", "Unidade");
    public static readonly Text Lowest = new("Low end", "Extremo inferior", "Limite inferior");
    public static readonly Text Highest = new("High end", "Extremo superior", "Limite superior");
    public static readonly Text RangeUnit = new("Unit of the range", "Unidad del rango", "Unidade da faixa");
    public static readonly Text Visit = new("Visit", "Visita", "Visita");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text Value = new("Value", "Valor", "Valor");
    public static readonly Text Owner = new("Owner", "Responsable", "Responsável");
    public static readonly Text Due = new("Due", "Plazo", "Prazo");
    public static readonly Text State = new("State", "Estado", "Estado");
    public static readonly Text StateOf = new("As of", "A fecha de", "Em");
    public static readonly Text Observation = new("observation", "observación", "observação");
    public static readonly Text Action = new("action", "acción", "ação");
    public static readonly Text Recommendation = new("recommendation", "recomendación", "recomendação");
    public static readonly Text Open = new("open", "abierta", "aberta");
    public static readonly Text Done = new("done", "hecha", "feita");
    public static readonly Text Dropped = new("dropped", "descartada", "descartada");
    public static readonly Text Asked = new("asked", "pedida", "pedida");
    public static readonly Text Accepted = new("accepted", "aceptada", "aceita");
    public static readonly Text Declined = new("declined", "rechazada", "recusada");
    public static readonly Text Name = new("Name", "Nombre", "Nome");
    public static readonly Text Certificate = new("Certificate", "Certificado", "Certificado");
    public static readonly Text CertificateNumber = new("Number", "Número", "Número");
    public static readonly Text Expires = new("Expires", "Caduca", "Vence");
    public static readonly Text VisitsMade = new("Visits made", "Visitas hechas", "Visitas feitas");
    public static readonly Text AfterExpiry = new("Visits after expiry", "Visitas tras la caducidad", "Visitas após o vencimento");
    public static readonly Text NoCertificate = new("none on file", "ninguno registrado", "nenhum registrado");
    public static readonly Text Serial = new("Serial number", "Número de serie", "Número de série");
    public static readonly Text Uses = new("Readings", "Lecturas", "Leituras");
    public static readonly Text CheckedOn = new("Checked on", "Comprobado el", "Verificado em");
    public static readonly Text Standard = new("Standard", "Patrón", "Padrão");
    public static readonly Text Read = new("Read", "Leído", "Lido");
    public static readonly Text NoCheck = new("no check on file", "ninguna comprobación registrada", "nenhuma verificação registrada");
    public static readonly Text Lot = new("Lot", "Lote", "Lote");
    public static readonly Text Drum = new("Drum", "Bidón", "Bombona");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Registration = new("Registration", "Registro", "Registro");
    public static readonly Text Amount = new("Amount", "Cantidad", "Quantidade");
    public static readonly Text How = new("How", "Cómo", "Como");
    public static readonly Text Added = new("delivered into the drum", "entregado en el bidón", "entregue na bombona");
    public static readonly Text Swapped = new("container exchanged", "envase cambiado", "recipiente trocado");
    public static readonly Text Removed = new("taken out", "retirado", "retirado");
    public static readonly Text ByHand = new("added by hand", "añadido a mano", "adicionado à mão");
    public static readonly Text Rule = new("Rule", "Norma", "Norma");
    public static readonly Text RuleVersion = new("In force from", "En vigor desde", "Em vigor desde");
    public static readonly Text Jurisdiction = new("Where", "Dónde", "Onde");
    public static readonly Text Asks = new("Asks for", "Pide", "Pede");
    public static readonly Text Met = new("Met", "Cumplida", "Cumprida");
    public static readonly Text Missed = new("Missed", "Incumplida", "Não cumprida");
    public static readonly Text Running = new("Not due yet", "Aún no vence", "Ainda não vence");
    public static readonly Text Unknown = new("Unknown", "Desconocida", "Desconhecida");
    public static readonly Text Standing = new("Standing", "Situación", "Situação");
    public static readonly Text Since = new("Since", "Desde", "Desde");
    public static readonly Text LastInTime = new("Last day in time", "Último día en plazo", "Último dia no prazo");
    public static readonly Text DoneOn = new("Done on", "Hecho el", "Feito em");
    public static readonly Text DaysOver = new("Days over", "Días de retraso", "Dias de atraso");
    public static readonly Text NotDone = new("not on record", "no consta", "não consta");
    public static readonly Text NoRecords = new("no records before the first visit", "sin registros antes de la primera visita", "sem registros antes da primeira visita");
    public static readonly Text NoClock = new("names no interval that LogBook can follow", "no indica un intervalo que LogBook pueda seguir", "não indica intervalo que o LogBook possa acompanhar");
    public static readonly Text Every = new("{0}, every {1} days", "{0}, cada {1} días", "{0}, a cada {1} dias");
    public static readonly Text After = new("{0} within {1} days after: {2}", "{0} en {1} días tras: {2}", "{0} em {1} dias após: {2}");
    public static readonly Text Retest = new("{0}: retest {1} to {2} days after a result in a band", "{0}: repetir entre {1} y {2} días tras un resultado en una banda", "{0}: repetir entre {1} e {2} dias após um resultado em uma faixa");
    public static readonly Text OperatingDays = new("operating days only", "solo días de servicio", "só dias de operação");
    public static readonly Text Grace = new("{0} days of grace", "{0} días de gracia", "{0} dias de tolerância");
    public static readonly Text Sample = new("a sample", "una muestra", "uma amostra");
    public static readonly Text AgreedVisits = new("Agreed visits", "Visitas acordadas", "Visitas acordadas");
    public static readonly Text NoRules = new("No rule is set for this site.", "No hay ninguna norma para este sitio.", "Nenhuma norma está definida para este local.");
    public static readonly Text By = new("By", "Por", "Por");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text Before = new("Before", "Antes", "Antes");
    public static readonly Text Now = new("Now", "Ahora", "Agora");
    public static readonly Text VersionOf = new("version {0}", "versión {0}", "versão {0}");
    public static readonly Text Voided = new("declared void", "anulada", "anulada");
    public static readonly Text Hash = new("SHA-256", "SHA-256", "SHA-256");
    public static readonly Text NamedHash = new("SHA-256 in the visit", "SHA-256 en la visita", "SHA-256 na visita");
    public static readonly Text File = new("File", "Archivo", "Arquivo");
    public static readonly Text FileHash = new("SHA-256 of the file", "SHA-256 del archivo", "SHA-256 do arquivo");
    public static readonly Text Picture = new("Picture", "Imagen", "Imagem");
    public static readonly Text Photo = new("Photo", "Foto", "Foto");
    public static readonly Text Nothing = new("Nothing on record in this period.", "Nada registrado en este periodo.", "Nada registrado neste período.");
    public static readonly Text TakenAt = new("Taken at", "Tomada", "Coletada");
    public static readonly Text ResultAt = new("Result at", "Resultado", "Resultado");
    public static readonly Text ReceivedAt = new("Received at", "Recibido", "Recebido");
    public static readonly Text Lab = new("Laboratory", "Laboratorio", "Laboratório");
    public static readonly Text LabRef = new("Reference", "Referencia", "Referência");
    public static readonly Text Method = new("Method", "Método", "Método");
    public static readonly Text Basis = new("Basis", "Base", "Base");
    public static readonly Text Instrument = new("Instrument", "Instrumento", "Instrumento");
    public static readonly Text Cut = new("… (cut here; in full in the system)", "… (cortado aquí; completo en el sistema)", "… (cortado aqui; completo no sistema)");

    /// <summary>A standing in words; never more than a statement about one rule.</summary>
    public static Text NameOf(RuleStanding standing) => standing switch
    {
        RuleStanding.Met => Met,
        RuleStanding.Missed => Missed,
        RuleStanding.Running => Running,
        _ => Unknown,
    };

    /// <summary>Whether a picture is in the pack, and why not.</summary>
    public static Text NameOf(PackPhotoState state) => state switch
    {
        PackPhotoState.Included => new("in the pack", "en el paquete", "no pacote"),
        PackPhotoState.Awaited => new("missing: it has not come in", "falta: no ha llegado", "falta: não chegou"),
        PackPhotoState.NotAllowed => new("missing: the site allows no photos", "falta: el sitio no permite fotos", "falta: o local não permite fotos"),
        PackPhotoState.OfVoidVisit => new("withheld: the visit was declared void", "retenida: la visita fue anulada", "retida: a visita foi anulada"),
        PackPhotoState.NotStanding => new("withheld: only a text of the visit that never came to stand names it", "retenida: solo la nombra un texto de la visita que no llegó a valer", "retida: só a cita um texto da visita que não chegou a valer"),
        PackPhotoState.Lost => new("missing: it came in, and its file is not there any more", "falta: llegó y su archivo ya no está", "falta: chegou e seu arquivo não está mais lá"),
        _ => new("missing: its file was changed after it was kept", "falta: su archivo cambió después de guardarse", "falta: seu arquivo mudou depois de guardado"),
    };
}
