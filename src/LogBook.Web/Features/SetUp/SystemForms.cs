using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp;

/// <summary>Forms of a water system and its programmes.</summary>
public static class SystemForms
{
    /// <summary>A record-only system has no bleed, no feeds and no controller that the engine would judge.</summary>
    private static bool IsTower(FormGroup group) => group.Root.Text("kind") is "" or "open-recirculating";

    private static readonly FormField Hours = Ask.Rows(
        "week",
        new("Hours of a usual week", "Horas de una semana normal", "Horas de uma semana normal"),
        new("Hours", "Horas", "Horas"),
        Ask.Picks("days", new("Days", "Días", "Dias"), Ask.From(ChoiceTexts.Days)),
        Ask.Text("from", ReadingTexts.From).Needed() with { Hint = new("HH:MM", "HH:MM", "HH:MM") },
        Ask.Text("to", ReadingTexts.To).Needed() with { Hint = new("HH:MM; 24:00 is midnight, an earlier time is the next day.", "HH:MM; 24:00 es medianoche, una hora anterior es del día siguiente.", "HH:MM; 24:00 é meia-noite, uma hora anterior é do dia seguinte.") });

    /// <summary>Fields of a system.</summary>
    public static readonly IReadOnlyList<FormField> System =
    [
        Ask.Choice("site", ReadingTexts.Site, (scope, _) => scope.Firm.Sites.Values.OrderBy(s => s.Code).Select(s => new FormOption(s.Code, $"{s.Code} – {s.Name}"))).Needed() with { IsFixed = true },
        Ask.Code,
        Ask.Name,
        Ask.Choice("kind", ReadingTexts.Kind, ChoiceTexts.SystemKinds).Needed() with { Hint = new("Only cooling towers are judged; of others LogBook keeps readings, ranges and due dates.", "Solo se juzgan las torres; de los demás LogBook guarda lecturas, rangos y vencimientos.", "Só as torres são avaliadas; dos demais o LogBook guarda leituras, faixas e vencimentos.") },
        Ask.Number("volumeL", new("Volume of the whole circuit", "Volumen de todo el circuito", "Volume de todo o circuito"), Ask.Volumes),
        Ask.Number("fullLoadKw", new("Heat rejected at full load", "Calor disipado a plena carga", "Calor rejeitado a plena carga"), Ask.Powers).When(IsTower),
        Ask.Number("recirculationLPerMin", new("Recirculation", "Recirculación", "Recirculação"), Ask.Flows).When(IsTower) with { Unit = "L/min", Divisor = 60 },
        Ask.Number("bleedValveLPerH", new("Flow of the open bleed valve", "Caudal de la válvula de purga abierta", "Vazão da válvula de purga aberta"), Ask.Flows).When(IsTower),
        Ask.Group(
            "bleedTimed",
            new("Bleed timed into a bucket", "Purga cronometrada en un cubo", "Purga cronometrada em um balde"),
            Ask.Day("on", ReadingTexts.Day).Needed(),
            Ask.Number("LPerH", new("Flow", "Caudal", "Vazão"), "L/h").Needed()).When(IsTower),
        Ask.Picks("metals", new("Wetted metals", "Metales en contacto", "Metais em contato"), Ask.From(ChoiceTexts.Metals)),
        Ask.Day("newGalvanisedFrom", new("New galvanised steel since", "Acero galvanizado nuevo desde", "Aço galvanizado novo desde")).When(group => IsTower(group) && group.Text("metals").Contains("galvanised", StringComparison.Ordinal)),
        Ask.Number("dischargeUsPerCm", new("Limit of the discharge, conductivity", "Límite del vertido, conductividad", "Limite do descarte, condutividade"), "uS/cm").When(IsTower) with { Hint = new("As the permit says, at 25 °C. The calculators begin with it.", "Como dice el permiso, a 25 °C. Los cálculos parten de él.", "Como diz a licença, a 25 °C. Os cálculos partem dele.") },
        Ask.Text("dischargeSource", new("Where this limit was read", "Dónde se leyó este límite", "Onde este limite foi lido")).When(IsTower),
        Ask.Picks("rules", new("Rules that apply", "Normas que se aplican", "Regras que se aplicam"), (scope, _) => scope.Firm.Rules.OrderBy(rule => rule.Code).DistinctBy(rule => rule.Code, StringComparer.OrdinalIgnoreCase).Select(rule => new FormOption(rule.Code, $"{rule.Code} – {rule.Name}"))),
        Ask.Words("samplePoints", new("Further sample points", "Otros puntos de muestreo", "Outros pontos de amostragem")),
        Ask.Group(
            "operation",
            new("When the plant runs", "Cuándo funciona la planta", "Quando a planta funciona"),
            Hours,
            Ask.Rows(
                "seasons",
                new("Parts of the year", "Partes del año", "Partes do ano"),
                new("Season", "Temporada", "Temporada"),
                Ask.Text("from", ReadingTexts.From).Needed() with { Hint = new("Month and day, as 04-15", "Mes y día, como 04-15", "Mês e dia, como 04-15") },
                Ask.Text("to", ReadingTexts.To).Needed() with { Hint = new("Month and day, as 10-31", "Mes y día, como 10-31", "Mês e dia, como 10-31") }),
            Ask.Rows(
                "stops",
                new("Known stops", "Paradas conocidas", "Paradas conhecidas"),
                new("Stop", "Parada", "Parada"),
                Ask.Day("from", ReadingTexts.From).Needed(),
                Ask.Day("to", ReadingTexts.To).Needed(),
                Ask.Text("reason", new("Reason", "Motivo", "Motivo")))),
        Ask.Rows(
            "meters",
            new("Water meters", "Contadores de agua", "Hidrômetros"),
            new("Water meter", "Contador", "Hidrômetro"),
            Ask.PartCode,
            Ask.Choice("measures", new("Counts", "Cuenta", "Conta"), ChoiceTexts.Measures).Needed(),
            Ask.Choice("unit", ReadingTexts.Unit, (scope, _) => Ask.Units(UnitCodes.Of(UnitDimension.Volume), scope.Language)).Needed(),
            Ask.Whole("digits", new("Digits of the dial", "Cifras del dial", "Algarismos do mostrador")).Needed() with { Hint = new("It starts again from zero after so many digits.", "Vuelve a cero tras ese número de cifras.", "Volta a zero após esse número de algarismos.") },
            Ask.Number("dialMultiplier", new("Dial count times", "Lectura del dial por", "Leitura do mostrador vezes")),
            Ask.Whole("totalDigits", new("Digits of the controller's total", "Cifras del total del controlador", "Algarismos do total do controlador")),
            Ask.Number("litresPerPulse", new("Litres for each pulse", "Litros por pulso", "Litros por pulso"), "L"),
            Ask.Number("pulsesPerLitre", new("Pulses for each litre", "Pulsos por litro", "Pulsos por litro")),
            Ask.Picks("serves", new("Also feeds these systems", "También alimenta estos sistemas", "Alimenta também estes sistemas"), (scope, group) => scope.Firm.SystemsOf(group.Root.Text("site")).Select(s => new FormOption(s.Code, $"{s.Code} – {s.Name}"))),
            Ask.Number("maxLPerH", new("What the pipe can carry", "Lo que la tubería puede llevar", "O que a tubulação comporta"), Ask.Flows),
            Ask.PartFrom),
        Ask.Rows(
            "probes",
            new("Probes", "Sondas", "Sondas"),
            new("Probe", "Sonda", "Sonda"),
            Ask.PartCode,
            Ask.Choice("of", new("Measures", "Mide", "Mede"), ChoiceTexts.Probes).Needed(),
            Ask.PartFrom).When(IsTower),
        Ask.Rows(
            "outputs",
            new("Controller outputs", "Salidas del controlador", "Saídas do controlador"),
            new("Output", "Salida", "Saída"),
            Ask.PartCode,
            Ask.Choice("drives", new("Switches", "Acciona", "Aciona"), ChoiceTexts.Drives).Needed()).When(IsTower),
        Ask.Rows(
            "drums",
            new("Drums and tanks", "Bidones y depósitos", "Bombonas e tanques"),
            new("Drum", "Bidón", "Bombona"),
            Ask.PartCode,
            Ask.Choice("product", new("Product", "Producto", "Produto"), (scope, _) => scope.Firm.Products.Values.OrderBy(p => p.Code).Select(p => new FormOption(p.Code, $"{p.Code} – {p.Name}"))).Needed(),
            Ask.Choice("shape", new("How a level becomes a volume", "Cómo un nivel da un volumen", "Como um nível dá um volume"), ChoiceTexts.Shapes).Needed(),
            Ask.Number("capacityL", new("Volume to the brim", "Volumen hasta el borde", "Volume até a borda"), Ask.Volumes),
            Ask.Number("heightCm", new("Height inside", "Altura interior", "Altura interna"), Ask.Lengths).When(drum => drum.Text("shape") is "vertical-cylinder" or "rectangular"),
            Ask.Number("lengthCm", new("Length inside", "Longitud interior", "Comprimento interno"), Ask.Lengths).When(drum => drum.Text("shape") is "horizontal-cylinder" or "rectangular"),
            Ask.Number("widthCm", new("Width inside", "Anchura interior", "Largura interna"), Ask.Lengths).When(drum => drum.Text("shape") is "rectangular"),
            Ask.Number("diameterCm", new("Diameter inside", "Diámetro interior", "Diâmetro interno"), Ask.Lengths).When(drum => drum.Text("shape") is "horizontal-cylinder"),
            Ask.Number("tareKg", new("Empty weight", "Peso vacío", "Peso vazio"), Ask.Masses).When(drum => drum.Text("shape") is "by-weight"),
            (new FormField("points", FormKind.Pairs, new("Table of levels", "Tabla de niveles", "Tabela de níveis"))
            {
                RowName = new("Level", "Nivel", "Nível"),
                Fields =
                [
                    Ask.Number("levelCm", new("Level", "Nivel", "Nível"), "cm").Needed(),
                    Ask.Number("volumeL", new("Volume", "Volumen", "Volume"), "L").Needed(),
                ],
            }).When(drum => drum.Text("shape") is "table"),
            Ask.Number("unusableL", new("Below the suction", "Por debajo de la aspiración", "Abaixo da sucção"), Ask.Volumes),
            Ask.Number("spareL", new("Kept beside it", "Guardado al lado", "Guardado ao lado"), Ask.Volumes),
            Ask.Number("deliveryDays", new("Order to delivery", "Del pedido a la entrega", "Do pedido à entrega"), "d"),
            Ask.PartFrom).When(IsTower),
        Ask.Rows(
            "pumps",
            new("Feed pumps", "Bombas dosificadoras", "Bombas dosadoras"),
            new("Pump", "Bomba", "Bomba"),
            Ask.PartCode,
            Ask.Choice("drum", new("Draws from", "Aspira de", "Aspira de"), (_, group) => Codes(group.Root, "drums")).Needed(),
            Ask.Choice("output", new("Run by output", "Accionada por la salida", "Acionada pela saída"), (_, group) => Codes(group.Root, "outputs")).Needed(),
            Ask.Number("ratedLPerH", new("Output at the stroke and speed set", "Caudal con la carrera y velocidad ajustadas", "Vazão com o curso e a velocidade ajustados"), Ask.Flows),
            Ask.PartFrom).When(IsTower),
    ];

    private static readonly FormField Ranges = Ask.Rows(
        "ranges",
        new("Ranges", "Rangos", "Faixas"),
        new("Range", "Rango", "Faixa"),
        Ask.Choice("at", new("Water", "Agua", "Água"), Points).Needed(),
        Ask.Choice("test", new("Test", "Ensayo", "Ensaio"), FirmForms.Tests).Needed() with { Changed = FollowTest },
        Ask.Number("low", new("Low", "Mínimo", "Mínimo")),
        Ask.Number("high", new("High", "Máximo", "Máximo")),
        Ask.Choice("unit", ReadingTexts.Unit, (scope, range) => Ask.Units(TestCatalogue.Find(range.Text("test"), scope.Firm)?.Units ?? UnitCodes.All, scope.Language)).Needed(),
        Ask.Text("basis", new("Expressed as", "Expresado como", "Expresso como")).When(_ => false)) with { Begin = (_, range) => range.Set("at", "tower") };

    /// <summary>Fields of a programme.</summary>
    public static readonly IReadOnlyList<FormField> Programme =
    [
        Ask.Day("from", new("In force from", "En vigor desde", "Em vigor desde")).Needed() with { IsFixed = true },
        Ask.LongText("why", new("Why it is as it is", "Por qué es así", "Por que é assim")),
        Ask.Number("targetCycles", new("Target cycles", "Ciclos objetivo", "Ciclos alvo")) with { Applies = Tower },
        Ask.Number("setPointUsPerCm", new("Bleed set point", "Consigna de purga", "Ponto de ajuste da purga"), Ask.Conductivities) with { Applies = Tower },
        Ask.Number("differentialUsPerCm", new("Differential", "Diferencial", "Diferencial"), Ask.Conductivities) with { Applies = Tower },
        Ask.Choice("bleedActs", new("The bleed", "La purga", "A purga"), ChoiceTexts.BleedActs) with { Applies = Tower },
        Ask.Number("highAlarmUsPerCm", new("High alarm", "Alarma alta", "Alarme alto"), Ask.Conductivities) with { Applies = Tower },
        Ask.Number("lowAlarmUsPerCm", new("Low alarm", "Alarma baja", "Alarme baixo"), Ask.Conductivities) with { Applies = Tower },
        Ask.Number("longestBleedMin", new("Longest bleed allowed", "Purga más larga permitida", "Purga mais longa permitida"), "min") with { Applies = Tower },
        Ask.Number("displayAverageSeconds", new("Display averages over", "La pantalla promedia", "O mostrador faz a média de"), "s") with { Applies = Tower },
        Ask.Group(
            "maRange",
            new("Current output", "Salida de corriente", "Saída de corrente"),
            Ask.Number("at4Ma", new("At 4 mA", "A 4 mA", "A 4 mA")).Needed(),
            Ask.Number("at20Ma", new("At 20 mA", "A 20 mA", "A 20 mA")).Needed(),
            Ask.Choice("unit", ReadingTexts.Unit, (scope, _) => Ask.Units(UnitCodes.Of(UnitDimension.Conductivity, UnitDimension.Ph, UnitDimension.Potential, UnitDimension.Temperature), scope.Language)).Needed()) with { Applies = Tower },
        Ranges,
        Ask.Whole("planWeeks", new("Weeks of the dose plan", "Semanas del plan de dosis", "Semanas do plano de doses")) with { Applies = Tower, Hint = new("4 when nothing is said.", "4 si no se indica.", "4 se não informado.") },
        Ask.Day("weekOneFrom", new("Week 1 begins on a Monday", "La semana 1 empieza un lunes", "A semana 1 começa em uma segunda-feira")) with { Applies = Tower },
        Ask.Rows(
            "feeds",
            new("Feeds", "Dosificaciones", "Dosagens"),
            new("Feed", "Dosificación", "Dosagem"),
            Ask.Choice("drum", new("From drum", "Del bidón", "Da bombona"), Drums).Needed(),
            Ask.Choice("output", new("Output", "Salida", "Saída"), Outputs) with { Hint = new("May be left out where the drum has one pump.", "Se puede omitir si el bidón tiene una sola bomba.", "Pode ser omitida se a bombona tem uma só bomba.") },
            Ask.Choice("mode", new("Paced", "Ritmo", "Ritmo"), ChoiceTexts.Modes).Needed(),
            Ask.Number("targetMgPerL", new("Level aimed at, as product", "Nivel buscado, como producto", "Nível desejado, como produto"), "mg/L"),
            Ask.Number("everyL", new("Runs after every", "Dosifica cada", "Dosa a cada"), Ask.Volumes).When(Mode("by-make-up-volume")),
            Ask.Number("runSeconds", new("Runs for", "Dosifica durante", "Dosa durante"), "s").When(Mode("by-make-up-volume")),
            Ask.Number("cycleMin", new("Of every", "De cada", "De cada"), "min").When(Mode("fixed-share")),
            Ask.Number("sharePercent", new("Share", "Parte", "Parte"), "%").When(Mode("fixed-share", "share-of-last-bleed")),
            Ask.Number("setPoint", new("Set point", "Consigna", "Ponto de ajuste")).When(Mode("by-orp", "by-ph", "by-residual")),
            Ask.Number("differential", new("Differential", "Diferencial", "Diferencial")).When(Mode("by-orp", "by-ph", "by-residual")),
            Ask.Choice("unit", ReadingTexts.Unit, (scope, feed) => Ask.Units(UnitsOf(feed.Text("mode")), scope.Language)).When(Mode("by-orp", "by-ph", "by-residual")),
            Ask.Choice("direction", new("Direction", "Sentido", "Sentido"), ChoiceTexts.Directions).When(Mode("by-orp", "by-ph", "by-residual")),
            new FormField("weeks", FormKind.Numbers, new("Weeks of the plan", "Semanas del plan", "Semanas do plano")) { Applies = (_, feed) => Mode("dose-plan")(feed), Hint = new("As 1; 3.", "Como 1; 3.", "Como 1; 3.") },
            Ask.Picks("days", new("Days", "Días", "Dias"), Ask.From(ChoiceTexts.Days)).When(Mode("dose-plan")),
            Ask.Words("starts", new("Starts", "Inicios", "Inícios")).When(Mode("dose-plan")) with { Hint = new("HH:MM, several with commas between.", "HH:MM, varios separados por comas.", "HH:MM, vários separados por vírgulas.") },
            Ask.Number("runMinutes", new("Each run", "Cada dosis", "Cada dose"), "min").When(Mode("dose-plan")),
            Ask.Number("longestFeedMin", new("Longest feed allowed", "Dosificación más larga permitida", "Dosagem mais longa permitida"), "min").When(feed => !Mode("dose-plan", "by-hand", "feeder")(feed)),
            Ask.Picks("waitsFor", new("Waits for", "Espera a", "Espera por"), Outputs).When(feed => !Mode("by-hand", "feeder")(feed)),
            Ask.Group(
                "bleedDownFirst",
                new("Bleed down first", "Purgar antes", "Purgar antes"),
                Ask.Number("minutes", new("For", "Durante", "Durante"), "min"),
                Ask.Number("toUsPerCm", new("Down to", "Hasta", "Até"), "µS/cm")).When(Mode("dose-plan")),
            Ask.Number("holdBleedShutMin", new("Hold bleed shut after dose", "Mantener la purga cerrada tras la dosis", "Manter a purga fechada após a dose"), "min").When(Mode("dose-plan")),
            Ask.Choice("inhibitorMeanwhile", new("Inhibitor during a biocide dose", "Inhibidor durante una dosis de biocida", "Inibidor durante uma dose de biocida"), ChoiceTexts.Meanwhile).When(Mode("dose-plan"))) with { Applies = Tower },
        Ask.Group(
            "makeUp",
            new("Make-up water it was worked out for", "Agua de reposición para la que se calculó", "Água de reposição para a qual foi calculado"),
            Ask.Number("conductivityUsPerCm", new("Conductivity", "Conductividad", "Condutividade"), "µS/cm"),
            Ask.Number("calciumMgPerLAsCaCO3", new("Calcium as CaCO3", "Calcio como CaCO3", "Cálcio como CaCO3"), "mg/L"),
            Ask.Number("magnesiumMgPerLAsCaCO3", new("Magnesium as CaCO3", "Magnesio como CaCO3", "Magnésio como CaCO3"), "mg/L"),
            Ask.Number("alkalinityMgPerLAsCaCO3", new("Alkalinity as CaCO3", "Alcalinidad como CaCO3", "Alcalinidade como CaCO3"), "mg/L"),
            Ask.Number("chlorideMgPerL", new("Chloride", "Cloruro", "Cloreto"), "mg/L"),
            Ask.Number("silicaMgPerL", new("Silica", "Sílice", "Sílica"), "mg/L"),
            Ask.Number("sulphateMgPerL", new("Sulphate", "Sulfato", "Sulfato"), "mg/L"),
            Ask.Number("pH", new("pH", "pH", "pH"))) with { Applies = Tower },
    ];

    private static bool Tower(FormScope scope, FormGroup group) => scope.System is not { } system || system.Kind == Domain.Sites.SystemKind.OpenRecirculating;

    private static Func<FormGroup, bool> Mode(params string[] modes) => feed => modes.Contains(feed.Text("mode"), StringComparer.Ordinal);

    private static IReadOnlyList<string> UnitsOf(string mode) => mode switch
    {
        "by-orp" => [UnitCodes.Millivolt],
        "by-ph" => [UnitCodes.Ph],
        _ => UnitCodes.Of(UnitDimension.Concentration),
    };

    private static IEnumerable<FormOption> Codes(FormGroup root, string list) =>
        root.Rows(list).Select(row => row.Text("code").Trim()).Where(code => code.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).Select(code => new FormOption(code, code));

    private static IEnumerable<FormOption> Points(FormScope scope, FormGroup group) =>
        ChoiceTexts.SamplePoints.Select(pair => new FormOption(pair.Key, pair.Value.In(scope.Language))).Concat((scope.System?.SamplePoints ?? []).Select(point => new FormOption(point, point)));

    private static IEnumerable<FormOption> Drums(FormScope scope, FormGroup group) =>
        (scope.System?.Drums ?? []).DistinctBy(drum => drum.Code, StringComparer.OrdinalIgnoreCase)
            .Select(drum => new FormOption(drum.Code, scope.Firm.Products.TryGetValue(drum.Product, out var product) ? $"{drum.Code} – {product.Name}" : drum.Code));

    private static IEnumerable<FormOption> Outputs(FormScope scope, FormGroup group) => (scope.System?.Outputs ?? []).Select(output => new FormOption(output.Code, output.Code));

    // The basis belongs to the test; a range of another test begins in that test's own unit.
    private static void FollowTest(FormScope scope, FormGroup range)
    {
        range.Set("basis", "");
        if (TestCatalogue.Find(range.Text("test"), scope.Firm) is { } test && !test.Units.Contains(range.Text("unit"), StringComparer.Ordinal))
        {
            range.Set("unit", test.Units[0]);
        }
    }
}
