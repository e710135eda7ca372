using LogBook.Domain.Languages;
using LogBook.Domain.Simulation;

namespace LogBook.Web.Features.Calculators;

/// <summary>Words of the dose plan's page: calculations and look-ahead.</summary>
public static class CalcTexts
{
    public static readonly Text Title = new("Dose plan", "Plan de dosis", "Plano de doses");
    public static readonly Text Caution = new("Calculated from entered values; a competent person approves.", "Calculado con los valores ingresados; aprueba una persona competente.", "Calculado com os valores inseridos; uma pessoa competente aprova.");
    public static readonly Text LabelRules = new("The product's label is the limit; LogBook never commands a controller and stores nothing from this page.", "La etiqueta del producto es el límite; LogBook nunca manda sobre un controlador y no guarda nada de esta página.", "O rótulo do produto é o limite; o LogBook nunca comanda um controlador e não guarda nada desta página.");
    public static readonly Text Run = new("Work it out", "Calcular", "Calcular");
    public static readonly Text Missing = new("{0}: missing; expected is {1}.", "{0}: falta; se espera {1}.", "{0}: falta; espera-se {1}.");
    public static readonly Text Wrong = new("{0}: “{1}”; expected is {2}.", "{0}: «{1}»; se espera {2}.", "{0}: “{1}”; espera-se {2}.");
    public static readonly Text Typed = new("entered here", "ingresado aquí", "inserido aqui");
    public static readonly Text TypedUsual = new("entered here; ± {0} is usual for its kind", "ingresado aquí; ± {0} es lo usual para su tipo", "inserido aqui; ± {0} é o usual para o tipo");
    public static readonly Text EmptyIsWithout = new("A box of hold or bleed-down left empty means: without it.", "Una casilla de cierre o de purga previa vacía significa: sin ello.", "Uma caixa de fechamento ou de purga prévia vazia significa: sem isso.");
    public static readonly Text LimitCleared = new(
        "Limits on file whose box was cleared: they do not count here, and nobody knows whether they hold: {0}.",
        "Límites en la ficha cuya casilla se vació: aquí no cuentan y nadie sabe si se cumplen: {0}.",
        "Limites no cadastro cuja caixa foi esvaziada: aqui não contam e ninguém sabe se valem: {0}.");
    public static readonly Text NotOnFile = new("not on file: enter it", "no está en la ficha: ingréselo", "não está no cadastro: insira");
    public static readonly Text OfProgramme = new("programme in force, as the controller was last left", "programa en vigor, como se dejó el controlador", "programa em vigor, como o controlador foi deixado");
    public static readonly Text OfProduct = new("product on file", "producto en la ficha", "produto no cadastro");
    public static readonly Text OfSetUp = new("set-up of the system", "ficha del sistema", "cadastro do sistema");
    public static readonly Text Usual = new("usual value (common practice, no source)", "valor usual (práctica común, sin fuente)", "valor usual (prática comum, sem fonte)");
    public static readonly Text NoResult = new("There is no result: {0}", "No hay resultado: {0}", "Não há resultado: {0}");
    public static readonly Text Basis = new("Basis", "Base", "Base");

    public static readonly Text SetPointTitle = new("Set point from cycles and the scarcest ion", "Punto de consigna según ciclos y el ion más escaso", "Ponto de ajuste pelos ciclos e pelo íon mais escasso");
    public static readonly Text TargetCycles = new("Target cycles", "Ciclos objetivo", "Ciclos alvo");
    public static readonly Text MakeUp = new("Conductivity of the make-up", "Conductividad de la reposición", "Condutividade da reposição");
    public static readonly Text Bend = new("Conductivity reads low, for each cycle above one", "La conductividad lee de menos, por cada ciclo sobre uno", "A condutividade lê a menos, por ciclo acima de um");
    public static readonly Text DifferentialShare = new("Differential as a share of the set point", "Diferencial como parte de la consigna", "Diferencial como parte do ponto de ajuste");
    public static readonly Text Discharge = new("Limit of the discharge, conductivity", "Límite del vertido, conductividad", "Limite do descarte, condutividade");
    public static readonly Text DischargeBasis = new("limit of the discharge", "límite del vertido", "limite do descarte");
    public static readonly Text LimitOf = new("{0}: limit in the tower", "{0}: límite en la torre", "{0}: limite na torre");
    public static readonly Text MakeUpOf = new("{0} in the make-up", "{0} en la reposición", "{0} na reposição");
    public static readonly Text Of12 = new("90th percentile of the last {0} make-up readings", "percentil 90 de las últimas {0} lecturas de reposición", "percentil 90 das últimas {0} leituras de reposição");
    public static readonly Text SetPointSays = new("Set point {0}, differential {1}.", "Punto de consigna {0}, diferencial {1}.", "Ponto de ajuste {0}, diferencial {1}.");
    public static readonly Text Limits = new("{0} limits: {1} allow {2} cycles ({3}).", "Limita {0}: {1} permiten {2} ciclos ({3}).", "Limita {0}: {1} permitem {2} ciclos ({3}).");
    public static readonly Text TargetLimits = new("The target of {0} cycles limits; no ion is scarcer.", "Limita el objetivo de {0} ciclos; ningún ion es más escaso.", "Limita o alvo de {0} ciclos; nenhum íon é mais escasso.");
    public static readonly Text MeanCycles = new("On average the water stands at {0} cycles, half a differential below.", "En promedio el agua está en {0} ciclos, medio diferencial por debajo.", "Em média a água fica em {0} ciclos, meio diferencial abaixo.");
    public static readonly Text NotConverted = new("Limits not known, because the range of the programme cannot be converted from its unit or basis: {0}.", "Límites no conocidos, porque el rango del programa no se puede convertir desde su unidad o base: {0}.", "Limites não conhecidos, porque a faixa do programa não pode ser convertida de sua unidade ou base: {0}.");
    public static readonly Text NotKnown = new("Limits whose ion was not measured in the make-up, so nobody knows whether they hold: {0}.", "Límites cuyo ion no se midió en la reposición, así que nadie sabe si se cumplen: {0}.", "Limites cujo íon não foi medido na reposição, então ninguém sabe se valem: {0}.");
    public static readonly Text Ion = new("Ion", "Ion", "Íon");
    public static readonly Text Limit = new("Limit", "Límite", "Limite");
    public static readonly Text InMakeUp = new("In the make-up", "En la reposición", "Na reposição");
    public static readonly Text CyclesAllowed = new("Cycles allowed", "Ciclos permitidos", "Ciclos permitidos");

    public static readonly Text FeedTitle = new("Feed time and level", "Tiempo de dosificación y nivel", "Tempo de dosagem e nível");
    public static readonly Text Output = new("Product and output", "Producto y salida", "Produto e saída");
    public static readonly Text Mode = new("How it is paced", "Cómo se regula", "Como é regulado");
    public static readonly Text Level = new("Level aimed at, as product", "Nivel objetivo, como producto", "Nível alvo, como produto");
    public static readonly Text PumpOutput = new("Pump output", "Caudal de la bomba", "Vazão da bomba");
    public static readonly Text Density = new("Density of the product", "Densidad del producto", "Densidade do produto");
    public static readonly Text Cycles = new("Cycles", "Ciclos", "Ciclos");
    public static readonly Text EveryL = new("Make-up for each run", "Reposición por cada marcha", "Reposição a cada marcha");
    public static readonly Text Pulse = new("Water for each pulse of the meter", "Agua por cada pulso del contador", "Água por pulso do hidrômetro");
    public static readonly Text NowSeconds = new("Run set now", "Marcha ajustada ahora", "Marcha ajustada agora");
    public static readonly Text NowMinutes = new("Run set now", "Marcha ajustada ahora", "Marcha ajustada agora");
    public static readonly Text NowPump = new("Pump output set now", "Caudal de la bomba ahora", "Vazão da bomba agora");
    public static readonly Text NowShare = new("Share set now", "Porcentaje ajustado ahora", "Porcentagem ajustada agora");
    public static readonly Text BleedFlow = new("Flow of the open bleed valve", "Caudal de la válvula de purga abierta", "Vazão da válvula de purga aberta");
    public static readonly Text ThroughBleed = new("Share of the loss that goes through the bleed", "Parte de la pérdida que pasa por la purga", "Parte da perda que passa pela purga");
    public static readonly Text NoLeak = new("no leak and no drift assumed", "sin fugas ni arrastre supuestos", "sem vazamento nem arraste supostos");
    public static readonly Text Loss = new("Mean loss as liquid", "Pérdida líquida media", "Perda líquida média");
    public static readonly Text CycleMin = new("Repeating time", "Tiempo que se repite", "Tempo que se repete");
    public static readonly Text Volume = new("Volume of the system", "Volumen del sistema", "Volume do sistema");
    public static readonly Text FeedSays = new("{0}: {1} for {2}.", "{0}: {1} para {2}.", "{0}: {1} para {2}.");
    public static readonly Text OnSeconds = new("That is {0} of every {1}.", "Son {0} de cada {1}.", "São {0} a cada {1}.");
    public static readonly Text LevelSays = new("At the setting now, {0}, you feed {1}.", "Con el ajuste actual, {0}, dosifica {1}.", "Com o ajuste atual, {0}, você dosa {1}.");
    public static readonly Text SettingNow = new("The setting now:", "El ajuste actual:", "O ajuste atual:");

    public static readonly Text HoldTitle = new("Bleed-down, hold and longest bleed", "Purga previa, cierre y purga más larga", "Purga prévia, fechamento e purga mais longa");
    public static readonly Text ContactOnFile = new("label on file: {0} of contact", "etiqueta en la ficha: {0} de contacto", "rótulo no cadastro: {0} de contato");
    public static readonly Text NoContact = new("no contact time on file: read the label", "sin tiempo de contacto en la ficha: lea la etiqueta", "sem tempo de contato no cadastro: leia o rótulo");
    public static readonly Text DoseLevel = new("Dose, as product", "Dosis, como producto", "Dose, como produto");
    public static readonly Text FeedMinutes = new("Feed lasts", "Duración de la dosificación", "Duração da dosagem");
    public static readonly Text HoldMinutes = new("Hold bleed shut after dose", "Purga cerrada tras la dosis", "Purga fechada após a dose");
    public static readonly Text BleedDownTo = new("Bleed down first, to", "Purgar antes, hasta", "Purgar antes, até");
    public static readonly Text BleedDownMinutes = new("Bleed down first, at most", "Purgar antes, como máximo", "Purgar antes, no máximo");
    public static readonly Text SetPoint = new("Set point", "Punto de consigna", "Ponto de ajuste");
    public static readonly Text Differential = new("Differential", "Diferencial", "Diferencial");
    public static readonly Text HighAlarm = new("High alarm", "Alarma alta", "Alarme alto");
    public static readonly Text Evaporation = new("Evaporation in those hours", "Evaporación en esas horas", "Evaporação nessas horas");
    public static readonly Text OtherLoss = new("Drift and leaks", "Arrastre y fugas", "Arraste e vazamentos");
    public static readonly Text HalfLife = new("Half-life of the product by decay alone", "Vida media del producto solo por descomposición", "Meia-vida do produto só por decaimento");
    public static readonly Text Peak = new("Conductivity at the end of the hold", "Conductividad al final del cierre", "Condutividade ao fim do fechamento");
    public static readonly Text AlarmAt = new("high alarm {0}", "alarma alta {0}", "alarme alto {0}");
    public static readonly Text LongestHold = new("Longest hold before the alarm", "Cierre más largo antes de la alarma", "Fechamento mais longo antes do alarme");
    public static readonly Text BleedDownTakes = new("Bleed-down takes", "La purga previa tarda", "A purga prévia leva");
    public static readonly Text DoseLeft = new("Dose left at the end", "Dosis que queda al final", "Dose que resta ao fim");
    public static readonly Text LeftOf = new("{0} of {1}", "{0} de {1}", "{0} de {1}");
    public static readonly Text LevelTime = new("Level × time", "Nivel × tiempo", "Nível × tempo");
    public static readonly Text UpperBound = new("Without a half-life the level left is an upper bound.", "Sin vida media, el nivel que queda es un máximo.", "Sem meia-vida, o nível que resta é um máximo.");
    public static readonly Text Fits = new("This hold stays below the high alarm by these numbers.", "Con estos números este cierre queda por debajo de la alarma alta.", "Com estes números este fechamento fica abaixo do alarme alto.");
    public static readonly Text NoAlarm = new("No high alarm is given, so nobody knows whether this hold stays below it. Write the high alarm down.", "No hay alarma alta indicada, así que nadie sabe si este cierre queda por debajo. Escriba la alarma alta.", "Não há alarme alto informado, então ninguém sabe se este fechamento fica abaixo dele. Escreva o alarme alto.");
    public static readonly Text ShorterFits = new("This hold passes the high alarm. {0} stay below it and keep the label's contact.", "Este cierre supera la alarma alta. {0} quedan por debajo y respetan el contacto de la etiqueta.", "Este fechamento passa do alarme alto. {0} ficam abaixo e respeitam o contato do rótulo.");
    public static readonly Text LongerNeeded = new("This hold is shorter than the label's contact: {0} at least.", "Este cierre es más corto que el contacto de la etiqueta: al menos {0}.", "Este fechamento é mais curto que o contato do rótulo: pelo menos {0}.");
    public static readonly Text DownFirst = new("This hold passes the high alarm. Bleed down to {0} first (takes {1}); then {2} of hold stay below it.", "Este cierre supera la alarma alta. Purgue antes hasta {0} (tarda {1}); luego {2} de cierre quedan por debajo.", "Este fechamento passa do alarme alto. Purgue antes até {0} (leva {1}); depois {2} de fechamento ficam abaixo.");
    public static readonly Text NothingFits = new("No hold keeps the label's contact below the high alarm: dose at low load, take another product, or agree a higher limit. Nothing shorter than the label is proposed.", "Ningún cierre respeta el contacto de la etiqueta bajo la alarma alta: dosifique con carga baja, use otro producto o acuerde un límite mayor. No se propone nada más corto que la etiqueta.", "Nenhum fechamento respeita o contato do rótulo abaixo do alarme alto: dose com carga baixa, use outro produto ou combine um limite maior. Nada mais curto que o rótulo é proposto.");

    public static readonly Text MaTitle = new("Current output, 4 to 20 mA", "Salida de corriente, 4 a 20 mA", "Saída de corrente, 4 a 20 mA");
    public static readonly Text At4 = new("Value at 4 mA", "Valor a 4 mA", "Valor a 4 mA");
    public static readonly Text At20 = new("Value at 20 mA", "Valor a 20 mA", "Valor a 20 mA");
    public static readonly Text ValueShown = new("Value shown by the controller", "Valor que muestra el controlador", "Valor mostrado pelo controlador");
    public static readonly Text Current = new("Current measured", "Corriente medida", "Corrente medida");
    public static readonly Text ShouldBe = new("{0} should give {1}.", "{0} debería dar {1}.", "{0} deveria dar {1}.");
    public static readonly Text Means = new("{0} mean {1}.", "{0} significan {1}.", "{0} significam {1}.");
    public static readonly Text OutsideLoop = new("Outside 4 to 20 mA: saturated or faulty.", "Fuera de 4 a 20 mA: saturada o con fallo.", "Fora de 4 a 20 mA: saturada ou com falha.");
    public static readonly Text MaSource = new("Straight line between 4 and 20 mA; states by NAMUR NE43.", "Recta entre 4 y 20 mA; estados según NAMUR NE43.", "Reta entre 4 e 20 mA; estados conforme NAMUR NE43.");

    public static readonly Text AheadTitle = new("Four weeks ahead", "Cuatro semanas por delante", "Quatro semanas à frente");
    public static readonly Text AheadIntro = new("The programme as the controller was last left, run from {0} to {1} on a plant as the set-up tells it, at 70 % of full load and steady weather.", "El programa como se dejó el controlador, corrido del {0} al {1} en una planta como dice la ficha, al 70 % de la carga plena y con tiempo estable.", "O programa como o controlador foi deixado, rodado de {0} a {1} numa planta como diz o cadastro, a 70 % da carga plena e com tempo estável.");
    public static readonly Text LeftOut = new("Not run ahead, since they follow a measured value or a person: {0}.", "No se corren, pues siguen un valor medido o a una persona: {0}.", "Não são rodados, pois seguem um valor medido ou uma pessoa: {0}.");
    public static readonly Text NoProgramme = new("No programme is in force, so there is nothing to run ahead.", "No hay programa en vigor y no hay nada que correr.", "Não há programa em vigor e não há nada a rodar.");
    public static readonly Text AheadMissing = new("The programme cannot be run ahead. Missing in the set-up:", "El programa no se puede correr. Falta en la ficha:", "O programa não pode ser rodado. Falta no cadastro:");
    public static readonly Text Faults = new("Faults", "Fallos", "Falhas");
    public static readonly Text FaultsIf = new("Faults with the change", "Fallos con el cambio", "Falhas com a mudança");
    public static readonly Text NoFaults = new("None found by these numbers.", "Ninguno con estos números.", "Nenhuma com estes números.");
    public static readonly Text Times = new("({0} times)", "({0} veces)", "({0} vezes)");
    public static readonly Text RunIf = new("What if: run beside today", "Qué pasaría: correr junto a hoy", "E se: rodar ao lado de hoje");
    public static readonly Text IfOutput = new("dose that is changed; nothing is stored", "dosis que cambia; no se guarda nada", "dose que muda; nada é guardado");
    public static readonly Text BleedOnly = new("only the bleed", "solo la purga", "só a purga");
    public static readonly Text StartTime = new("Start of every dose", "Inicio de cada dosis", "Início de cada dose");
    public static readonly Text WrongTime = new("{0}: “{1}”; expected is a time such as 21:30.", "{0}: «{1}»; se espera una hora como 21:30.", "{0}: “{1}”; espera-se uma hora como 21:30.");
    public static readonly Text RunMinutes = new("Run for each dose", "Marcha por cada dosis", "Marcha a cada dose");
    public static readonly Text NothingStored = new("Tried out only; nothing is stored and nothing is sent to a controller.", "Solo de prueba; no se guarda ni se envía nada a un controlador.", "Só de teste; nada é guardado nem enviado a um controlador.");
    public static readonly Text Today = new("Today", "Hoy", "Hoje");
    public static readonly Text WhatIf = new("What if", "Qué pasaría", "E se");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text DosesOf = new("Doses, {0}", "Dosis, {0}", "Doses, {0}");
    public static readonly Text Conductivity = new("Conductivity", "Conductividad", "Condutividade");
    public static readonly Text DosesRun = new("Doses run", "Dosis hechas", "Doses feitas");
    public static readonly Text PeakOf = new("Highest conductivity", "Conductividad más alta", "Condutividade mais alta");
    public static readonly Text Bleeds = new("Bleeds", "Purgas", "Purgas");
    public static readonly Text BleedHours = new("Bleed hours", "Horas de purga", "Horas de purga");
    public static readonly Text LongestBleedOf = new("Longest bleed", "Purga más larga", "Purga mais longa");
    public static readonly Text WaterBled = new("Water bled", "Agua purgada", "Água purgada");
    public static readonly Text DoseTable = new("All {0} doses as a table", "Las {0} dosis como tabla", "As {0} doses como tabela");
    public static readonly Text Due = new("Due", "Vence", "Vence");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Starts = new("Feed starts", "Empieza", "Começa");
    public static readonly Text Begins = new("Conductivity then", "Conductividad entonces", "Condutividade então");
    public static readonly Text HeldUntil = new("Bleed held until", "Purga cerrada hasta", "Purga fechada até");
    public static readonly Text EndsAt = new("Conductivity then", "Conductividad entonces", "Condutividade então");
    public static readonly Text AheadSummary = new("{0} doses; conductivity is highest at {1} on {2}; {3} bleeds of {4} together.", "{0} dosis; la conductividad más alta es {1} el {2}; {3} purgas de {4} en total.", "{0} doses; a condutividade mais alta é {1} em {2}; {3} purgas de {4} no total.");
    public static readonly Text AheadSource = new("Mass balance of a well-mixed system with the controller's logic; levels fall by the water lost alone and are upper bounds.", "Balance de masa de un sistema bien mezclado con la lógica del controlador; los niveles bajan solo por el agua perdida y son máximos.", "Balanço de massa de um sistema bem misturado com a lógica do controlador; os níveis caem só pela água perdida e são máximos.");

    private static readonly Dictionary<string, Text> Needed = new(StringComparer.Ordinal)
    {
        ["kind"] = new("an open recirculating system", "un sistema abierto de recirculación", "um sistema aberto de recirculação"),
        ["volumeL"] = new("the volume", "el volumen", "o volume"),
        ["fullLoadKw"] = new("the full load", "la carga plena", "a carga plena"),
        ["bleedValveLPerH"] = new("the flow of the bleed valve", "el caudal de la válvula de purga", "a vazão da válvula de purga"),
        ["setPointUsPerCm"] = new("the set point", "el punto de consigna", "o ponto de ajuste"),
        ["makeUp.conductivityUsPerCm"] = new("the conductivity of the make-up", "la conductividad de la reposición", "a condutividade da reposição"),
    };

    /// <summary>What is missing to run a programme ahead.</summary>
    public static Text MissingOf(string path) => Needed.GetValueOrDefault(path, new Text(path, path, path));

    /// <summary>Name of a fault.</summary>
    public static Text NameOf(LookAheadFaultKind kind) => kind switch
    {
        LookAheadFaultKind.Label => new("Label", "Etiqueta", "Rótulo"),
        LookAheadFaultKind.Clash => new("Clash", "Choque", "Choque"),
        LookAheadFaultKind.HoldTooLong => new("Hold too long", "Cierre demasiado largo", "Fechamento longo demais"),
        LookAheadFaultKind.Untreated => new("Untreated hours", "Horas sin tratar", "Horas sem tratamento"),
        LookAheadFaultKind.Waits => new("Dose waits", "Dosis en espera", "Dose em espera"),
        LookAheadFaultKind.LongWithout => new("Long without", "Mucho tiempo sin", "Muito tempo sem"),
        LookAheadFaultKind.ClockChange => new("Clocks change", "Cambio de hora", "Mudança de hora"),
        _ => new("Bleed ran too long", "Purga demasiado larga", "Purga longa demais"),
    };
}
