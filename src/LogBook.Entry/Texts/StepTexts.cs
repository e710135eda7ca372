using LogBook.Domain.Languages;

namespace LogBook.Entry.Texts;

/// <summary>Wording of the fields inside the steps.</summary>
public static class StepTexts
{
    public static readonly Text LookFirst = new(
        "Before touching anything: display, switches, drums and dials as they are. Ask what changed since the last visit.",
        "Antes de tocar nada: pantalla, interruptores, bidones y contadores como están. Pregunte qué cambió desde la última visita.",
        "Antes de tocar em algo: visor, chaves, bombonas e contadores como estão. Pergunte o que mudou desde a última visita.");
    public static readonly Text WhatChanged = new("What changed since the last visit", "Qué cambió desde la última visita", "O que mudou desde a última visita");
    public static readonly Text OpenActions = new("Open actions of earlier visits", "Acciones pendientes de visitas anteriores", "Ações pendentes de visitas anteriores");

    public static readonly Text Display = new("Display, {0}", "Pantalla, {0}", "Visor, {0}");
    public static readonly Text ProbeAsFound = new("Probe {0} as found, {1}", "Sonda {0} como se encontró, {1}", "Sonda {0} como encontrada, {1}");
    public static readonly Text Switches = new("Switches as found", "Interruptores como se encontraron", "Chaves como encontradas");
    public static readonly Text SwitchesLeft = new("Switches as left", "Interruptores como se dejaron", "Chaves como deixadas");
    public static readonly Text AllAutomaticFound = new("All found automatic", "Todos encontrados en automático", "Todas encontradas em automático");
    public static readonly Text AllAutomaticLeft = new("All left automatic", "Todos dejados en automático", "Todas deixadas em automático");
    public static readonly Text RestAutomaticLeft = new(
        "All left automatic but those found or left forced", "Todos dejados en automático menos los encontrados o dejados forzados", "Todas deixadas em automático menos as encontradas ou deixadas forçadas");
    public static readonly Text TestedRestAutomatic = new(
        "Outputs tested one by one, all left automatic but those found or left forced",
        "Salidas probadas una a una, todas dejadas en automático menos las encontradas o dejadas forzadas",
        "Saídas testadas uma a uma, todas deixadas em automático menos as encontradas ou deixadas forçadas");
    public static readonly Text TestedAllAutomatic = new(
        "Outputs tested one by one, all left automatic", "Salidas probadas una a una, todas dejadas en automático", "Saídas testadas uma a uma, todas deixadas em automático");
    public static readonly Text WhyNotAutomatic = new("Why {0} is left {1}", "Por qué {0} queda {1}", "Por que {0} fica {1}");
    public static readonly Text ClockOff = new("Controller clock, minutes fast (slow: minus)", "Reloj del controlador, minutos de adelanto (atraso: menos)", "Relógio do controlador, minutos adiantado (atraso: menos)");
    public static readonly Text ClockRight = new("Clock is right", "El reloj está bien", "O relógio está certo");
    public static readonly Text PlanWeek = new("Week of the dose plan shown", "Semana del plan de dosis mostrada", "Semana do plano de doses mostrada");
    public static readonly Text Alarms = new("Alarms and last error", "Alarmas y último error", "Alarmes e último erro");
    public static readonly Text Alarm = new("Alarm, as shown", "Alarma, como se muestra", "Alarme, como mostrado");
    public static readonly Text Standing = new("Still standing?", "¿Sigue activa?", "Ainda ativo?");
    public static readonly Text HoursRun = new("Hours run since reset: {0}", "Horas de marcha desde la puesta a cero: {0}", "Horas de operação desde a zeragem: {0}");
    public static readonly Text WasReset = new("Restarted from zero since the last visit", "Puesto a cero desde la última visita", "Zerado desde a última visita");
    public static readonly Text Settings = new("Settings", "Ajustes", "Ajustes");
    public static readonly Text SettingsShort = new("Settings read at each visit", "Ajustes que se leen en cada visita", "Ajustes lidos em cada visita");
    public static readonly Text SettingsWalk = new("Full walk through the settings: due", "Recorrido completo de los ajustes: toca", "Percurso completo dos ajustes: devido");
    public static readonly Text SettingsWalkNow = new("Full walk through the settings", "Recorrido completo de los ajustes", "Percurso completo dos ajustes");
    public static readonly Text AllSettingsNow = new("All settings now", "Todos los ajustes ahora", "Todos os ajustes agora");
    public static readonly Text AsLastLeft = new("As last left: {0}", "Como se dejó la última vez: {0}", "Como deixado na última vez: {0}");
    public static readonly Text AsProgramme = new("As in the programme: {0}", "Como en el programa: {0}", "Como no programa: {0}");
    public static readonly Text MaOutput = new("Current output", "Salida de corriente", "Saída de corrente");

    public static readonly Text HandMeter = new("Hand meter", "Medidor portátil", "Medidor portátil");
    public static readonly Text Settling = new("Minutes the hand meter was in the water", "Minutos del medidor portátil en el agua", "Minutos do medidor portátil na água");
    public static readonly Text StartSettling = new("Start settling", "Empezar la espera", "Iniciar a espera");
    public static readonly Text SettlingSince = new("In the water since {0}", "En el agua desde las {0}", "Na água desde as {0}");
    public static readonly Text StopSettling = new("Read now", "Leer ahora", "Ler agora");
    public static readonly Text ReferenceReading = new("Hand meter on the same water, {0}", "Medidor portátil en la misma agua, {0}", "Medidor portátil na mesma água, {0}");
    public static readonly Text AfterCleaning = new("Display after cleaning, {0}", "Pantalla tras la limpieza, {0}", "Visor após a limpeza, {0}");
    public static readonly Text ProbeAsLeft = new("Display as left, {0}", "Pantalla como se dejó, {0}", "Visor como deixado, {0}");
    public static readonly Text Calibrated = new("Calibrated?", "¿Calibrada?", "Calibrada?");
    public static readonly Text CalibrateAgainst = new("Calibrated to", "Calibrada con", "Calibrada com");
    public static readonly Text Standard = new("Standard", "Patrón", "Padrão");
    public static readonly Text StandardValue = new("Value of the standard", "Valor del patrón", "Valor do padrão");
    public static readonly Text StandardLot = new("Lot of the standard", "Lote del patrón", "Lote do padrão");
    public static readonly Text FactorBefore = new("Factor before", "Factor antes", "Fator antes");
    public static readonly Text FactorAfter = new("Factor after", "Factor después", "Fator depois");
    public static readonly Text WhyCalibrated = new("Why it was calibrated", "Por qué se calibró", "Por que foi calibrada");

    public static readonly Text ModeNumber = new("Number", "Número", "Número");
    public static readonly Text ModeDrops = new("Drops", "Gotas", "Gotas");
    public static readonly Text ModeNotQuantifiable = new("Not quantifiable", "No cuantificable", "Não quantificável");
    public static readonly Text ModeNotTaken = new("Not taken", "No hecho", "Não feito");
    public static readonly Text ModeComparator = new("Colour comparison", "Comparación de color", "Comparação de cor");
    public static readonly Text Method = new("Method", "Método", "Método");
    public static readonly Text MoreBy = new("{0}: {1} more", "{0}: {1} más", "{0}: {1} a mais");
    public static readonly Text LessBy = new("{0}: {1} less", "{0}: {1} menos", "{0}: {1} a menos");
    public static readonly Text SameKits = new("Same kits and lots as last time: {0}", "Los mismos kits y lotes que la última vez: {0}", "Os mesmos kits e lotes da última vez: {0}");
    public static readonly Text LotExpired = new("Lot {0} expired on {1}", "El lote {0} caducó el {1}", "O lote {0} venceu em {1}");
    public static readonly Text LotUntil = new("Lot {0} may be used until {1}", "El lote {0} puede usarse hasta el {1}", "O lote {0} pode ser usado até {1}");
    public static readonly Text SideBySide = new("Tests of all towers", "Análisis de todas las torres", "Análises de todas as torres");
    public static readonly Text Test = new("Test", "Análisis", "Análise");
    public static readonly Text ScanLabel = new("Scan the label", "Escanear la etiqueta", "Escanear o rótulo");
    public static readonly Text NoCamera = new("The camera cannot be used here. Type what the label says.", "Aquí no se puede usar la cámara. Escriba lo que dice la etiqueta.", "Aqui não dá para usar a câmera. Digite o que diz o rótulo.");
    public static readonly Text ScanStop = new("Stop scanning", "Detener el escaneo", "Parar o escaneamento");
    public static readonly Text OtherProduct = new("The label says {0}, this drum is for {1}", "La etiqueta dice {0}, este bidón es para {1}", "O rótulo diz {0}, esta bombona é para {1}");
    public static readonly Text OtherLot = new("Scanned: {0}. The lot that stands here was kept.", "Escaneado: {0}. Se conservó el lote que está anotado.", "Escaneado: {0}. Foi mantido o lote que está anotado.");
    public static readonly Text Holds = new("about {0} in it", "unos {0} dentro", "cerca de {0} dentro");
    public static readonly Text TakenNow = new("Taken now, result later", "Tomada ahora, resultado después", "Coletada agora, resultado depois");
    public static readonly Text InIncubator = new("Taken {0}, {1}\u00a0h ago. Read it when the label of the slide says so.", "Tomada {0}, hace {1}\u00a0h. Léala cuando lo diga la etiqueta de la lámina.", "Coletada {0}, há {1}\u00a0h. Leia-a quando o rótulo da lâmina disser.");
    public static readonly Text IncubationTemperature = new("Incubated at", "Incubada a", "Incubada a");
    public static readonly Text IncubationHours = new("Incubated for", "Incubada durante", "Incubada por");
    public static readonly Text HandedTo = new("Handed to", "Entregada a", "Entregue a");
    public static readonly Text HandedAt = new("Handed over at", "Entregada a las", "Entregue às");
    public static readonly Text WriteOnBottle = new("Write on the bottle: {0}", "Escriba en la botella: {0}", "Escreva no frasco: {0}");
    public static readonly Text Custody = new("Sample {0} handed to {1}, {2}", "Muestra {0} entregada a {1}, {2}", "Amostra {0} entregue a {1}, {2}");
    public static readonly Text HowRead = new("How {0} was read", "Cómo se leyó {0}", "Como foi lido {0}");
    public static readonly Text DropsOf = new("Drops counted, {0}", "Gotas contadas, {0}", "Gotas contadas, {0}");
    public static readonly Text PerDrop = new("Each drop is, {0}", "Cada gota es, {0}", "Cada gota é, {0}");
    public static readonly Text DropsMake = new("{0} drops × {1}, result {2}", "{0} gotas × {1}, resultado {2}", "{0} gotas × {1}, resultado {2}");
    public static readonly Text WhyNotTaken = new("Why {0} was not taken", "Por qué no se hizo {0}", "Por que {0} não foi feito");
    public static readonly Text Qualifier = new("Sign of {0}", "Signo de {0}", "Sinal de {0}");
    public static readonly Text DilutionSample = new("Dilution: sample, mL", "Dilución: muestra, mL", "Diluição: amostra, mL");
    public static readonly Text DilutionTotal = new("Dilution: made up to, mL", "Dilución: enrasado a, mL", "Diluição: completado a, mL");
    public static readonly Text Lot = new("Reagent lot", "Lote del reactivo", "Lote do reagente");
    public static readonly Text Instrument = new("Instrument", "Instrumento", "Instrumento");
    public static readonly Text OtherTest = new("Another test", "Otro análisis", "Outra análise");
    public static readonly Text SamplePoint = new("Sample point", "Punto de muestra", "Ponto de amostra");

    public static readonly Text Meters = new("Water meters", "Contadores de agua", "Hidrômetros");
    public static readonly Text Dial = new("{0}, dial", "{0}, contador", "{0}, mostrador");
    public static readonly Text Total = new("{0}, controller's total", "{0}, total del controlador", "{0}, total do controlador");
    public static readonly Text Replaced = new("Meter replaced since the last visit", "Contador cambiado desde la última visita", "Hidrômetro trocado desde a última visita");
    public static readonly Text OldFinal = new("Old meter at its end", "Contador viejo al final", "Hidrômetro antigo no fim");
    public static readonly Text NewStart = new("New meter at its start", "Contador nuevo al inicio", "Hidrômetro novo no início");
    public static readonly Text ReplacedOn = new("Day of the exchange", "Día del cambio", "Dia da troca");
    public static readonly Text TotalReset = new("Total restarted from zero since the last visit", "Total puesto a cero desde la última visita", "Total zerado desde a última visita");
    public static readonly Text ResetNow = new("Reset at this visit", "Puesta a cero en esta visita", "Zeragem nesta visita");
    public static readonly Text Before = new("Just before", "Justo antes", "Logo antes");
    public static readonly Text After = new("Just after", "Justo después", "Logo depois");
    public static readonly Text Drums = new("Drums", "Bidones", "Bombonas");
    public static readonly Text DrumLevel = new("{0}, level as found", "{0}, nivel como se encontró", "{0}, nível como encontrado");
    public static readonly Text Added = new("Delivered into it", "Añadido", "Abastecido");
    public static readonly Text TakenOut = new("Taken out", "Retirado", "Retirado");
    public static readonly Text Swapped = new("Container exchanged", "Envase cambiado", "Recipiente trocado");
    public static readonly Text LevelLeft = new("Level as left", "Nivel como se dejó", "Nível como deixado");
    public static readonly Text Spare = new("Spare beside it", "Reserva al lado", "Reserva ao lado");
    public static readonly Text DeliveredLot = new("Lot on the label", "Lote de la etiqueta", "Lote do rótulo");
    public static readonly Text ProductFound = new("Product found on it", "Producto encontrado", "Produto encontrado");
    public static readonly Text Pumps = new("Pumps", "Bombas", "Bombas");
    public static readonly Text Stroke = new("Stroke, {0}", "Carrera, {0}", "Curso, {0}");
    public static readonly Text Speed = new("Speed, {0}", "Velocidad, {0}", "Velocidade, {0}");
    public static readonly Text AsFound = new("as found", "como se encontró", "como encontrado");
    public static readonly Text AsLeft = new("as left", "como se dejó", "como deixado");
    public static readonly Text Drawdown = new("Drawdown in a column", "Prueba de columna", "Teste de coluna");
    public static readonly Text DrawnMl = new("Drawn, mL", "Aspirado, mL", "Aspirado, mL");
    public static readonly Text Seconds = new("Time, s", "Tiempo, s", "Tempo, s");
    public static readonly Text BleedTest = new("Bleed timed into a bucket", "Purga cronometrada en un cubo", "Purga cronometrada em um balde");
    public static readonly Text BucketLitres = new("Volume", "Volumen", "Volume");

    public static readonly Text Observations = new("What you see", "Lo que se ve", "O que se vê");
    public static readonly Text About = new("About", "Sobre", "Sobre");
    public static readonly Text WhatSeen = new("What was seen", "Qué se vio", "O que se viu");
    public static readonly Text HowSoon = new("How soon it wants somebody", "Cuándo necesita a alguien", "Quando precisa de alguém");
    public static readonly Text Act = new("Today", "Hoy", "Hoje");
    public static readonly Text Plan = new("By the next visit", "Antes de la próxima visita", "Até a próxima visita");
    public static readonly Text Watch = new("Watch", "Vigilar", "Observar");
    public static readonly Text Events = new("What was done or happened", "Qué se hizo u ocurrió", "O que se fez ou ocorreu");
    public static readonly Text EventsQuick = new("Note by one tap", "Anotar con un toque", "Anotar com um toque");
    public static readonly Text Event = new("Event", "Suceso", "Evento");
    public static readonly Text When = new("When", "Cuándo", "Quando");
    public static readonly Text Part = new("Part", "Parte", "Parte");
    public static readonly Text EventVolume = new("Water or product, amount", "Agua o producto, cantidad", "Água ou produto, quantidade");
    public static readonly Text Cleaning = new("What was cleaned", "Qué se limpió", "O que foi limpo");

    public static readonly Text SamplesHint = new("A result may come later: open the visit again and add it.", "El resultado puede llegar después: abra la visita otra vez y añádalo.", "O resultado pode chegar depois: abra a visita novamente e adicione.");
    public static readonly Text TakenAt = new("Taken at", "Tomada a las", "Coletada às");
    public static readonly Text ResultAt = new("Result at", "Resultado a las", "Resultado às");
    public static readonly Text ReceivedAt = new("Received at", "Recibido a las", "Recebido às");
    public static readonly Text Laboratory = new("Laboratory", "Laboratorio", "Laboratório");
    public static readonly Text LabRef = new("The laboratory's number", "Número del laboratorio", "Número do laboratório");
    public static readonly Text SampleId = new("Bottle", "Botella", "Frasco");
    public static readonly Text Bottles = new("Bottles taken", "Botellas tomadas", "Frascos coletados");
    public static readonly Text Bottle = new("Number of the bottle", "Número de la botella", "Número do frasco");
    public static readonly Text SampleTemperature = new("Water temperature", "Temperatura del agua", "Temperatura da água");
    public static readonly Text SampleResidual = new("Oxidant residual, mg/L", "Oxidante residual, mg/L", "Oxidante residual, mg/L");
    public static readonly Text ForSystem = new("System", "Sistema", "Sistema");
    public static readonly Text ResultLater = new("Result comes later", "El resultado llega después", "O resultado vem depois");

    public static readonly Text SettingsLeft = new("Settings changed", "Ajustes cambiados", "Ajustes alterados");
    public static readonly Text SettingLeft = new("{0}, as left", "{0}, como se dejó", "{0}, como deixado");
    public static readonly Text SettingFound = new("{0}, as found", "{0}, como se encontró", "{0}, como encontrado");
    public static readonly Text WhyChanged = new("Why {0} was changed", "Por qué se cambió {0}", "Por que {0} foi alterado");
    public static readonly Text Additions = new("Product added by hand", "Producto añadido a mano", "Produto adicionado à mão");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Amount = new("Amount", "Cantidad", "Quantidade");
    public static readonly Text To = new("Where to", "Dónde", "Onde");

    public static readonly Text OutOfRange = new("{0}: {1} is {2} ({3})", "{0}: {1} está {2} ({3})", "{0}: {1} está {2} ({3})");
    public static readonly Text InBand = new("{0}: {1}. From {2} on, {3} asks for action. {4}", "{0}: {1}. A partir de {2}, {3} pide actuar. {4}", "{0}: {1}. A partir de {2}, {3} pede ação. {4}");
    public static readonly Text AtLimit = new("{0}: {1}, the limit is {2}", "{0}: {1}, el límite es {2}", "{0}: {1}, o limite é {2}");
    public static readonly Text ActionFor = new("What is to be done: {0}", "Qué hay que hacer: {0}", "O que fazer: {0}");
    public static readonly Text OrReason = new("Or the reason why nothing is needed: {0}", "O el motivo por el que no hace falta nada: {0}", "Ou o motivo pelo qual nada é preciso: {0}");
    public static readonly Text Actions = new("Actions", "Acciones", "Ações");
    public static readonly Text Action = new("Action", "Acción", "Ação");
    public static readonly Text ActionAbout = new("What it is for", "Para qué es", "Para que é");
    public static readonly Text Owner = new("Who", "Quién", "Quem");
    public static readonly Text Due = new("By when", "Para cuándo", "Até quando");
    public static readonly Text Recommendations = new("Recommendations to the customer", "Recomendaciones al cliente", "Recomendações ao cliente");
    public static readonly Text Recommendation = new("Recommendation", "Recomendación", "Recomendação");
    public static readonly Text Consequence = new("What happens otherwise", "Qué ocurre si no", "O que ocorre se não");
    public static readonly Text Signatures = new("Signatures", "Firmas", "Assinaturas");
    public static readonly Text TechnicianSignature = new("Done by (name)", "Hecho por (nombre)", "Feito por (nome)");
    public static readonly Text CustomerSignature = new("For the customer (name)", "Por el cliente (nombre)", "Pelo cliente (nome)");
    public static readonly Text CustomerRole = new("Role", "Función", "Função");
    public static readonly Text WhyUnsigned = new("Why nobody signs for the customer", "Por qué nadie firma por el cliente", "Por que ninguém assina pelo cliente");
    public static readonly Text SignAs = new("Sign as {0}", "Firmar como {0}", "Assinar como {0}");

    public static readonly Text OpenRange = new("{0}: action or reason", "{0}: acción o motivo", "{0}: ação ou motivo");
    public static readonly Text OpenUnfinished = new("{0} is missing: {1}, “{2}”, is not in the visit without it", "Falta {0}: sin ello, {1}, «{2}», no entra en la visita", "Falta {0}: sem isso, {1}, “{2}”, não entra na visita");
    public static readonly Text OpenOwner = new("{0}: who does it", "{0}: quién lo hace", "{0}: quem faz");
    public static readonly Text OpenDue = new("{0}: by when", "{0}: para cuándo", "{0}: até quando");
    public static readonly Text OpenSwitch = new("{0} is left {1}: reason", "{0} queda {1}: motivo", "{0} fica {1}: motivo");
    public static readonly Text OpenSwitchFound = new("{0}: switch as found", "{0}: interruptor como se encontró", "{0}: chave como encontrada");
    public static readonly Text OpenOutputsTested = new("Outputs tested one by one: to be confirmed", "Salidas probadas una a una: por confirmar", "Saídas testadas uma a uma: a confirmar");
    public static readonly Text OpenSwitchUnknown = new("{0}: switch as left", "{0}: interruptor como se dejó", "{0}: chave como deixada");
    public static readonly Text OpenTechnician = new("Your signature", "Su firma", "Sua assinatura");
    public static readonly Text OpenCustomer = new("Customer's signature, or why not", "Firma del cliente, o por qué no", "Assinatura do cliente, ou por que não");
    public static readonly Text OpenTest = new("{0}: value, or why not taken", "{0}: valor, o por qué no se hizo", "{0}: valor, ou por que não foi feito");
    public static readonly Text OpenCounter = new("{0}: not read", "{0}: sin leer", "{0}: não lido");
    public static readonly Text OpenWalk = new(
        "Full walk through the settings is due: {0} not read", "Toca el recorrido completo de los ajustes: {0} sin leer", "O percurso completo dos ajustes é devido: {0} não lidos");
    public static readonly Text OpenSetting = new("{0} was changed: reason", "{0} se cambió: motivo", "{0} foi alterado: motivo");
    public static readonly Text AboveLabel = new(
        "Stop: this would make about {0} as product in the water, the label allows {1}. The label is the limit.",
        "Alto: esto daría unos {0} como producto en el agua, la etiqueta permite {1}. La etiqueta es el límite.",
        "Pare: isto daria cerca de {0} como produto na água, o rótulo permite {1}. O rótulo é o limite.");
    public static readonly Text NoCertificate = new(
        "Stop: no valid certificate of {0} is on file. Where the law asks for a certified applicator or a supervised apprentice, others do not apply a biocide.",
        "Alto: no consta un certificado vigente de {0}. Donde la ley exige un aplicador certificado o un aprendiz supervisado, los demás no aplican biocidas.",
        "Pare: não consta certificado válido de {0}. Onde a lei exige aplicador certificado ou aprendiz supervisionado, os demais não aplicam biocidas.");
    public static readonly Text OpenEvent = new("{0}: not noted yet", "{0}: aún sin anotar", "{0}: ainda não anotado");
    public static readonly Text OpenDelivery = new("What was delivered, into which drum", "Qué se entregó y en qué bidón", "O que foi entregue e em qual bombona");
    public static readonly Text ActionState = new("State of the action", "Estado de la acción", "Estado da ação");
    public static readonly Text OpenReason = new("Reason", "Motivo", "Motivo");
}
