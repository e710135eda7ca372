using LogBook.Domain.Languages;
using LogBook.Domain.Settings;

namespace LogBook.Web.Features.Settings;

/// <summary>Words of "Settings then and now" and of the re-entry sheet.</summary>
public static class SettingsTexts
{
    public static readonly Text Title = new("Settings then and now", "Ajustes antes y ahora", "Ajustes antes e agora");
    public static readonly Text ReEntry = new("Re-entry sheet", "Hoja de reingreso", "Folha de reinserção");
    public static readonly Text ToReEntry = new("Re-entry sheet of the day before", "Hoja de reingreso del día anterior", "Folha de reinserção do dia anterior");
    public static readonly Text ToSettings = new("Settings at that day", "Ajustes en ese día", "Ajustes naquele dia");
    public static readonly Text On = new("As of day", "Al día", "No dia");
    public static readonly Text Today = new("Today", "Hoy", "Hoje");
    public static readonly Text ReadDays = new("Days on which settings were read", "Días en que se leyeron ajustes", "Dias em que ajustes foram lidos");
    public static readonly Text ProgrammeFrom = new("Programme in force", "Programa en vigor", "Programa em vigor");
    public static readonly Text FromDay = new("from {0}", "desde {0}", "desde {0}");
    public static readonly Text NoProgramme = new("none on that day", "ninguno ese día", "nenhum nesse dia");
    public static readonly Text LastVisit = new("Last visit by then", "Última visita hasta entonces", "Última visita até então");
    public static readonly Text NoVisit = new("none", "ninguna", "nenhuma");
    public static readonly Text Away = new("Changed while nobody was here", "Cambió mientras no había nadie", "Mudou enquanto não havia ninguém");
    public static readonly Text NothingAway = new("No setting was found otherwise than it was left.", "Ningún ajuste se encontró distinto de como se dejó.", "Nenhum ajuste foi encontrado diferente de como foi deixado.");
    public static readonly Text FromTo = new("{0}: left at {1}; found: {2}", "{0}: se dejó en {1}; encontrado: {2}", "{0}: deixado em {1}; encontrado: {2}");
    public static readonly Text Targets = new("Target, setting, measured", "Objetivo, ajuste, medido", "Alvo, ajuste, medido");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text Target = new("Target", "Objetivo", "Alvo");
    public static readonly Text Setting = new("Setting", "Ajuste", "Ajuste");
    public static readonly Text AtSetting = new("This setting gives", "Este ajuste da", "Este ajuste dá");
    public static readonly Text Measured = new("Measured", "Medido", "Medido");
    public static readonly Text Cycles = new("{0} cycles", "{0} ciclos", "{0} ciclos");
    public static readonly Text NotWorked = new("cannot be worked out", "no se puede calcular", "não se pode calcular");
    public static readonly Text NotMeasured = new("not measured", "sin medir", "não medido");
    public static readonly Text All = new("All settings", "Todos los ajustes", "Todos os ajustes");
    public static readonly Text Programme = new("Programme asks", "El programa pide", "O programa pede");
    public static readonly Text LeftAt = new("As last left", "Como se dejó por última vez", "Como foi deixado por último");
    public static readonly Text Changes = new("How it came to that", "Cómo llegó a eso", "Como chegou a isso");
    public static readonly Text NeverRead = new("never read", "nunca leído", "nunca lido");
    public static readonly Text ReadTimes = new("read {0} times, unchanged", "leído {0} veces, sin cambios", "lido {0} vezes, sem mudança");
    public static readonly Text ReadOnce = new("read once", "leído una vez", "lido uma vez");
    public static readonly Text StepFirst = new("{0}: first read {1}", "{0}: primera lectura {1}", "{0}: primeira leitura {1}");
    public static readonly Text StepAway = new("{0}: found {1}, changed while nobody was here; left {2}", "{0}: encontrado {1}, cambió sin nadie; dejado {2}", "{0}: encontrado {1}, mudou sem ninguém; deixado {2}");
    public static readonly Text StepHere = new("{0}: found {1}, set to {2}", "{0}: encontrado {1}, puesto en {2}", "{0}: encontrado {1}, posto em {2}");
    public static readonly Text Because = new(" ({0})", " ({0})", " ({0})");
    public static readonly Text At4Ma = new("Value at 4 mA", "Valor a 4 mA", "Valor a 4 mA");
    public static readonly Text At20Ma = new("Value at 20 mA", "Valor a 20 mA", "Valor a 20 mA");
    public static readonly Text Empty = new("No programme and no setting read by that day", "Ningún programa ni ajuste leído hasta ese día", "Nenhum programa nem ajuste lido até esse dia");
    public static readonly Text EmptyMore = new(
        "Settings come from the programme in the set-up and from what visits read at the controller.",
        "Los ajustes vienen del programa en la configuración y de lo que las visitas leen en el controlador.",
        "Os ajustes vêm do programa na configuração e do que as visitas leem no controlador.");

    public static readonly Text SheetIntro = new(
        "Settings as they stood at the end of {0}. Enter them one by one, tick each, then read them back from the controller. LogBook enters nothing.",
        "Ajustes tal como estaban al final del {0}. Ingréselos uno por uno, marque cada uno y después léalos en el controlador. LogBook no ingresa nada.",
        "Ajustes como estavam no fim de {0}. Insira um a um, marque cada um e depois leia-os no controlador. O LogBook não insere nada.");

    public static readonly Text SheetCaution = new(
        "Entering settings may start a pump or open a valve at once. Nobody at the equipment? Lines connected? A line with a stop is not entered: the label is the limit. A competent person approves the sheet first.",
        "Al ingresar ajustes puede arrancar una bomba o abrirse una válvula de inmediato. ¿Nadie junto al equipo? ¿Líneas conectadas? Una línea con alto no se ingresa: la etiqueta es el límite. Antes aprueba la hoja una persona competente.",
        "Inserir ajustes pode ligar uma bomba ou abrir uma válvula na hora. Ninguém junto ao equipamento? Linhas conectadas? Uma linha com pare não é inserida: o rótulo é o limite. Antes uma pessoa competente aprova a folha.");

    public static readonly Text PageOf = new("Page {0} of {1}", "Página {0} de {1}", "Página {0} de {1}");
    public static readonly Text Pdf = new("As PDF", "En PDF", "Em PDF");
    public static readonly Text Print = new("Print", "Imprimir", "Imprimir");
    public static readonly Text Done = new("Entered", "Ingresado", "Inserido");
    public static readonly Text Value = new("Value", "Valor", "Valor");
    public static readonly Text ReadBack = new("Read back", "Leído de vuelta", "Lido de volta");
    public static readonly Text Source = new("Where from", "De dónde", "De onde");
    public static readonly Text AsLeftOn = new("as left on {0}", "como se dejó el {0}", "como foi deixado em {0}");
    public static readonly Text ByProgramme = new("by the programme, never read", "según el programa, nunca leído", "pelo programa, nunca lido");
    public static readonly Text ProgrammeAsked = new("programme asked {0}", "el programa pedía {0}", "o programa pedia {0}");
    public static readonly Text Later = new("Changed since then", "Cambiado desde entonces", "Mudou desde então");
    public static readonly Text OpenFindings = new("Open findings to know first", "Hallazgos abiertos que conviene saber antes", "Constatações abertas a saber antes");
    public static readonly Text OpenBeside = new("Open findings about it", "Hallazgos abiertos sobre ello", "Constatações abertas sobre isso");
    public static readonly Text MoreToWatch = new("{0} more to watch", "{0} más por observar", "mais {0} a observar");
    public static readonly Text NeverReadShort = new("programme, never read", "programa, nunca leído", "programa, nunca lido");
    public static readonly Text LeftOn = new("as left on {0}", "como quedó el {0}", "deixado em {0}");
    public static readonly Text ToWatch = new("{0} more to watch, about none of the lines", "{0} más para vigilar, sobre ninguna de las líneas", "mais {0} a observar, sobre nenhuma das linhas");
    public static readonly Text WeekToday = new("Today is week {0} of {1} of the dose plan.", "Hoy es la semana {0} de {1} del plan de dosis.", "Hoje é a semana {0} de {1} do plano de doses.");
    public static readonly Text SetClock = new("Set clock and day first; today is {0}.", "Ajuste primero reloj y día; hoy es {0}.", "Ajuste antes relógio e dia; hoje é {0}.");
    public static readonly Text Supervisor = new("Supervisor: name, signature, date", "Supervisor: nombre, firma, fecha", "Supervisor: nome, assinatura, data");
    public static readonly Text EnteredBy = new("Entered by: name, signature, date and time", "Ingresado por: nombre, firma, fecha y hora", "Inserido por: nome, assinatura, data e hora");
    public static readonly Text ReadBackBy = new("Read back by: name, signature", "Leído de vuelta por: nombre, firma", "Lido de volta por: nome, assinatura");
    public static readonly Text Check = new("Check what was read back", "Comprobar lo leído de vuelta", "Verificar o que foi lido de volta");
    public static readonly Text CheckIntro = new(
        "Type what the controller shows now. Leave empty what nobody looked at. Nothing is stored.",
        "Escriba lo que muestra ahora el controlador. Deje vacío lo que nadie miró. No se guarda nada.",
        "Digite o que o controlador mostra agora. Deixe vazio o que ninguém olhou. Nada é guardado.");
    public static readonly Text Agrees = new("as on the sheet", "como en la hoja", "como na folha");
    public static readonly Text Differs = new("differs: sheet says {0}", "difiere: la hoja dice {0}", "difere: a folha diz {0}");
    public static readonly Text NotLooked = new("not looked at", "sin mirar", "não olhado");
    public static readonly Text NotANumber = new(
        "{0}: “{1}” is not a number; expected is one like {2}.", "{0}: «{1}» no es un número; se espera uno como {2}.", "{0}: “{1}” não é um número; espera-se um como {2}.");
    public static readonly Text TwoMeanings = new(
        "{0}: “{1}” can be {2} or {3}; write it without a thousands sign.", "{0}: «{1}» puede ser {2} o {3}; escríbalo sin signo de miles.", "{0}: “{1}” pode ser {2} ou {3}; escreva sem sinal de milhar.");
    public static readonly Text CheckSays = new("{0} as on the sheet, {1} differ, {2} not looked at.", "{0} como en la hoja, {1} difieren, {2} sin mirar.", "{0} como na folha, {1} diferem, {2} não olhados.");
    public static readonly Text AtVisit = new("As left at the visit of {0}", "Como se dejó en la visita del {0}", "Como foi deixado na visita de {0}");
    public static readonly Text FeedOf = new("Feed at output {0}", "Dosificación en la salida {0}", "Dosagem na saída {0}");
    public static readonly Text FeedOfProduct = new("{0}, output {1}", "{0}, salida {1}", "{0}, saída {1}");
    public static readonly Text LabelNow = new("Label on file today: {0}", "Etiqueta en la ficha hoy: {0}", "Rótulo no cadastro hoje: {0}");
    public static readonly Text LabelMax = new("at most {0} a dose", "como máximo {0} por dosis", "no máximo {0} por dose");
    public static readonly Text LabelWeek = new("at most {0} a week", "como máximo {0} por semana", "no máximo {0} por semana");
    public static readonly Text LabelGap = new("{0} from dose to dose", "{0} de dosis a dosis", "{0} de dose a dose");
    public static readonly Text LabelContact = new("{0} of contact", "{0} de contacto", "{0} de contato");

    /// <summary>Name of a purpose.</summary>
    public static Text NameOf(SettingPurpose purpose) => purpose switch
    {
        SettingPurpose.Bleed => new("Bleed", "Purga", "Purga"),
        SettingPurpose.Limits => new("Alarms and time limits", "Alarmas y límites de tiempo", "Alarmes e limites de tempo"),
        SettingPurpose.Calendar => new("Weeks of the dose plan", "Semanas del plan de dosis", "Semanas do plano de doses"),
        SettingPurpose.Feed => new("Feeds", "Dosificaciones", "Dosagens"),
        SettingPurpose.Display => new("Display and current output", "Pantalla y salida de corriente", "Visor e saída de corrente"),
        _ => new("Also read at the controller", "También leído en el controlador", "Também lido no controlador"),
    };
}
