using System.Reflection;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>Every threshold and default uncertainty that an installation may set, with its name and the range that makes sense.</summary>
/// <remarks>The ranges keep a slip of the point from silencing a rule; they are common practice without a source.</remarks>
public static class EngineSettingCatalogue
{
    private const string OfThreshold = "thresholds:";
    private const string OfUncertainty = "uncertainties:";

    private static readonly Text Practice = new("common practice, no source", "práctica habitual, sin fuente", "prática usual, sem fonte");
    private static readonly Text Literature = new("technical literature, see the reference data", "literatura técnica, véanse los datos de referencia", "literatura técnica, veja os dados de referência");
    private static readonly Text Published = new("published: new meters are within 1.5 % (COMAR 20.70.06.04)", "publicado: contadores nuevos dentro del 1,5 % (COMAR 20.70.06.04)", "publicado: hidrômetros novos dentro de 1,5 % (COMAR 20.70.06.04)");
    private static readonly Text Balance = new("from the mass balance", "del balance de masa", "do balanço de massa");

    /// <summary>All of them, in the order in which they are shown.</summary>
    public static IReadOnlyList<EngineSetting> All { get; } =
    [
        .. Of(SettingGroup.Probes,
            new("probeErrorPercent", "%", 1, 50, "Probe error as found", "Error de la sonda al encontrarla", "Erro da sonda ao encontrá-la"),
            new("probeErrorUsPerCm", "uS/cm", 0, 1000, "Probe error as found, if that is larger", "Error de la sonda al encontrarla, si es mayor", "Erro da sonda ao encontrá-la, se for maior"),
            new("probeLeftPercent", "%", 1, 50, "Probe error as left that wants somebody at once", "Error de la sonda al dejarla que exige acudir ya", "Erro da sonda ao deixá-la que exige alguém já"),
            new("settledMinutes", "min", 0, 60, "Shortest settling of a hand meter before its reading counts", "Menor espera del medidor portátil para que cuente su lectura", "Menor espera do medidor portátil para a leitura contar"),
            new("probeForecastPercent", "%", 1, 50, "Drift: probe error forecast for the next visit", "Deriva: error de la sonda previsto para la próxima visita", "Deriva: erro da sonda previsto para a próxima visita"),
            new("probeDriftPoints", "1", 3, 30, "Drift: as-found errors that it needs", "Deriva: errores al encontrarla que necesita", "Deriva: erros ao encontrá-la que precisa", Whole: true),
            new("fouledShare", "1", 0.3, 1, "Fouling: share of the error that cleaning takes away", "Suciedad: parte del error que quita la limpieza", "Sujeira: parte do erro que a limpeza tira"),
            new("fouledErrorPercent", "%", 1, 50, "Fouling: error from which cleaning can tell", "Suciedad: error a partir del cual la limpieza lo revela", "Sujeira: erro a partir do qual a limpeza revela"),
            new("fouledCalibrationDays", "d", 14, 730, "Fouling: days between two calibrations to the same side, uncleaned", "Suciedad: días entre dos calibraciones hacia el mismo lado, sin limpiar", "Sujeira: dias entre duas calibrações para o mesmo lado, sem limpar", Whole: true),
            new("conductivityHighPercent", "%", 1, 100, "Conductivity above the set point, without a range", "Conductividad sobre la consigna, sin rango", "Condutividade acima do ponto de ajuste, sem faixa"),
            new("conductivityLowPercent", "%", 1, 90, "Conductivity below the set point, without a range", "Conductividad bajo la consigna, sin rango", "Condutividade abaixo do ponto de ajuste, sem faixa"),
            new("probeVerifiedDays", "d", 1, 365, "Days for which a probe found right stands for a reference", "Días que una sonda hallada correcta vale de referencia", "Dias em que uma sonda achada certa vale como referência", Whole: true)),
        .. Of(SettingGroup.Water,
            new("cyclesPercent", "%", 1, 90, "Cycles off target, on two visits", "Ciclos fuera del objetivo, en dos visitas", "Ciclos fora do alvo, em duas visitas"),
            new("routesPercent", "%", 1, 90, "Conductivity against chloride cycles off the own median", "Ciclos por conductividad frente a cloruro, respecto a la mediana propia", "Ciclos por condutividade contra cloreto, em relação à mediana própria"),
            new("routesLow", "1", 0.3, 1, "Conductivity against chloride cycles before a baseline, at least", "Ciclos por conductividad frente a cloruro sin base propia, mínimo", "Ciclos por condutividade contra cloreto sem base própria, mínimo"),
            new("routesHigh", "1", 1, 2, "Conductivity against chloride cycles before a baseline, at most", "Ciclos por conductividad frente a cloruro sin base propia, máximo", "Ciclos por condutividade contra cloreto sem base própria, máximo"),
            new("waterLossPercent", "%", 5, 200, "Loss beyond the usual, share of the normal bleed, in two stretches", "Pérdida sobre lo usual, parte de la purga normal, en dos tramos", "Perda além do usual, parte da purga normal, em dois trechos"),
            new("waterLossOncePercent", "%", 5, 400, "Loss beyond the usual that decides in one stretch", "Pérdida sobre lo usual que decide en un tramo", "Perda além do usual que decide em um trecho"),
            new("bleedHoursTimes", "1", 1, 10, "Bleed not flowing: hours over what the water lost needs", "Purga sin flujo: horas frente a las que pide el agua perdida", "Purga sem fluxo: horas contra as que a água perdida pede"),
            new("bleedShutDifferentials", "1", 1, 20, "Bleed not closing: differentials below the set point", "Purga que no cierra: diferenciales bajo la consigna", "Purga que não fecha: diferenciais abaixo do ponto de ajuste"),
            new("bleedShutPercent", "%", 10, 100, "Bleed not closing: loss over the valve's full flow", "Purga que no cierra: pérdida frente al caudal pleno de la válvula", "Purga que não fecha: perda contra a vazão plena da válvula")),
        .. Of(SettingGroup.Meters,
            new("meterAdvancePercent", "%", 0, 50, "Stopped register: advance below this part of what is expected", "Contador parado: avance bajo esta parte de lo esperado", "Hidrômetro parado: avanço abaixo desta parte do esperado"),
            new("rolloverTimesUsual", "1", 1, 20, "Rollover: times the usual flow that it may imply", "Vuelta a cero: veces el caudal usual que puede implicar", "Virada: vezes a vazão usual que pode implicar"),
            new("pulsesPercent", "%", 0.5, 50, "Difference between dial and total", "Diferencia entre contador y total", "Diferença entre hidrômetro e total"),
            new("suspectTimes", "1", 2, 100, "Doubtful result: times the median of the last six, or that part of it", "Resultado dudoso: veces la mediana de los últimos seis, o su parte", "Resultado duvidoso: vezes a mediana dos últimos seis, ou a sua parte")),
        .. Of(SettingGroup.Chemistry,
            new("makeUpPercent", "%", 1, 200, "Make-up off its own normal", "Reposición fuera de su normal", "Reposição fora do seu normal"),
            new("makeUpSigmas", "1", 1, 10, "Make-up off its own normal, standard deviations", "Reposición fuera de su normal, desviaciones típicas", "Reposição fora do seu normal, desvios padrão"),
            new("softenedHardness", "mg/L", 1, 500, "Softened hardness over its own normal, as CaCO3", "Dureza del agua ablandada sobre su normal, como CaCO3", "Dureza da água abrandada acima do seu normal, como CaCO3"),
            new("softenerPassesPercent", "%", 1, 100, "Softened over raw hardness that wants somebody at once", "Dureza ablandada sobre bruta que exige acudir ya", "Dureza abrandada sobre bruta que exige alguém já"),
            new("depositShare", "1", 0.3, 1, "Deposits: cycles of a scaling ion against the own baseline", "Depósitos: ciclos de un ion incrustante frente a la base propia", "Depósitos: ciclos de um íon incrustante contra a base própria"),
            new("depositFixed", "1", 0.3, 1, "Deposits: the same before a baseline", "Depósitos: lo mismo sin base propia", "Depósitos: o mesmo sem base própria"),
            new("depositOnce", "1", 0.1, 1, "Deposits: the same that decides at once", "Depósitos: lo mismo que decide a la primera", "Depósitos: o mesmo que decide de uma vez"),
            new("approachRise", "K", 0.1, 20, "Deposits: rise of the approach temperature", "Depósitos: subida del acercamiento", "Depósitos: subida da aproximação"),
            new("langelierHigh", "1", 0, 4, "Langelier index of a treated tower, at most", "Índice de Langelier de una torre tratada, máximo", "Índice de Langelier de uma torre tratada, máximo"),
            new("silicaHigh", "mg/L", 10, 1000, "Silica in the tower water, at most, as SiO2", "Sílice en el agua de la torre, máximo, como SiO2", "Sílica na água da torre, máximo, como SiO2"),
            new("langelierLow", "1", -4, 1, "Langelier index below which the water counts as corrosive", "Índice de Langelier bajo el cual el agua cuenta como corrosiva", "Índice de Langelier abaixo do qual a água conta como corrosiva"),
            new("couponSteelPlan", "[mil_i]/a", 0.1, 100, "Steel coupon: plan", "Cupón de acero: planificar", "Cupom de aço: planejar"),
            new("couponSteelAct", "[mil_i]/a", 0.1, 100, "Steel coupon: act", "Cupón de acero: actuar", "Cupom de aço: agir"),
            new("couponCopperPlan", "[mil_i]/a", 0.01, 20, "Copper alloy coupon: plan", "Cupón de aleación de cobre: planificar", "Cupom de liga de cobre: planejar"),
            new("couponCopperAct", "[mil_i]/a", 0.01, 20, "Copper alloy coupon: act", "Cupón de aleación de cobre: actuar", "Cupom de liga de cobre: agir"),
            new("couponDays", "d", 7, 365, "Shortest exposure of a coupon that tells", "Menor exposición de un cupón que dice algo", "Menor exposição de um cupom que diz algo", Whole: true),
            new("newGalvanisedPh", "[pH]", 6, 10, "pH on new galvanised steel, at most", "pH sobre galvanizado nuevo, máximo", "pH sobre galvanizado novo, máximo"),
            new("newGalvanisedWeeks", "1", 1, 104, "Weeks in which galvanised steel counts as new", "Semanas en que el galvanizado cuenta como nuevo", "Semanas em que o galvanizado conta como novo", Whole: true),
            new("phLowWithoutAcid", "[pH]", 4, 9, "pH low on a system without acid", "pH bajo en un sistema sin ácido", "pH baixo em um sistema sem ácido"),
            new("phBelowRangeWithAcid", "1", 0.1, 5, "pH below its range, with acid, that wants somebody at once", "pH bajo su rango, con ácido, que exige acudir ya", "pH abaixo da sua faixa, com ácido, que exige alguém já")),
        .. Of(SettingGroup.Products,
            new("feedLow", "1", 0.1, 1, "Product used over expected, at least", "Producto usado sobre esperado, mínimo", "Produto usado sobre esperado, mínimo"),
            new("feedHigh", "1", 1, 10, "Product used over expected, at most", "Producto usado sobre esperado, máximo", "Produto usado sobre esperado, máximo"),
            new("ownUseShare", "1", 0.05, 2, "Oxidant or acid against the own use, either way", "Oxidante o ácido frente al uso propio, a cada lado", "Oxidante ou ácido contra o uso próprio, para cada lado"),
            new("overfedTimes", "1", 1.2, 20, "Overfeed: hours run over expected", "Sobredosis: horas de marcha sobre esperadas", "Superdosagem: horas de marcha sobre esperadas"),
            new("pumpOutputShare", "1", 0.05, 1, "Pump output off its drawdown, early output or rating", "Caudal de bomba frente a su aforo, caudal inicial o placa", "Vazão da bomba contra a aferição, vazão inicial ou placa"),
            new("drawdownShare", "1", 0.05, 1, "A drawdown off the first one or the rating", "Un aforo frente al primero o la placa", "Uma aferição contra a primeira ou a placa"),
            new("wrongProductShare", "1", 0.05, 0.9, "Wrong product: residual over what the use would give", "Producto equivocado: residual sobre lo que daría el uso", "Produto errado: residual sobre o que o uso daria"),
            new("stockShare", "1", 0.01, 0.5, "Unexplained change of stock, share of the drum", "Cambio de existencias sin explicar, parte del bidón", "Mudança de estoque sem explicação, parte da bombona"),
            new("stockFallActShare", "1", 0.05, 1, "Unexplained fall of stock that wants somebody at once", "Bajada de existencias sin explicar que exige acudir ya", "Queda de estoque sem explicação que exige alguém já"),
            new("residualActLow", "1", 0, 0.95, "Residual over the low limit that wants somebody at once", "Residual sobre el límite bajo que exige acudir ya", "Residual sobre o limite baixo que exige alguém já"),
            new("residualActHigh", "1", 1.05, 20, "Residual over the high limit that wants somebody at once", "Residual sobre el límite alto que exige acudir ya", "Residual sobre o limite alto que exige alguém já"),
            new("slugHours", "h", 0, 72, "Hours after a dose in which its residual tells nothing", "Horas tras una dosis en que su residual no dice nada", "Horas após uma dose em que o residual não diz nada"),
            new("emptyChancePlan", "1", 0.01, 0.99, "Chance of an empty drum before the next visit: plan", "Probabilidad de bidón vacío antes de la próxima visita: planificar", "Chance de bombona vazia antes da próxima visita: planejar"),
            new("emptyChanceAct", "1", 0.01, 0.99, "Chance of an empty drum before the next visit: act", "Probabilidad de bidón vacío antes de la próxima visita: actuar", "Chance de bombona vazia antes da próxima visita: agir")),
        .. Of(SettingGroup.Biocides,
            new("doseMissedShare", "1", 0.05, 0.95, "Missed dose: hours and drum over the plan, at most", "Dosis omitida: horas y bidón sobre el plan, máximo", "Dose omitida: horas e bombona sobre o plano, máximo"),
            new("biocideLapsePlanDays", "d", 1, 60, "Days in use without a working biocide: plan", "Días en uso sin biocida que funcione: planificar", "Dias em uso sem biocida funcionando: planejar"),
            new("biocideLapseActDays", "d", 1, 60, "Days in use without a working biocide: act", "Días en uso sin biocida que funcione: actuar", "Dias em uso sem biocida funcionando: agir"),
            new("labelVolumeShare", "1", 0.5, 1, "Share of the volume on file that a label is judged with", "Parte del volumen en ficha con que se juzga la etiqueta", "Parte do volume em ficha com que se julga o rótulo"),
            new("biocideGapHours", "h", 1, 336, "Gap between two non-oxidising biocides where no label tells", "Separación entre dos biocidas no oxidantes si la etiqueta no lo dice", "Intervalo entre dois biocidas não oxidantes se o rótulo não diz"),
            new("oxidantAlone", "%", 0, 200, "Part of a non-oxidising biocide's time without oxidant", "Parte del tiempo de un biocida no oxidante sin oxidante", "Parte do tempo de um biocida não oxidante sem oxidante"),
            new("holdRise", "%", 50, 120, "Part of the high alarm that a hold of the bleed may reach", "Parte de la alarma alta que puede alcanzar una retención de purga", "Parte do alarme alto que uma retenção da purga pode atingir"),
            new("untreatedPercent", "%", 5, 100, "Part of the contact time without circulation", "Parte del tiempo de contacto sin circulación", "Parte do tempo de contato sem circulação"),
            new("restartDays", "d", 1, 60, "Longest stop whose restart needs no proof, without a rule", "Parada más larga cuyo arranque no exige prueba, sin norma", "Parada mais longa cuja partida não exige prova, sem regra"),
            new("coloniesPlan", "[CFU]/mL", 10, 1e8, "Count or dip slide, without a rule: plan", "Recuento o lámina, sin norma: planificar", "Contagem ou lâmina, sem regra: planejar"),
            new("coloniesAct", "[CFU]/mL", 10, 1e8, "Count or dip slide, without a rule: act", "Recuento o lámina, sin norma: actuar", "Contagem ou lâmina, sem regra: agir")),
        .. Of(SettingGroup.Controller,
            new("setPointPercent", "%", 1, 100, "Change of the set point that wants somebody at once", "Cambio de la consigna que exige acudir ya", "Mudança do ponto de ajuste que exige alguém já"),
            new("settingsLostCount", "1", 2, 50, "Settings lost: how many must differ at once", "Ajustes perdidos: cuántos deben diferir a la vez", "Ajustes perdidos: quantos devem diferir de uma vez", Whole: true),
            new("settingsLostPercent", "%", 5, 100, "Settings lost: share of those read", "Ajustes perdidos: parte de los leídos", "Ajustes perdidos: parte dos lidos"),
            new("clockMinutes", "min", 1, 720, "Controller clock off the true time", "Reloj del controlador frente a la hora real", "Relógio do controlador contra a hora real")),
        .. Of(SettingGroup.Service,
            new("dueSoonPercent", "%", 1, 90, "Last part of an interval in which a date is announced", "Última parte de un plazo en que se anuncia la fecha", "Última parte de um prazo em que se anuncia a data"),
            new("notifyActHours", "h", 0, 24, "Telling an authority: hours left below which it is urgent", "Aviso a una autoridad: horas restantes por debajo de las cuales urge", "Aviso a uma autoridade: horas restantes abaixo das quais é urgente"),
            new("visitLatePercent", "%", 0, 200, "Late visit: part of the interval over it", "Visita tardía: parte del intervalo de más", "Visita atrasada: parte do intervalo a mais"),
            new("visitLateDays", "d", 0, 60, "Late visit: days over the interval, at least", "Visita tardía: días de más, como mínimo", "Visita atrasada: dias a mais, no mínimo"),
            new("missedVisits", "1", 1, 20, "Visits running without a test of the programme", "Visitas seguidas sin un análisis del programa", "Visitas seguidas sem um teste do programa", Whole: true),
            new("meterProvedDays", "d", 1, 365, "Days after which a hand meter counts as unproved", "Días tras los que un medidor portátil cuenta como sin comprobar", "Dias após os quais um medidor portátil conta como não verificado", Whole: true),
            new("shiftSites", "1", 2, 20, "Meter or lot off: sites that must show it", "Medidor o lote desviado: sitios que deben mostrarlo", "Medidor ou lote desviado: locais que devem mostrá-lo", Whole: true, OfFirm: true),
            new("shiftComparisons", "1", 3, 50, "Meter or lot off: comparisons it needs", "Medidor o lote desviado: comparaciones que necesita", "Medidor ou lote desviado: comparações que precisa", Whole: true, OfFirm: true),
            new("shiftDays", "d", 10, 120, "Meter or lot off: days within which they lie", "Medidor o lote desviado: días que abarcan", "Medidor ou lote desviado: dias que abrangem", Whole: true, OfFirm: true),
            new("instrumentShiftPercent", "%", 0.5, 20, "Hand meter off: median offset", "Medidor portátil desviado: mediana del desvío", "Medidor portátil desviado: mediana do desvio", OfFirm: true),
            new("standardPercent", "%", 0.5, 20, "Hand meter off: reading in a standard", "Medidor portátil desviado: lectura en un patrón", "Medidor portátil desviado: leitura no padrão", OfFirm: true),
            new("lotShiftPercent", "%", 1, 100, "Reagent lot off: median offset", "Lote de reactivo desviado: mediana del desvío", "Lote de reagente desviado: mediana do desvio", OfFirm: true),
            new("stayShare", "1", 0.05, 1, "Second look: stay below this share of the tests' least time", "Segunda mirada: estancia bajo esta parte del tiempo mínimo", "Segundo olhar: permanência abaixo desta parte do tempo mínimo"),
            new("summaryHours", "h", 1, 720, "Hours after which an undelivered summary wants somebody", "Horas tras las que un resumen sin entregar exige atención", "Horas após as quais um resumo não entregue exige atenção", OfFirm: true)),
        .. OfUncertainties(
            new(UncertaintyCodes.HandConductivity, "%", 0.1, 20, "Hand meter, one reading in flowing water", "Medidor portátil, una lectura en agua corriente", "Medidor portátil, uma leitura em água corrente"),
            new(UncertaintyCodes.HandConductivityProved, "%", 0.1, 20, "Hand meter checked in a standard within 30 days; repeats", "Medidor portátil comprobado en 30 días; se repite", "Medidor portátil verificado em 30 dias; repete-se"),
            new(UncertaintyCodes.HandConductivityUnproved, "%", 0.1, 30, "Hand meter without such a check; repeats", "Medidor portátil sin esa comprobación; se repite", "Medidor portátil sem essa verificação; repete-se"),
            new(UncertaintyCodes.CompensationNear25, "%", 0.1, 10, "Temperature compensation, 15 to 35 °C", "Compensación de temperatura, 15 a 35 °C", "Compensação de temperatura, 15 a 35 °C"),
            new(UncertaintyCodes.CompensationFar, "%", 0.1, 20, "Temperature compensation outside 15 to 35 °C", "Compensación de temperatura fuera de 15 a 35 °C", "Compensação de temperatura fora de 15 a 35 °C"),
            new(UncertaintyCodes.ControllerDisplay, "%", 0.1, 20, "Controller display, scatter and step", "Pantalla del controlador, dispersión y escalón", "Visor do controlador, dispersão e degrau"),
            new(UncertaintyCodes.DropTest, "%", 0.5, 50, "Drop test, beside the step of one drop", "Análisis por gotas, aparte del escalón de una gota", "Teste por gotas, além do degrau de uma gota"),
            new(UncertaintyCodes.PhotometricTest, "%", 0.5, 50, "Inhibitor and halogen tests, beside their step", "Análisis de inhibidor y halógeno, aparte de su escalón", "Testes de inibidor e halogênio, além do degrau"),
            new(UncertaintyCodes.LotShare, "1", 0, 1, "Share of a test's variance that belongs to its lot", "Parte de la varianza de un análisis que es del lote", "Parte da variância de um teste que é do lote"),
            new(UncertaintyCodes.Ph, "1", 0.01, 1, "pH", "pH", "pH"),
            new(UncertaintyCodes.WaterMeter, "%", 0.1, 20, "Water meter in use; repeats", "Contador de agua en uso; se repite", "Hidrômetro em uso; repete-se"),
            new(UncertaintyCodes.PaddleWheel, "%", 0.1, 30, "Paddle-wheel meter; repeats", "Contador de paletas; se repite", "Medidor de pás; repete-se"),
            new(UncertaintyCodes.BleedValveTimed, "%", 0.5, 50, "Bleed flow timed within 180 days; repeats", "Caudal de purga aforado en 180 días; se repite", "Vazão da purga medida em 180 dias; repete-se"),
            new(UncertaintyCodes.BleedValveUntimed, "%", 0.5, 100, "Bleed flow on file; repeats", "Caudal de purga en ficha; se repite", "Vazão da purga em ficha; repete-se"),
            new(UncertaintyCodes.PumpRating, "%", 0.5, 100, "Pump output by its rating; repeats", "Caudal de bomba por su placa; se repite", "Vazão da bomba pela placa; repete-se"),
            new(UncertaintyCodes.PumpDrawdown, "%", 0.5, 50, "Pump output after a drawdown; repeats", "Caudal de bomba tras un aforo; se repite", "Vazão da bomba após aferição; repete-se"),
            new(UncertaintyCodes.LevelSightGlass, "cm", 0.05, 20, "Level in a sight glass", "Nivel en un visor", "Nível em um visor"),
            new(UncertaintyCodes.LevelDip, "cm", 0.05, 20, "Level by dip stick", "Nivel con varilla", "Nível com vareta"),
            new(UncertaintyCodes.LevelGauge, "%", 0.1, 30, "Level by gauge or marks, of the capacity", "Nivel por indicador o marcas, de la capacidad", "Nível por indicador ou marcas, da capacidade"),
            new(UncertaintyCodes.LevelScale, "kg", 0.01, 50, "Weight on a floor scale", "Peso en una báscula", "Peso em uma balança"),
            new(UncertaintyCodes.SystemVolume, "%", 1, 100, "System volume on file", "Volumen del sistema en ficha", "Volume do sistema em ficha"),
            new(UncertaintyCodes.DipSlide, "1", 0.05, 2, "Dip slide, decades", "Lámina de cultivo, décadas", "Lâmina de cultura, décadas"),
            new(UncertaintyCodes.PlateCount, "1", 0.05, 2, "Plate count, decades", "Recuento en placa, décadas", "Contagem em placa, décadas"),
            new(UncertaintyCodes.MakeUpMean, "%", 0.5, 50, "Mean of the make-up that fed the present water, at least", "Media de la reposición que formó el agua actual, mínimo", "Média da reposição que formou a água atual, mínimo")),
    ];

    /// <summary>Pairs of which the first must lie below the second.</summary>
    internal static IReadOnlyList<(string Lower, string Upper)> Ordered { get; } =
    [
        .. new (string, string)[]
        {
            ("routesLow", "routesHigh"), ("waterLossPercent", "waterLossOncePercent"), ("depositOnce", "depositShare"), ("depositOnce", "depositFixed"), ("langelierLow", "langelierHigh"),
            ("couponSteelPlan", "couponSteelAct"), ("couponCopperPlan", "couponCopperAct"), ("feedLow", "feedHigh"), ("stockShare", "stockFallActShare"),
            ("emptyChancePlan", "emptyChanceAct"), ("biocideLapsePlanDays", "biocideLapseActDays"), ("coloniesPlan", "coloniesAct"),
        }.Select(pair => (OfThreshold + pair.Item1, OfThreshold + pair.Item2)),
        (OfUncertainty + UncertaintyCodes.HandConductivityProved, OfUncertainty + UncertaintyCodes.HandConductivityUnproved),
        (OfUncertainty + UncertaintyCodes.BleedValveTimed, OfUncertainty + UncertaintyCodes.BleedValveUntimed),
        (OfUncertainty + UncertaintyCodes.PumpDrawdown, OfUncertainty + UncertaintyCodes.PumpRating),
    ];

    private static readonly Dictionary<string, EngineSetting> ByCode = All.ToDictionary(setting => setting.Code, StringComparer.OrdinalIgnoreCase);

    /// <summary>One of them.</summary>
    /// <param name="code">Its code, in any case of letters.</param>
    /// <returns>The setting, or null.</returns>
    public static EngineSetting? Find(string? code) => code is null ? null : ByCode.GetValueOrDefault(code);

    /// <summary>Name of a group.</summary>
    /// <param name="group">The group.</param>
    /// <returns>For people.</returns>
    public static Text NameOf(SettingGroup group) => group switch
    {
        SettingGroup.Probes => new("Probes and conductivity", "Sondas y conductividad", "Sondas e condutividade"),
        SettingGroup.Water => new("Cycles, water and bleed", "Ciclos, agua y purga", "Ciclos, água e purga"),
        SettingGroup.Meters => new("Water meters and doubtful values", "Contadores y valores dudosos", "Hidrômetros e valores duvidosos"),
        SettingGroup.Chemistry => new("Chemistry", "Química", "Química"),
        SettingGroup.Products => new("Products and feeds", "Productos y dosificación", "Produtos e dosagem"),
        SettingGroup.Biocides => new("Biocides and microbiology", "Biocidas y microbiología", "Biocidas e microbiologia"),
        SettingGroup.Controller => new("Controller", "Controlador", "Controlador"),
        SettingGroup.Service => new("Service: dates, hand meters, lots, mail", "Servicio: fechas, medidores portátiles, lotes, correo", "Serviço: datas, medidores portáteis, lotes, correio"),
        _ => new("Default uncertainties (one standard deviation)", "Incertidumbres por defecto (una desviación típica)", "Incertezas padrão (um desvio padrão)"),
    };

    /// <summary>The property of a threshold.</summary>
    /// <param name="code">Code of the setting.</param>
    /// <returns>The property, or null for another code.</returns>
    internal static PropertyInfo? PropertyOf(string code) => code.StartsWith(OfThreshold, StringComparison.OrdinalIgnoreCase)
        ? typeof(FindingThresholds).GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .FirstOrDefault(p => p.PropertyType == typeof(Threshold) && p.Name.Equals(code[OfThreshold.Length..], StringComparison.OrdinalIgnoreCase))
        : null;

    /// <summary>Code of an uncertainty within its table.</summary>
    /// <param name="code">Code of the setting.</param>
    /// <returns>One of <see cref="UncertaintyCodes"/>, or null for another code.</returns>
    internal static string? UncertaintyOf(string code) => code.StartsWith(OfUncertainty, StringComparison.OrdinalIgnoreCase) ? code[OfUncertainty.Length..] : null;

    private static IEnumerable<EngineSetting> Of(SettingGroup group, params IEnumerable<Row> rows) => rows.Select(row =>
    {
        var threshold = (Threshold)PropertyOf(OfThreshold + row.Name)!.GetValue(FindingThresholds.Default)!;
        return row.As(OfThreshold, group, threshold.Value, threshold.Basis);
    });

    private static IEnumerable<EngineSetting> OfUncertainties(params IEnumerable<Row> rows) => rows.Select(row =>
    {
        var known = UncertaintyTable.Default[row.Name];
        return row.As(OfUncertainty, SettingGroup.Uncertainties, known.Value, known.Source switch
        {
            'P' => Published,
            'R' => Literature,
            'K' => Balance,
            _ => Practice,
        });
    });

    private sealed record Row(string Name, string Unit, double Lowest, double Highest, string En, string Es, string Pt, bool Whole = false, bool OfFirm = false)
    {
        public EngineSetting As(string prefix, SettingGroup group, double value, Text basis) =>
            new(prefix + Name, group, new Text(En, Es, Pt), Unit, value, basis, Lowest, Highest, Whole, OfFirm);
    }
}
