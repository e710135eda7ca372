using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Records;

/// <summary>Words of the probe, meter and pump records.</summary>
public static class RecordTexts
{
    public static readonly Text Probe = new("Probe record", "Registro de sondas", "Registro de sondas");
    public static readonly Text Meter = new("Meter record", "Registro de contadores", "Registro de hidrômetros");
    public static readonly Text Pump = new("Pump output", "Caudal de bombas", "Vazão das bombas");
    public static readonly Text How = new("How was this worked out?", "¿Cómo se calculó?", "Como isto foi calculado?");
    public static readonly Text Visit = new("Visit", "Visita", "Visita");
    public static readonly Text Newest = new("Newest first", "Lo más nuevo primero", "O mais novo primeiro");
    public static readonly Text Earlier = new("Show {0} earlier", "Mostrar {0} anteriores", "Mostrar {0} anteriores");

    public static readonly Text NoProbe = new("No probe was compared yet", "Aún no se ha comparado ninguna sonda", "Nenhuma sonda foi comparada ainda");
    public static readonly Text NoProbeMore = new(
        "A probe is compared at a visit: display as found, hand meter on the same flowing water, after cleaning, as left.",
        "Una sonda se compara en una visita: pantalla como se encontró, medidor portátil en la misma agua en circulación, tras limpiar, como se dejó.",
        "Uma sonda é comparada numa visita: visor como encontrado, medidor portátil na mesma água em circulação, depois de limpar, como deixado.");

    public static readonly Text ProbeOf = new("Conductivity probe {0}", "Sonda de conductividad {0}", "Sonda de condutividade {0}");
    public static readonly Text ProbeSummary = new(
        "{0} comparisons; last as found {1} against the hand meter; cleaned {2} times, calibrated {3} times.",
        "{0} comparaciones; la última como se encontró {1} frente al medidor portátil; limpiada {2} veces, calibrada {3} veces.",
        "{0} comparações; a última como encontrada {1} contra o medidor portátil; limpa {2} vezes, calibrada {3} vezes.");

    public static readonly Text NotKnown = new("not known", "no se sabe", "não se sabe");
    public static readonly Text DriftNow = new(
        "Since {0} it drifts by {1} a month (95 %: {2} to {3}), from {4} comparisons with one hand meter. At the next visit, about {5}, {6} is expected (95 %: {7} to {8}).",
        "Desde el {0} deriva {1} al mes (95 %: {2} a {3}), según {4} comparaciones con un medidor. En la próxima visita, hacia el {5}, se espera {6} (95 %: {7} a {8}).",
        "Desde {0} deriva {1} por mês (95 %: {2} a {3}), por {4} comparações com um medidor. Na próxima visita, por volta de {5}, espera-se {6} (95 %: {7} a {8}).");

    public static readonly Text NoDrift = new(
        "Too few comparisons with one hand meter since the last cleaning, calibration or renewal for a line.",
        "Muy pocas comparaciones con un medidor desde la última limpieza, calibración o renovación para trazar una recta.",
        "Poucas comparações com um medidor desde a última limpeza, calibração ou renovação para uma reta.");

    public static readonly Text Error = new("Error against the hand meter", "Error frente al medidor portátil", "Erro contra o medidor portátil");
    public static readonly Text AsFound = new("As found", "Como se encontró", "Como encontrado");
    public static readonly Text AfterCleaning = new("After cleaning", "Tras limpiar", "Depois de limpar");
    public static readonly Text AsLeft = new("As left", "Como se dejó", "Como deixado");
    public static readonly Text Reference = new("Hand meter", "Medidor portátil", "Medidor portátil");
    public static readonly Text Tolerance = new("Tolerance", "Tolerancia", "Tolerância");
    public static readonly Text Fouling = new("Of it fouling", "De ello, suciedad", "Disso, sujeira");
    public static readonly Text CalibrationPart = new("Of it calibration", "De ello, calibración", "Disso, calibração");
    public static readonly Text Done = new("Done", "Hecho", "Feito");
    public static readonly Text Cleaned = new("cleaned", "limpiada", "limpa");
    public static readonly Text Calibrated = new("calibrated", "calibrada", "calibrada");
    public static readonly Text Renewed = new("renewed", "renovada", "renovada");
    public static readonly Text Unproved = new("hand meter not checked in a standard within 30 days", "medidor sin verificar con patrón en 30 días", "medidor sem verificação com padrão em 30 dias");
    public static readonly Text Drift = new("Line of the drift", "Recta de la deriva", "Reta da deriva");
    public static readonly Text DriftEnds = new("95 % interval at the next visit", "Intervalo del 95 % en la próxima visita", "Intervalo de 95 % na próxima visita");
    public static readonly Text ProbeHow = new(
        "Error = 100 × (display − hand meter) / hand meter, in the same flowing water. Fouling is what cleaning took away (as found − after cleaning), calibration what stayed (after cleaning). The uncertainty (k = 2) holds the hand meter, temperature compensation and the display. Tolerance: {0} or {1}, whichever is larger ({2}). Drift: straight line through the errors by one hand meter since the last cleaning, calibration or renewal.",
        "Error = 100 × (pantalla − medidor) / medidor, en la misma agua en circulación. La suciedad es lo que quitó la limpieza (como se encontró − tras limpiar); la calibración, lo que quedó (tras limpiar). La incertidumbre (k = 2) incluye medidor, compensación de temperatura y pantalla. Tolerancia: {0} o {1}, lo que sea mayor ({2}). Deriva: recta por los errores con un mismo medidor desde la última limpieza, calibración o renovación.",
        "Erro = 100 × (visor − medidor) / medidor, na mesma água em circulação. Sujeira é o que a limpeza tirou (como encontrado − depois de limpar); calibração, o que ficou (depois de limpar). A incerteza (k = 2) inclui medidor, compensação de temperatura e visor. Tolerância: {0} ou {1}, o que for maior ({2}). Deriva: reta pelos erros com um mesmo medidor desde a última limpeza, calibração ou troca.");

    public static readonly Text Followed = new("Feeds that follow a display", "Dosificaciones que siguen una indicación", "Dosagens que seguem uma indicação");
    public static readonly Text FollowedMeans = new(
        "A coated probe holds its feed back while its display stands at the set point. The water's own test and the hours of the feed tell.",
        "Una sonda con depósitos frena su dosificación mientras su indicación sigue en el punto de consigna. Lo dicen el análisis del agua y las horas de la dosificación.",
        "Uma sonda com depósitos segura a dosagem enquanto sua indicação fica no ponto de ajuste. Quem diz é o teste da água e as horas da dosagem.");
    public static readonly Text Displayed = new("Display", "Indicación", "Indicação");
    public static readonly Text Asked = new("Set point", "Punto de consigna", "Ponto de ajuste");
    public static readonly Text Tested = new("Tested in the water", "Analizado en el agua", "Testado na água");
    public static readonly Text RunADay = new("Run a day", "Marcha al día", "Funcionamento por dia");
    public static readonly Text Balance = new("Water between visits: make-up, bleed hours, loss", "Agua entre visitas: reposición, horas de purga, pérdida", "Água entre visitas: reposição, horas de purga, perda");
    public static readonly Text OtherProbes = new("Other probes", "Otras sondas", "Outras sondas");
    public static readonly Text Checks = new("Hand meters in their standards", "Medidores portátiles en sus patrones", "Medidores portáteis em seus padrões");
    public static readonly Text NoChecks = new("No check in a standard is on file for the hand meters used here.", "No consta ninguna verificación con patrón de los medidores usados aquí.", "Nenhuma verificação com padrão consta para os medidores usados aqui.");
    public static readonly Text Instrument = new("Instrument", "Instrumento", "Instrumento");
    public static readonly Text Standard = new("Standard", "Patrón", "Padrão");
    public static readonly Text Read = new("Read", "Leído", "Lido");
    public static readonly Text Off = new("Off by", "Desvío", "Desvio");
    public static readonly Text Lot = new("Lot", "Lote", "Lote");
    public static readonly Text Beyond = new("beyond {0}", "más de {0}", "além de {0}");

    public static readonly Text NoMeter = new("No water meter was read yet", "Aún no se ha leído ningún contador", "Nenhum hidrômetro foi lido ainda");
    public static readonly Text NoMeterMore = new("Dial and total of a meter are read at a visit.", "La esfera y el total de un contador se leen en una visita.", "O mostrador e o total de um hidrômetro são lidos numa visita.");
    public static readonly Text MeterOf = new("{0}: {1}", "{0}: {1}", "{0}: {1}");
    public static readonly Text Register = new(
        "Register of {0} digits in {1}{2}; one pulse is {3}.",
        "Registro de {0} dígitos en {1}{2}; un pulso son {3}.",
        "Registrador de {0} dígitos em {1}{2}; um pulso são {3}.");

    public static readonly Text Times = new(", times {0}", ", por {0}", ", vezes {0}");
    public static readonly Text Unknown = new("not on file", "no consta", "não consta");
    public static readonly Text MeterSummary = new(
        "{0} readings; last interval {1}; total against dial {2} (allowed {3}); rollovers: {4}, exchanges: {5}, resets of the total: {6}.",
        "{0} lecturas; último intervalo {1}; total frente a esfera {2} (se admite {3}); vueltas a cero: {4}, cambios: {5}, reinicios del total: {6}.",
        "{0} leituras; último intervalo {1}; total contra mostrador {2} (admite-se {3}); viradas: {4}, trocas: {5}, zeragens do total: {6}.");

    public static readonly Text PerDay = new("Water a day", "Agua al día", "Água por dia");
    public static readonly Text Dial = new("Dial", "Esfera", "Mostrador");
    public static readonly Text Total = new("Total", "Total", "Total");
    public static readonly Text ByDial = new("By the dial", "Según la esfera", "Pelo mostrador");
    public static readonly Text ByTotal = new("By the total", "Según el total", "Pelo total");
    public static readonly Text Apart = new("Total against dial", "Total frente a esfera", "Total contra mostrador");
    public static readonly Text Pulses = new("Pulses lost", "Pulsos perdidos", "Pulsos perdidos");
    public static readonly Text Happened = new("What happened", "Qué pasó", "O que houve");
    public static readonly Text RolledOver = new("rolled over", "vuelta a cero", "virou");
    public static readonly Text Replaced = new("exchanged", "cambiado", "trocado");
    public static readonly Text Reset = new("total reset", "total reiniciado", "total zerado");
    public static readonly Text MeterHow = new(
        "Water = count now − count at the last reading, in litres, with rollover, exchange and reset as events. Its uncertainty (k = 2) holds the meter's own error (2 %; it cancels between dial and total) and one count at each end. Pulses lost = (by the dial − by the total) / litres of a pulse. Source: arithmetic of the register.",
        "Agua = cuenta actual − cuenta de la última lectura, en litros, con vuelta a cero, cambio y reinicio como sucesos. Su incertidumbre (k = 2) incluye el error propio del contador (2 %; se anula entre esfera y total) y una cuenta en cada extremo. Pulsos perdidos = (según la esfera − según el total) / litros por pulso. Fuente: aritmética del registro.",
        "Água = contagem agora − contagem da última leitura, em litros, com virada, troca e zeragem como eventos. A incerteza (k = 2) inclui o erro próprio do hidrômetro (2 %; anula-se entre mostrador e total) e uma contagem em cada ponta. Pulsos perdidos = (pelo mostrador − pelo total) / litros por pulso. Fonte: aritmética do registrador.");

    public static readonly Text NoPump = new("No pump output is known yet", "Aún no se conoce el caudal de ninguna bomba", "Nenhuma vazão de bomba é conhecida ainda");
    public static readonly Text NoPumpMore = new(
        "It takes levels of the drum and hours of the output at two visits, or a timed measuring column.",
        "Hacen falta niveles del bidón y horas de la salida en dos visitas, o una columna de medida cronometrada.",
        "São precisos níveis da bombona e horas da saída em duas visitas, ou uma coluna de medida cronometrada.");

    public static readonly Text PumpOf = new("Pump {0}, drum {1}", "Bomba {0}, bidón {1}", "Bomba {0}, bombona {1}");
    public static readonly Text PumpSummary = new(
        "Last {0} for each hour run; plate {1}; against its own past {2}.",
        "Último {0} por hora de marcha; placa {1}; frente a su propio pasado {2}.",
        "Último {0} por hora de funcionamento; placa {1}; contra o próprio passado {2}.");

    public static readonly Text PumpTrend = new(
        "Trend at this stroke and speed: {0} in 30 days (95 %: {1} to {2}), from {3} stretches that do not overlap.",
        "Tendencia con esta carrera y velocidad: {0} en 30 días (95 %: {1} a {2}), de {3} tramos que no se solapan.",
        "Tendência com este curso e velocidade: {0} em 30 dias (95 %: {1} a {2}), de {3} trechos que não se sobrepõem.");

    public static readonly Text NoTrend = new(
        "Too few stretches that do not overlap for a trend ({0}; it takes 4).",
        "Muy pocos tramos que no se solapan para una tendencia ({0}; hacen falta 4).",
        "Poucos trechos que não se sobrepõem para uma tendência ({0}; são precisos 4).");

    public static readonly Text Output = new("Output for each hour run", "Caudal por hora de marcha", "Vazão por hora de funcionamento");
    public static readonly Text ByDrum = new("By drum and hours", "Según bidón y horas", "Pela bombona e horas");
    public static readonly Text ByColumn = new("By measuring column", "Con columna de medida", "Pela coluna de medida");
    public static readonly Text Plate = new("Plate", "Placa", "Placa");
    public static readonly Text Stretch = new("Since", "Desde", "Desde");
    public static readonly Text HoursRun = new("Hours run", "Horas de marcha", "Horas de funcionamento");
    public static readonly Text Used = new("Drop of the drum", "Bajada del bidón", "Queda da bombona");
    public static readonly Text AgainstOwn = new("Against its own past", "Frente a su pasado", "Contra o próprio passado");
    public static readonly Text AgainstPlate = new("Against the plate", "Frente a la placa", "Contra a placa");
    public static readonly Text PumpHow = new(
        "Output = drop of the drum / hours run, over the shortest stretch in which the pump should have moved twelve times the uncertainty of one level. Stretches of neighbouring visits overlap; the trend takes only those that follow each other. Own past: the first timed column, else the early output at this stroke and speed. Uncertainty (k = 2) of two levels and of the hours.",
        "Caudal = bajada del bidón / horas de marcha, en el tramo más corto en que la bomba debía mover doce veces la incertidumbre de un nivel. Los tramos de visitas vecinas se solapan; la tendencia toma solo los que se siguen. Pasado propio: la primera columna cronometrada o, si no, el caudal inicial con esta carrera y velocidad. Incertidumbre (k = 2) de dos niveles y de las horas.",
        "Vazão = queda da bombona / horas de funcionamento, no trecho mais curto em que a bomba devia mover doze vezes a incerteza de um nível. Trechos de visitas vizinhas se sobrepõem; a tendência usa só os que se seguem. Próprio passado: a primeira coluna cronometrada ou, senão, a vazão inicial com este curso e velocidade. Incerteza (k = 2) de dois níveis e das horas.");

    public static readonly Text Isolate = new(
        "Before opening a pump, valve or injection point: isolate and lock out as the site requires, release pressure.",
        "Antes de abrir una bomba, válvula o punto de inyección: aísle y bloquee según exija el sitio, libere la presión.",
        "Antes de abrir uma bomba, válvula ou ponto de injeção: isole e bloqueie como o local exige, libere a pressão.");
}
