using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Assessments;

/// <summary>Names, explanations and units of figures for people.</summary>
public static class FigureTexts
{
    private static readonly Text BalanceWithCycles = new("Mass balance of a well-mixed system; conductivity against cycles computed with PHREEQC", "Balance de masa de un sistema bien mezclado; conductividad frente a ciclos calculada con PHREEQC", "Balanço de massa de um sistema bem misturado; condutividade contra ciclos calculada com PHREEQC");
    private static readonly Text DoseBalance = new("Mass balance; dose as product", "Balance de masa; dosis como producto", "Balanço de massa; dose como produto");
    private static readonly Text ProbeSource = new("USGS TM1-D3 as summarised at nemi.gov; straight line as in the NIST/SEMATECH e-Handbook", "USGS TM1-D3 según el resumen de nemi.gov; recta como en el e-Handbook de NIST/SEMATECH", "USGS TM1-D3 segundo o resumo de nemi.gov; reta como no e-Handbook NIST/SEMATECH");
    private static readonly Text Geometry = new("Geometry of the drum", "Geometría del bidón", "Geometria da bombona");
    private static readonly Text Arithmetic = new("Arithmetic of the register", "Aritmética del contador", "Aritmética do registrador");
    private static readonly Text OwnBaseline = new("Own baseline first; common practice, no source", "Primero la referencia propia; práctica común, sin fuente", "Primeiro a referência própria; prática comum, sem fonte");
    private static readonly Text Balance = new("Follows from the mass balance", "Se deduce del balance de masa", "Decorre do balanço de massa");

    private static readonly Dictionary<string, (Text Name, FigureExplanation How)> All = new(StringComparer.Ordinal)
    {
        [FigureCodes.CyclesByConductivity] = (
            new("Cycles by conductivity", "Ciclos por conductividad", "Ciclos por condutividade"),
            new(
                new(
                    "Conductivity of the tower water over that of the make-up, divided by what conductivity reads low at these cycles (the system's own ratio, before a baseline 1 − 0.025 (C − 1))",
                    "Conductividad del agua de la torre entre la de reposición, dividida por lo que la conductividad lee de menos a estos ciclos (la relación propia del sistema; antes de tenerla, 1 − 0,025 (C − 1))",
                    "Condutividade da água da torre sobre a da reposição, dividida pelo que a condutividade lê a menos nestes ciclos (a relação própria do sistema; antes dela, 1 − 0,025 (C − 1))"),
                BalanceWithCycles)),
        [FigureCodes.CyclesByChloride] = (
            new("Cycles by chloride", "Ciclos por cloruro", "Ciclos por cloreto"),
            new(
                new(
                    "Chloride of the tower water over that of the make-up",
                    "Cloruro del agua de la torre entre el de reposición",
                    "Cloreto da água da torre sobre o da reposição"),
                BalanceWithCycles)),
        [FigureCodes.CyclesByCalcium] = (
            new("Cycles by calcium", "Ciclos por calcio", "Ciclos por cálcio"),
            new(
                new(
                    "Calcium of the tower water over that of the make-up; reads low where calcium is being lost as deposit",
                    "Calcio del agua de la torre entre el de reposición; lee de menos donde el calcio se deposita",
                    "Cálcio da água da torre sobre o da reposição; lê a menos onde o cálcio se deposita"),
                BalanceWithCycles)),
        [FigureCodes.CyclesBySilica] = (
            new("Cycles by silica", "Ciclos por sílice", "Ciclos por sílica"),
            new(
                new(
                    "Silica of the tower water over that of the make-up",
                    "Sílice del agua de la torre entre la de reposición",
                    "Sílica da água da torre sobre a da reposição"),
                BalanceWithCycles)),
        [FigureCodes.CyclesByVolume] = (
            new("Cycles by volume", "Ciclos por volumen", "Ciclos por volume"),
            new(
                new(
                    "Make-up over controlled bleed; reads high by drift and leaks, which the bleed does not count",
                    "Reposición entre purga controlada; lee de más por arrastre y fugas, que la purga no cuenta",
                    "Reposição sobre purga controlada; lê a mais por arraste e vazamentos, que a purga não conta"),
                BalanceWithCycles)),
        [FigureCodes.CyclesBest] = (
            new("Cycles", "Ciclos", "Ciclos"),
            new(
                new(
                    "Mean of the routes that agree within their uncertainty, weighted by it",
                    "Media de las vías que concuerdan dentro de su incertidumbre, ponderada por ella",
                    "Média das vias que concordam dentro da sua incerteza, ponderada por ela"),
                BalanceWithCycles)),
        [FigureCodes.MakeUp] = (
            new("Make-up", "Reposición", "Reposição"),
            new(
                new(
                    "Count of the meter now minus at the last reading, with rollover, reset and replacement as events",
                    "Cuenta del contador ahora menos la de la última lectura, con vuelta a cero, reinicio y cambio como sucesos",
                    "Contagem do hidrômetro agora menos a da última leitura, com virada, zeragem e troca como eventos"),
                Arithmetic)),
        [FigureCodes.Bleed] = (
            new("Bleed", "Purga", "Purga"),
            new(
                new(
                    "Hours the bleed was open times the flow of its valve, or the bleed meter",
                    "Horas de purga abierta por el caudal de su válvula, o el contador de purga",
                    "Horas de purga aberta vezes a vazão da válvula, ou o hidrômetro da purga"),
                Balance)),
        [FigureCodes.BleedHours] = (
            new("Bleed hours", "Horas de purga", "Horas de purga"),
            new(
                new(
                    "Hours run now minus at the last reading",
                    "Horas de marcha ahora menos las de la última lectura",
                    "Horas de funcionamento agora menos as da última leitura"),
                Balance)),
        [FigureCodes.LiquidLoss] = (
            new("Water lost as liquid", "Agua perdida como líquido", "Água perdida como líquido"),
            new(
                new(
                    "Make-up over cycles: W = M / C",
                    "Reposición entre ciclos: W = M / C",
                    "Reposição sobre ciclos: W = M / C"),
                BalanceWithCycles)),
        [FigureCodes.BleedHoursPerVolume] = (
            new("Bleed hours for each m³ of make-up", "Horas de purga por m³ de reposición", "Horas de purga por m³ de reposição"),
            new(
                new(
                    "Hours the bleed was open over the make-up of the same days",
                    "Horas de purga abierta entre la reposición de los mismos días",
                    "Horas de purga aberta sobre a reposição dos mesmos dias"),
                Balance)),
        [FigureCodes.MakeUpPerDay] = (
            new("Make-up a day", "Reposición por día", "Reposição por dia"),
            new(
                new(
                    "Make-up over the days of the interval",
                    "Reposición entre los días del intervalo",
                    "Reposição sobre os dias do intervalo"),
                Arithmetic)),
        [FigureCodes.LiquidLossPerDay] = (
            new("Water lost as liquid a day", "Agua perdida como líquido por día", "Água perdida como líquido por dia"),
            new(
                new(
                    "Water lost as liquid over the days of the interval",
                    "Agua perdida como líquido entre los días del intervalo",
                    "Água perdida como líquido sobre os dias do intervalo"),
                BalanceWithCycles)),
        [FigureCodes.Evaporation] = (
            new("Evaporation", "Evaporación", "Evaporação"),
            new(
                new(
                    "Make-up minus liquid loss: E = M − M / C",
                    "Reposición menos pérdida líquida: E = M − M / C",
                    "Reposição menos perda líquida: E = M − M / C"),
                BalanceWithCycles)),
        [FigureCodes.UnexplainedLoss] = (
            new("Loss not explained by the bleed", "Pérdida que la purga no explica", "Perda que a purga não explica"),
            new(
                new(
                    "Make-up over cycles minus bleed minus known drains",
                    "Reposición entre ciclos menos purga menos vaciados conocidos",
                    "Reposição sobre ciclos menos purga menos esvaziamentos conhecidos"),
                Balance)),
        [FigureCodes.ProductUsed] = (
            new("Product used", "Producto usado", "Produto usado"),
            new(
                new(
                    "First level − last level + deliveries − taken out + additions by hand, over the window",
                    "Primer nivel − último nivel + entregas − retirado + adiciones a mano, en el periodo",
                    "Primeiro nível − último nível + entregas − retirado + adições manuais, no período"),
                Geometry)),
        [FigureCodes.ProductExpected] = (
            new("Product expected", "Producto esperado", "Produto esperado"),
            new(
                new(
                    "Target level times water lost as liquid over density (plus the charge after a refill); calendar doses: doses planned times the amount of each",
                    "Nivel objetivo por agua perdida como líquido entre densidad (más la carga tras un rellenado); dosis de calendario: dosis previstas por la cantidad de cada una",
                    "Nível alvo vezes água perdida como líquido sobre densidade (mais a carga após um enchimento); doses de calendário: doses previstas vezes a quantidade de cada uma"),
                DoseBalance)),
        [FigureCodes.UsedOverExpected] = (
            new("Used over expected", "Usado entre esperado", "Usado sobre esperado"),
            new(
                new(
                    "Product used over product expected, over the shortest window whose expected use is at least 12 times the uncertainty of one level",
                    "Producto usado entre producto esperado, en el periodo más corto cuyo uso esperado es al menos 12 veces la incertidumbre de un nivel",
                    "Produto usado sobre produto esperado, no período mais curto cujo uso esperado é ao menos 12 vezes a incerteza de um nível"),
                DoseBalance)),
        [FigureCodes.ProductPerVolume] = (
            new("Product for each m³ of make-up", "Producto por m³ de reposición", "Produto por m³ de reposição"),
            new(
                new(
                    "Product used over the make-up of the same days",
                    "Producto usado entre la reposición de los mismos días",
                    "Produto usado sobre a reposição dos mesmos dias"),
                DoseBalance)),
        [FigureCodes.MakeUpShift] = (
            new("Make-up against its own past", "Reposición frente a su pasado", "Reposição contra o próprio passado"),
            new(
                new(
                    "100 (reading − median of the last twelve readings of the make-up that were not themselves shifted) / that median; own spread: their standard deviation, at least the uncertainty of one reading",
                    "100 (lectura − mediana de las últimas doce lecturas de la reposición no desplazadas) / esa mediana; dispersión propia: su desviación estándar, al menos la incertidumbre de una lectura",
                    "100 (leitura − mediana das doze últimas leituras da reposição não deslocadas) / essa mediana; dispersão própria: o desvio padrão delas, no mínimo a incerteza de uma leitura"),
                OwnBaseline)),
        [FigureCodes.ProbeError] = (
            new("Probe error", "Error de la sonda", "Erro da sonda"),
            new(
                new(
                    "100 (as found − reference) / reference",
                    "100 (como se encontró − referencia) / referencia",
                    "100 (como encontrado − referência) / referência"),
                ProbeSource)),
        [FigureCodes.ProbeDrift] = (
            new("Probe drift", "Deriva de la sonda", "Deriva da sonda"),
            new(
                new(
                    "Slope of the straight line through the as-found errors since the last calibration, cleaning or new probe, all by one hand meter (least squares): b = Σ(t − t̄)(e − ē) / Σ(t − t̄)²; its uncertainty is s / √Σ(t − t̄)², s the scatter about the line with n − 2",
                    "Pendiente de la recta por los errores encontrados desde la última calibración, limpieza o sonda nueva, todos con un mismo medidor (mínimos cuadrados): b = Σ(t − t̄)(e − ē) / Σ(t − t̄)²; su incertidumbre es s / √Σ(t − t̄)², s la dispersión en torno a la recta con n − 2",
                    "Inclinação da reta pelos erros encontrados desde a última calibração, limpeza ou sonda nova, todos com um mesmo medidor (mínimos quadrados): b = Σ(t − t̄)(e − ē) / Σ(t − t̄)²; sua incerteza é s / √Σ(t − t̄)², s a dispersão em torno da reta com n − 2"),
                ProbeSource)),
        [FigureCodes.DaysToEmpty] = (
            new("Runs out about", "Se agota hacia", "Acaba por volta de"),
            new(
                new(
                    "Usable volume now over use a day of running; use a day = used over days of running (15 % for load and season go into its uncertainty), or used over the doses planned then, times those planned in the next 70 days. It is empty between the days on which use × days − volume lies within its expanded uncertainty (k = 2) of zero",
                    "Volumen útil ahora entre uso por día de marcha; uso por día = usado entre días de marcha (un 15 % por carga y temporada entra en su incertidumbre), o usado entre las dosis previstas entonces, por las previstas en los próximos 70 días. Se vacía entre los días en que uso × días − volumen queda a menos de su incertidumbre expandida (k = 2) de cero",
                    "Volume útil agora sobre uso por dia de operação; uso por dia = usado sobre dias de operação (15 % por carga e temporada entram na sua incerteza), ou usado sobre as doses previstas então, vezes as previstas nos próximos 70 dias. Esvazia entre os dias em que uso × dias − volume fica a menos da sua incerteza expandida (k = 2) de zero"),
                Balance)),
        [FigureCodes.ProductMissing] = (
            new("Product missing until then", "Producto que falta hasta entonces", "Produto que falta até lá"),
            new(
                new(
                    "Use a day × days of running from the last reading until the day it must last to − what the pump could draw at that reading; suggested is its upper end (k = 2) in whole litres, nothing where that is below zero",
                    "Uso por día × días de marcha desde la última lectura hasta el día que debe alcanzar − lo que la bomba podía aspirar en esa lectura; lo sugerido es su extremo superior (k = 2) en litros enteros, nada si queda bajo cero",
                    "Uso por dia × dias de operação da última leitura até o dia que deve alcançar − o que a bomba podia aspirar nessa leitura; o sugerido é a ponta superior (k = 2) em litros inteiros, nada se ficar abaixo de zero"),
                new(
                    "Mass balance; the day it must last to is common practice, no source",
                    "Balance de masa; el día que debe alcanzar es práctica común, sin fuente",
                    "Balanço de massa; o dia que deve alcançar é prática comum, sem fonte"))),
        [FigureCodes.Difference] = (
            new("Difference", "Diferencia", "Diferença"),
            new(
                new(
                    "First minus second; u = √(u₁² + u₂²), taken as independent: what one hand meter brings into both is no longer known apart, so it may be too wide",
                    "Primero menos segundo; u = √(u₁² + u₂²), tomados como independientes: lo que un mismo medidor aporta a ambos ya no se conoce aparte, así que puede ser demasiado ancha",
                    "Primeiro menos segundo; u = √(u₁² + u₂²), tomados como independentes: o que um mesmo medidor traz aos dois já não se conhece à parte, então pode ser larga demais"),
                new(
                    "Propagation of uncertainty after the GUM (JCGM 100:2008)",
                    "Propagación de la incertidumbre según la GUM (JCGM 100:2008)",
                    "Propagação da incerteza segundo o GUM (JCGM 100:2008)"))),
        [FigureCodes.PumpOutput] = (
            new("Pump output", "Caudal de la bomba", "Vazão da bomba"),
            new(
                new(
                    "Drop of the drum per hour run",
                    "Bajada del bidón por hora de marcha",
                    "Queda da bombona por hora de funcionamento"),
                Balance)),
    };

    private static readonly Dictionary<string, Text> Inputs = new(StringComparer.Ordinal)
    {
        ["tower"] = new("tower water", "agua de la torre", "água da torre"),
        ["make-up-mean"] = new("make-up water, fading mean", "agua de reposición, media ponderada", "água de reposição, média ponderada"),
        ["under-reading"] = new("conductivity reads low by the factor", "la conductividad lee de menos por el factor", "a condutividade lê a menos pelo fator"),
        ["first-count"] = new("count at the earlier reading", "cuenta en la lectura anterior", "contagem na leitura anterior"),
        ["last-count"] = new("count now", "cuenta ahora", "contagem agora"),
        ["make-up"] = new("make-up", "reposición", "reposição"),
        ["cycles"] = new("cycles", "ciclos", "ciclos"),
        ["bleed"] = new("bleed", "purga", "purga"),
        ["bleed-hours"] = new("bleed hours", "horas de purga", "horas de purga"),
        ["valve-flow"] = new("flow of the bleed valve", "caudal de la válvula de purga", "vazão da válvula de purga"),
        ["known-drains"] = new("known drains", "vaciados conocidos", "esvaziamentos conhecidos"),
        ["liquid-loss"] = new("water lost as liquid", "agua perdida como líquido", "água perdida como líquido"),
        ["first-level"] = new("first level", "primer nivel", "primeiro nível"),
        ["last-level"] = new("last level", "último nivel", "último nível"),
        ["deliveries"] = new("deliveries", "entregas", "entregas"),
        ["removed"] = new("taken out", "retirado", "retirado"),
        ["additions"] = new("added by hand", "añadido a mano", "adicionado à mão"),
        ["target"] = new("target level as product", "nivel objetivo como producto", "nível alvo como produto"),
        ["density"] = new("density", "densidad", "densidade"),
        ["charge"] = new("charge after refill", "carga tras rellenado", "carga após enchimento"),
        ["doses"] = new("doses planned", "dosis previstas", "doses previstas"),
        ["dose-amount"] = new("amount of one dose", "cantidad de una dosis", "quantidade de uma dose"),
        ["used"] = new("product used", "producto usado", "produto usado"),
        ["expected"] = new("product expected", "producto esperado", "produto esperado"),
        ["window-days"] = new("days of the window", "días del periodo", "dias do período"),
        ["as-found"] = new("as found", "como se encontró", "como encontrado"),
        ["reference"] = new("reference", "referencia", "referência"),
        ["interval-days"] = new("days of the interval", "días del intervalo", "dias do intervalo"),
        ["now"] = new("reading", "lectura", "leitura"),
        ["usual"] = new("own normal", "valor habitual propio", "valor habitual próprio"),
        ["spread"] = new("own spread", "dispersión propia", "dispersão própria"),
        ["points"] = new("as-found errors in the series", "errores encontrados en la serie", "erros encontrados na série"),
        ["days"] = new("days from first to last", "días del primero al último", "dias do primeiro ao último"),
        ["error-on"] = new("error as found on", "error encontrado el", "erro encontrado em"),
        ["line-start"] = new("error on the line at its first point", "error en la recta en su primer punto", "erro na reta no seu primeiro ponto"),
        ["line-scatter"] = new("scatter about the line", "dispersión en torno a la recta", "dispersão em torno da reta"),
        ["slope-low"] = new("slope, lower end (95 %)", "pendiente, extremo inferior (95 %)", "inclinação, ponta inferior (95 %)"),
        ["slope-high"] = new("slope, upper end (95 %)", "pendiente, extremo superior (95 %)", "inclinação, ponta superior (95 %)"),
        ["own-reading"] = new("own reading of", "lectura propia del", "leitura própria de"),
        ["running-days"] = new("days of running", "días de marcha", "dias de operação"),
        ["doses-ahead"] = new("doses planned in the next 70 days", "dosis previstas en los próximos 70 días", "doses previstas nos próximos 70 dias"),
        ["first-days"] = new("empty after, earliest", "se vacía tras, lo más pronto", "vazia após, o mais cedo"),
        ["last-days"] = new("empty after, latest", "se vacía tras, lo más tarde", "vazia após, o mais tarde"),
        ["suggested"] = new("suggested order", "pedido sugerido", "pedido sugerido"),
        ["first"] = new("first system", "primer sistema", "primeiro sistema"),
        ["second"] = new("second system", "segundo sistema", "segundo sistema"),
        ["forecast"] = new("error forecast for the next visit", "error previsto para la próxima visita", "erro previsto para a próxima visita"),
        ["usable"] = new("usable volume", "volumen útil", "volume útil"),
        ["spare"] = new("spare on site", "reserva en el sitio", "reserva no local"),
        ["use-per-day"] = new("use a day", "uso por día", "uso por dia"),
        ["hours-run"] = new("hours run", "horas de marcha", "horas de funcionamento"),
        ["rated"] = new("output by rating or drawdown", "caudal por placa o por medición", "vazão por placa ou por medição"),
        ["make-up-conductivity"] = new("conductivity of the make-up", "conductividad de la reposición", "condutividade da reposição"),
        ["bend"] = new("what conductivity loses for each cycle above one (bend)", "lo que pierde la conductividad por cada ciclo sobre uno (curvatura)", "o que a condutividade perde por ciclo acima de um (curvatura)"),
        ["set-point"] = new("set point", "punto de consigna", "ponto de ajuste"),
        ["level"] = new("level aimed at, as product", "nivel objetivo, como producto", "nível alvo, como produto"),
        ["setting"] = new("setting", "ajuste", "ajuste"),
        ["pump-output"] = new("pump output", "caudal de la bomba", "vazão da bomba"),
        ["water-for-each-run"] = new("make-up for each run", "reposición por cada marcha", "reposição a cada marcha"),
        ["bleed-flow"] = new("flow of the open bleed", "caudal de la purga abierta", "vazão da purga aberta"),
        ["bleed-share-of-loss"] = new("share of the loss that goes through the bleed", "parte de la pérdida que pasa por la purga", "parte da perda que passa pela purga"),
        ["mean-loss"] = new("mean loss as liquid", "pérdida líquida media", "perda líquida média"),
        ["volume"] = new("volume", "volumen", "volume"),
        ["feed-starts-at"] = new("conductivity when the feed begins", "conductividad al empezar la dosificación", "condutividade ao começar a dosagem"),
        ["evaporation"] = new("evaporation", "evaporación", "evaporação"),
        ["shut"] = new("bleed shut", "purga cerrada", "purga fechada"),
        ["bleed-from"] = new("bleed from", "purga desde", "purga desde"),
        ["bleed-to"] = new("bleed down to", "purga hasta", "purga até"),
        ["factor"] = new("factor", "factor", "fator"),
        ["route"] = new("cycles by one route", "ciclos por una vía", "ciclos por uma via"),
    };

    /// <summary>Codes that have a name, in the order they are shown.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. All.Keys];

    /// <summary>Name of a figure.</summary>
    /// <param name="code">A code of <see cref="FigureCodes"/>.</param>
    /// <returns>Its name; the code itself where this version does not know it.</returns>
    public static Text NameOf(string code) => All.TryGetValue(code, out var known) ? known.Name : Same(code);

    /// <summary>What a figure's name leaves open: the drum, probe or output it speaks of.</summary>
    /// <param name="code">A code of <see cref="FigureCodes"/>.</param>
    /// <param name="about">Code of what it concerns; empty when it concerns the system.</param>
    /// <returns><paramref name="about"/>; empty for figures of the bleed, whose name says it already.</returns>
    public static string SubjectOf(string code, string about) => code is FigureCodes.Bleed or FigureCodes.BleedHours or FigureCodes.BleedHoursPerVolume ? string.Empty : about;

    /// <summary>Name of a figure with what it concerns: a code of the system's parts as it stands, a test by its name.</summary>
    /// <param name="code">A code of <see cref="FigureCodes"/>.</param>
    /// <param name="about">Code of what it concerns; empty when it concerns the system.</param>
    /// <returns>The name alone where it says all.</returns>
    public static Text TitleOf(string code, string about)
    {
        var (name, subject) = (NameOf(code), SubjectOf(code, about));
        var said = code == FigureCodes.MakeUpShift ? TestTexts.NameOf(subject) : Same(subject);
        return subject.Length == 0 ? name
            : code == FigureCodes.MakeUpShift ? new($"{name.En}: {said.En}", $"{name.Es}: {said.Es}", $"{name.Pt}: {said.Pt}")
            : new($"{name.En} {said.En}", $"{name.Es} {said.Es}", $"{name.Pt} {said.Pt}");
    }

    /// <summary>How a figure is worked out.</summary>
    /// <param name="code">A code of <see cref="FigureCodes"/>.</param>
    /// <returns>Formula and source, or null where this version does not know the code.</returns>
    public static FigureExplanation? ExplanationOf(string code) => All.TryGetValue(code, out var known) ? known.How : null;

    /// <summary>Name of an input of a figure.</summary>
    /// <param name="name">The name that a <see cref="FigureInput"/> carries; what follows a colon is a code, which is kept, a day (yyyy-MM-dd), which reads as in each language, or the code of a figure that is one route to this one, which reads as its name.</param>
    /// <returns>Words for it; the name itself where this version does not know it.</returns>
    public static Text InputNameOf(string name)
    {
        var colon = name.IndexOf(':', StringComparison.Ordinal);
        var key = colon < 0 ? name : name[..colon];
        if (!Inputs.TryGetValue(key, out var known))
        {
            return Same(name);
        }

        var rest = colon < 0 ? "" : name[(colon + 1)..];
        if (key == "route" && All.TryGetValue(rest, out var route))
        {
            return route.Name;
        }

        var isDay = DateOnly.TryParseExact(rest, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day);
        string In(Language language) => $"{known.In(language)} {(isDay ? Shown.Day(day, language) : rest)}".TrimEnd();
        return new Text(In(Language.English), In(Language.Spanish), In(Language.Portuguese));
    }

    private static Text Same(string text) => new(text, text, text);
}
