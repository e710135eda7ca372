using System.Text.Json.Nodes;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>Names of the places of a visit's document, for people who compare two of them.</summary>
public static class VisitDifferenceWords
{
    private static readonly Dictionary<string, Text> Words = new(StringComparer.Ordinal)
    {
        ["also"] = new("also there", "también presentes", "também presentes"),
        ["kind"] = new("kind", "tipo", "tipo"),
        ["technician"] = new("technician", "técnico", "técnico"),
        ["site"] = new("site", "sitio", "local"),
        ["reason"] = new("reason", "motivo", "motivo"),
        ["arrived"] = new("arrived", "llegada", "chegada"),
        ["left"] = new("left", "salida", "saída"),
        ["enteredAt"] = new("entered", "introducida", "registrada"),
        ["notes"] = new("notes", "notas", "notas"),
        ["cleaning"] = new("cleaning", "limpieza", "limpeza"),
        ["running"] = new("running", "en marcha", "em marcha"),
        ["inUse"] = new("in use", "en uso", "em uso"),
        ["clockOffByMin"] = new("clock off by, min", "desvío del reloj, min", "desvio do relógio, min"),
        ["programmeWeek"] = new("week of the dose plan", "semana del plan de dosis", "semana do plano de doses"),
        ["readings"] = new("reading", "lectura", "leitura"),
        ["probes"] = new("probe", "sonda", "sonda"),
        ["meters"] = new("water meter", "contador de agua", "hidrômetro"),
        ["drums"] = new("drum", "bidón", "bombona"),
        ["hoursRun"] = new("hours run", "horas de marcha", "horas de funcionamento"),
        ["pumps"] = new("pump", "bomba", "bomba"),
        ["drawdowns"] = new("drawdown", "medición de caudal", "medição de vazão"),
        ["bleedTest"] = new("timed bleed", "purga cronometrada", "purga cronometrada"),
        ["switches"] = new("switch", "selector", "chave"),
        ["settings"] = new("setting", "ajuste", "ajuste"),
        ["maOutput"] = new("output in mA", "salida en mA", "saída em mA"),
        ["additions"] = new("addition", "adición", "adição"),
        ["events"] = new("event", "suceso", "evento"),
        ["alarms"] = new("alarm", "alarma", "alarme"),
        ["observations"] = new("observation", "observación", "observação"),
        ["actions"] = new("action", "acción", "ação"),
        ["photos"] = new("photo", "foto", "foto"),
        ["recommendations"] = new("recommendation", "recomendación", "recomendação"),
        ["signatures"] = new("signature", "firma", "assinatura"),
        ["samples"] = new("sample", "muestra", "amostra"),
        ["value"] = new("value", "valor", "valor"),
        ["unit"] = new("unit", "unidad", "unidade"),
        ["drops"] = new("drops", "gotas", "gotas"),
        ["perDrop"] = new("per drop", "por gota", "por gota"),
        ["basis"] = new("basis", "expresado", "expresso"),
        ["method"] = new("method", "método", "método"),
        ["qualifier"] = new("below or above", "menor o mayor", "menor ou maior"),
        ["notQuantifiable"] = new("not quantifiable", "no cuantificable", "não quantificável"),
        ["notTaken"] = new("not taken because", "no se tomó porque", "não foi feita porque"),
        ["notRead"] = new("not read", "no leído", "não lido"),
        ["instrument"] = new("instrument", "instrumento", "instrumento"),
        ["lot"] = new("lot", "lote", "lote"),
        ["dilution"] = new("dilution", "dilución", "diluição"),
        ["sample"] = new("sample, mL", "muestra, mL", "amostra, mL"),
        ["firstValue"] = new("value first typed", "valor escrito primero", "valor digitado primeiro"),
        ["firstDial"] = new("dial first typed", "esfera escrita primero", "mostrador digitado primeiro"),
        ["firstTotal"] = new("total first typed", "total escrito primero", "total digitado primeiro"),
        ["firstLevel"] = new("level first typed", "nivel escrito primero", "nível digitado primeiro"),
        ["firstHours"] = new("hours first typed", "horas escritas primero", "horas digitadas primeiro"),
        ["confirmed"] = new("confirmed by reading again", "confirmado al leer de nuevo", "confirmado ao ler de novo"),
        ["source"] = new("read from", "leído de", "lido de"),
        ["phase"] = new("when", "cuándo", "quando"),
        ["takenAt"] = new("taken", "tomada", "coletada"),
        ["resultAt"] = new("result came in", "llegada del resultado", "chegada do resultado"),
        ["receivedAt"] = new("received at the laboratory", "recibida en el laboratorio", "recebida no laboratório"),
        ["lab"] = new("laboratory", "laboratorio", "laboratório"),
        ["labRef"] = new("reference of the laboratory", "referencia del laboratorio", "referência do laboratório"),
        ["sampleId"] = new("bottle", "frasco", "frasco"),
        ["incubation"] = new("incubation", "incubación", "incubação"),
        ["degC"] = new("temperature, °C", "temperatura, °C", "temperatura, °C"),
        ["hours"] = new("hours", "horas", "horas"),
        ["of"] = new("of", "de", "de"),
        ["settledMin"] = new("settled for, min", "asentado, min", "estabilizado, min"),
        ["asFound"] = new("as found", "como se encontró", "como encontrado"),
        ["reference"] = new("reference", "referencia", "referência"),
        ["afterCleaning"] = new("after cleaning", "tras limpiar", "após limpar"),
        ["asLeft"] = new("as left", "como se dejó", "como deixado"),
        ["calibrated"] = new("calibrated", "calibrada", "calibrada"),
        ["calibration"] = new("calibration", "calibración", "calibração"),
        ["against"] = new("against", "con", "com"),
        ["standardValue"] = new("standard", "patrón", "padrão"),
        ["standardLot"] = new("lot of the standard", "lote del patrón", "lote do padrão"),
        ["factorBefore"] = new("factor before", "factor antes", "fator antes"),
        ["factorAfter"] = new("factor after", "factor después", "fator depois"),
        ["found"] = new("found", "encontrado", "encontrado"),
        ["dial"] = new("dial", "esfera", "mostrador"),
        ["total"] = new("total", "total", "total"),
        ["replaced"] = new("replaced", "cambiado", "trocado"),
        ["reset"] = new("reset", "reiniciado", "zerado"),
        ["oldFinal"] = new("last count of the old one", "última cuenta del anterior", "última contagem do anterior"),
        ["newStart"] = new("first count of the new one", "primera cuenta del nuevo", "primeira contagem do novo"),
        ["replacedOn"] = new("replaced on", "cambiado el", "trocado em"),
        ["before"] = new("before", "antes", "antes"),
        ["after"] = new("after", "después", "depois"),
        ["level"] = new("level", "nivel", "nível"),
        ["addedL"] = new("added, L", "añadido, L", "adicionado, L"),
        ["removedL"] = new("taken out, L", "retirado, L", "retirado, L"),
        ["swapped"] = new("container exchanged", "envase cambiado", "recipiente trocado"),
        ["spareL"] = new("spare on site, L", "reserva en el sitio, L", "reserva no local, L"),
        ["productFound"] = new("product found", "producto encontrado", "produto encontrado"),
        ["strokeFound"] = new("stroke found", "carrera encontrada", "curso encontrado"),
        ["strokeLeft"] = new("stroke left", "carrera dejada", "curso deixado"),
        ["speedFound"] = new("speed found", "velocidad encontrada", "velocidade encontrada"),
        ["speedLeft"] = new("speed left", "velocidad dejada", "velocidade deixada"),
        ["millilitres"] = new("millilitres", "mililitros", "mililitros"),
        ["litres"] = new("litres", "litros", "litros"),
        ["seconds"] = new("seconds", "segundos", "segundos"),
        ["step"] = new("display step", "paso de la pantalla", "passo do visor"),
        ["amount"] = new("amount", "cantidad", "quantidade"),
        ["to"] = new("to", "a", "para"),
        ["at"] = new("at", "a las", "às"),
        ["type"] = new("event", "suceso", "evento"),
        ["by"] = new("by", "por", "por"),
        ["note"] = new("note", "nota", "nota"),
        ["text"] = new("text", "texto", "texto"),
        ["output"] = new("output", "salida", "saída"),
        ["standing"] = new("standing", "presente", "presente"),
        ["about"] = new("about", "sobre", "sobre"),
        ["severity"] = new("how soon", "urgencia", "urgência"),
        ["for"] = new("for", "para", "para"),
        ["owner"] = new("owner", "responsable", "responsável"),
        ["due"] = new("due", "vence", "vence"),
        ["state"] = new("state", "estado", "estado"),
        ["consequence"] = new("otherwise", "de lo contrario", "caso contrário"),
        ["sha256"] = new("hash of the picture", "huella de la imagen", "hash da imagem"),
        ["name"] = new("name", "nombre", "nome"),
        ["role"] = new("role", "función", "função"),
        ["absentReason"] = new("not signed because", "sin firma porque", "sem assinatura porque"),
        ["bottle"] = new("bottle", "frasco", "frasco"),
        ["point"] = new("point", "punto", "ponto"),
        ["temperatureCel"] = new("temperature, °C", "temperatura, °C", "temperatura, °C"),
        ["residualMgPerL"] = new("residual, mg/L", "residual, mg/L", "residual, mg/L"),
        ["test"] = new("test", "ensayo", "ensaio"),
        ["system"] = new("system", "sistema", "sistema"),
        ["meter"] = new("water meter", "contador de agua", "hidrômetro"),
        ["drum"] = new("drum", "bidón", "bombona"),
        ["pump"] = new("pump", "bomba", "bomba"),
        ["probe"] = new("probe", "sonda", "sonda"),
        ["product"] = new("product", "producto", "produto"),
        ["id"] = new("identity", "identidad", "identidade"),
        ["amendedBy"] = new("amended by", "corregida por", "corrigida por"),
        ["amendedAt"] = new("amended", "corregida", "corrigida"),
        ["version"] = new("version", "versión", "versão"),
        ["amends"] = new("amends version", "corrige la versión", "corrige a versão"),
        ["systems"] = new("system", "sistema", "sistema"),
    };

    /// <summary>Whether a field of the document has a name for people.</summary>
    public static bool Knows(string field) => Words.ContainsKey(field);

    /// <summary>Name of a field.</summary>
    public static Text NameOf(string field) => Words.TryGetValue(field, out var word) ? word : new Text(field, field, field);

    /// <summary>Name of a reading: test, point, and how it was read where that is not the test kit.</summary>
    public static Text NameOfReading(JsonObject reading)
    {
        var name = TestTexts.NameOf(reading["test"]!.ToString());
        var point = TestTexts.NameOfPoint(reading["at"]!.ToString());
        Text[] more =
        [
            point,
            .. reading["source"] is { } source && source.ToString() != "kit" ? [VisitDifferenceValues.Of(reading, "source", TimeZoneInfo.Utc)] : Array.Empty<Text>(),
            .. reading["phase"] is null ? Array.Empty<Text>() : [VisitDifferenceValues.Of(reading, "phase", TimeZoneInfo.Utc)],
        ];
        return new Text(
            $"{name.En} ({string.Join(", ", more.Select(part => part.En))})",
            $"{name.Es} ({string.Join(", ", more.Select(part => part.Es))})",
            $"{name.Pt} ({string.Join(", ", more.Select(part => part.Pt))})");
    }

    /// <summary>Names from the outside in.</summary>
    public static Text Joined(IReadOnlyList<Text> parts) => new(
        string.Join(" · ", parts.Select(part => part.En)),
        string.Join(" · ", parts.Select(part => part.Es)),
        string.Join(" · ", parts.Select(part => part.Pt)));
}
