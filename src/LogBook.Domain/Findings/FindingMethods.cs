using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>How each kind of finding is judged and where that comes from, for "How was this worked out?".</summary>
/// <remarks>The thresholds used stand in each finding's own evidence; what follows is the method.</remarks>
public static class FindingMethods
{
    private static readonly Text Common = new(
        "common practice, no source",
        "práctica habitual, sin fuente",
        "prática usual, sem fonte");

    private static readonly Text MassBalance = new(
        "mass balance of water and product",
        "balance de masa de agua y producto",
        "balanço de massa de água e produto");

    private static readonly Text Balance = new(
        "balance of ions and water; the under-reading of conductivity was computed with PHREEQC 3.8.9 (USGS)",
        "balance de iones y agua; la lectura baja de la conductividad se calculó con PHREEQC 3.8.9 (USGS)",
        "balanço de íons e água; a leitura baixa da condutividade foi calculada com PHREEQC 3.8.9 (USGS)");

    private static readonly Text Line = new(
        "ordinary least squares with interval, checked against the NIST Norris data",
        "mínimos cuadrados con intervalo, comprobados con los datos Norris del NIST",
        "mínimos quadrados com intervalo, verificados com os dados Norris do NIST");

    private static readonly Text Doses = new(
        "dose balance; the limits are common practice",
        "balance de dosis; los límites son práctica habitual",
        "balanço de dose; os limites são prática usual");

    private static readonly Text Registers = new(
        "arithmetic of registers; the limits are common practice",
        "aritmética de los contadores; los límites son práctica habitual",
        "aritmética dos registradores; os limites são prática usual");

    private static readonly Text Guidance = new(
        "the rule named; else HSG274 Part 1, 2nd edition 2024, as described publicly, and common practice",
        "la norma citada; si no, HSG274 Parte 1, 2.ª edición 2024, según descripciones públicas, y práctica habitual",
        "a regra citada; senão, HSG274 Parte 1, 2.ª edição 2024, segundo descrições públicas, e prática usual");

    private static readonly Text Saturation = new(
        "Langelier and Standard Methods 2330 B, compared with PHREEQC 3.8.9 (USGS); the limits are common practice",
        "Langelier y Standard Methods 2330 B, comparados con PHREEQC 3.8.9 (USGS); los límites son práctica habitual",
        "Langelier e Standard Methods 2330 B, comparados com PHREEQC 3.8.9 (USGS); os limites são prática usual");

    private static readonly Text Bands = new(
        "bands of an AWT committee as quoted publicly; galvanised steel: galvanizeit.org",
        "bandas de un comité de la AWT según citas públicas; galvanizado: galvanizeit.org",
        "faixas de um comitê da AWT segundo citações públicas; galvanizado: galvanizeit.org");

    private static readonly Text Data = new(
        "the records and the set-up themselves",
        "los propios registros y la configuración",
        "os próprios registros e a configuração");

    private static readonly Text Memory = new(
        "the rule in force; without one five days, from memory and not confirmed",
        "la norma vigente; sin ella cinco días, de memoria y sin confirmar",
        "a regra em vigor; sem ela cinco dias, de memória e sem confirmação");

    private static readonly Text Label = new(
        "the product's label as entered; the label itself decides",
        "la etiqueta del producto tal como se registró; decide la propia etiqueta",
        "o rótulo do produto como registrado; decide o próprio rótulo");

    private static readonly Dictionary<string, FindingMethod> Methods = new(StringComparer.Ordinal)
    {
        [FindingKinds.ProbeReadsOff] = new(
            new(
                "As found minus reference, in % of the reference, same flowing water after settling. It counts when it exceeds the threshold and its own expanded uncertainty (k = 2).",
                "Como se encontró menos referencia, en % de la referencia, en la misma agua que fluye y tras estabilizar. Cuenta cuando supera el umbral y su propia incertidumbre expandida (k = 2).",
                "Como encontrado menos referência, em % da referência, na mesma água corrente e após estabilizar. Conta quando supera o limiar e a sua própria incerteza expandida (k = 2)."),
            Common),
        [FindingKinds.ProbeDrifting] = new(
            new(
                "Straight line through the as-found errors since the last calibration, cleaning or new probe. It counts when the 95 % interval of the slope excludes zero and the error forecast for the next visit exceeds the threshold.",
                "Recta por los errores encontrados desde la última calibración, limpieza o sonda nueva. Cuenta cuando el intervalo del 95 % de la pendiente excluye el cero y el error previsto para la próxima visita supera el umbral.",
                "Reta pelos erros encontrados desde a última calibração, limpeza ou sonda nova. Conta quando o intervalo de 95 % da inclinação exclui o zero e o erro previsto para a próxima visita supera o limiar."),
            Line),
        [FindingKinds.ProbeFouled] = new(
            new(
                "As found, after cleaning and reference on one visit: cleaning takes away most of an error. Or errors to one side on visits in a row, or two calibrations of an uncleaned probe to the same side.",
                "Como se encontró, tras limpiar y referencia en una visita: la limpieza quita la mayor parte del error. O errores hacia el mismo lado en visitas seguidas, o dos calibraciones de una sonda sin limpiar hacia el mismo lado.",
                "Como encontrado, após limpar e referência em uma visita: a limpeza tira a maior parte do erro. Ou erros para o mesmo lado em visitas seguidas, ou duas calibrações de uma sonda sem limpeza para o mesmo lado."),
            MassBalance),
        [FindingKinds.ConductivityOut] = new(
            new(
                "Reference conductivity against the programme's range, or against the set point where it has none. Not judged soon after a start, a drain, a clean or a new set point, nor during a bleed hold.",
                "Conductividad de referencia frente al rango del programa, o al punto de consigna si no lo tiene. No se juzga poco después de arrancar, vaciar, limpiar o cambiar la consigna, ni con la purga retenida.",
                "Condutividade de referência contra a faixa do programa, ou contra o ponto de ajuste quando não há faixa. Não se julga pouco depois de partir, esvaziar, limpar ou mudar o ajuste, nem com a purga retida."),
            Common),
        [FindingKinds.CyclesLow] = new(
            new(
                "Cycles by chloride, calcium, silica, volume or corrected conductivity, each with its uncertainty, the agreeing ones combined; compared with the target. A second visit counts where it rests on another reading of the make-up.",
                "Ciclos por cloruro, calcio, sílice, volumen o conductividad corregida, cada uno con su incertidumbre y combinados los que concuerdan; comparados con el objetivo. Una segunda visita cuenta si se apoya en otra lectura de la reposición.",
                "Ciclos por cloreto, cálcio, sílica, volume ou condutividade corrigida, cada um com a sua incerteza e combinados os que concordam; comparados com o alvo. Uma segunda visita conta quando se apoia em outra leitura da reposição."),
            Balance),
        [FindingKinds.CyclesHigh] = new(
            new(
                "Cycles by chloride, calcium, silica, volume or corrected conductivity, each with its uncertainty, the agreeing ones combined; compared with the target. A second visit counts where it rests on another reading of the make-up.",
                "Ciclos por cloruro, calcio, sílice, volumen o conductividad corregida, cada uno con su incertidumbre y combinados los que concuerdan; comparados con el objetivo. Una segunda visita cuenta si se apoya en otra lectura de la reposición.",
                "Ciclos por cloreto, cálcio, sílica, volume ou condutividade corrigida, cada um com a sua incerteza e combinados os que concordam; comparados com o alvo. Uma segunda visita conta quando se apoia em outra leitura da reposição."),
            Balance),
        [FindingKinds.CyclesDisagree] = new(
            new(
                "Ratio of two routes to the cycles against the system's own median of undisturbed visits, or fixed limits before there is one. A second visit counts where it rests on another reading of the make-up.",
                "Relación entre dos vías de cálculo de los ciclos frente a la mediana propia de visitas sin perturbar, o límites fijos mientras no la haya. Una segunda visita cuenta si se apoya en otra lectura de la reposición.",
                "Razão entre duas vias de cálculo dos ciclos contra a mediana própria de visitas sem perturbação, ou limites fixos enquanto não houver. Uma segunda visita conta quando se apoia em outra leitura da reposição."),
            Balance),
        [FindingKinds.Depositing] = new(
            new(
                "Cycles by calcium (or silica) over cycles by chloride, both waters measured, against the system's own median: what is missing has been left somewhere. To be planned it wants three uncertainties and a second visit with another reading of the make-up; where alkalinity does not lack what calcium lacks, a third.",
                "Ciclos por calcio (o sílice) entre ciclos por cloruro, medidas ambas aguas, frente a la mediana propia: lo que falta ha quedado en alguna parte. Para planificarlo hacen falta tres incertidumbres y una segunda visita con otra lectura de la reposición; si a la alcalinidad no le falta lo que al calcio, una tercera.",
                "Ciclos por cálcio (ou sílica) sobre ciclos por cloreto, medidas as duas águas, contra a mediana própria: o que falta ficou em algum lugar. Para planejar, são precisas três incertezas e uma segunda visita com outra leitura da reposição; se à alcalinidade não falta o que falta ao cálcio, uma terceira."),
            Balance),
        [FindingKinds.WaterLoss] = new(
            new(
                "Bleed hours for each volume of make-up against the system's own usual, and the water balance: make-up over cycles minus bleed hours times valve flow minus known drains.",
                "Horas de purga por volumen de reposición frente a lo habitual del propio sistema, y el balance de agua: reposición entre ciclos menos horas de purga por caudal de la válvula menos drenajes conocidos.",
                "Horas de purga por volume de reposição contra o habitual do próprio sistema, e o balanço de água: reposição sobre ciclos menos horas de purga vezes vazão da válvula menos drenagens conhecidas."),
            MassBalance),
        [FindingKinds.BleedNotFlowing] = new(
            new(
                "Bleed hours against make-up over cycles and valve flow, while conductivity stands above the set point.",
                "Horas de purga frente a reposición entre ciclos y caudal de válvula, con la conductividad por encima de la consigna.",
                "Horas de purga contra reposição sobre ciclos e vazão da válvula, com a condutividade acima do ajuste."),
            MassBalance),
        [FindingKinds.BleedNotClosing] = new(
            new(
                "Conductivity far below the set point together with a loss close to the valve's flow.",
                "Conductividad muy por debajo de la consigna junto con una pérdida cercana al caudal de la válvula.",
                "Condutividade muito abaixo do ajuste junto com uma perda próxima da vazão da válvula."),
            MassBalance),
        [FindingKinds.MeterStopped] = new(
            new(
                "Advance of the dial or total against what the plant must have used (evaporation, bleed hours, own usual use).",
                "Avance del contador o del total frente a lo que la planta tuvo que consumir (evaporación, horas de purga, consumo habitual).",
                "Avanço do mostrador ou do total contra o que a planta teve de consumir (evaporação, horas de purga, consumo habitual)."),
            MassBalance),
        [FindingKinds.PulsesLost] = new(
            new(
                "Advance of the dial against advance of the controller's total over the same interval, from 50 pulses on. A difference that one miswritten digit explains waits for the next visit.",
                "Avance del contador frente al avance del total del controlador en el mismo intervalo, desde 50 impulsos. Una diferencia que se explica por una cifra mal anotada espera a la visita siguiente.",
                "Avanço do mostrador contra o avanço do total do controlador no mesmo intervalo, a partir de 50 pulsos. Uma diferença que um algarismo mal anotado explica espera a visita seguinte."),
            Registers),
        [FindingKinds.MeterBackwards] = new(
            new(
                "New count below the old one with no rollover, reset or replacement on record; a rollover must be possible and not imply several times the usual flow.",
                "Cuenta nueva menor que la anterior sin vuelta a cero, reinicio ni cambio registrados; una vuelta a cero debe ser posible y no suponer varias veces el caudal habitual.",
                "Contagem nova menor que a anterior sem volta a zero, reinício nem troca registrados; uma volta a zero deve ser possível e não supor várias vezes a vazão habitual."),
            Registers),
        [FindingKinds.FeedLow] = new(
            new(
                "Stock used (first level minus last plus deliveries) against dose times the water lost, or the doses planned, over the shortest window in which the levels can tell it. Oxidants and acids: against the system's own early use for each litre of make-up and each day. To be planned, the inhibitor's residual bears it out, or a stretch twice as telling says the same.",
                "Existencias usadas (primer nivel menos último más entregas) frente a dosis por agua perdida, o las dosis previstas, en la ventana más corta en que los niveles pueden decirlo. Oxidantes y ácidos: frente al consumo inicial del propio sistema por litro de reposición y por día. Para planificarlo, el residual del inhibidor lo confirma, o lo dice también un intervalo con el doble de peso.",
                "Estoque usado (primeiro nível menos último mais entregas) contra dose vezes água perdida, ou as doses previstas, na janela mais curta em que os níveis podem dizer. Oxidantes e ácidos: contra o consumo inicial do próprio sistema por litro de reposição e por dia. Para planejar, o residual do inibidor o confirma, ou um intervalo com o dobro do peso diz o mesmo."),
            Doses),
        [FindingKinds.FeedHigh] = new(
            new(
                "Stock used (first level minus last plus deliveries) against dose times the water lost, or the doses planned, over the shortest window in which the levels can tell it. Oxidants and acids: against the system's own early use for each litre of make-up and each day. To be planned, the inhibitor's residual bears it out, or a stretch twice as telling says the same.",
                "Existencias usadas (primer nivel menos último más entregas) frente a dosis por agua perdida, o las dosis previstas, en la ventana más corta en que los niveles pueden decirlo. Oxidantes y ácidos: frente al consumo inicial del propio sistema por litro de reposición y por día. Para planificarlo, el residual del inhibidor lo confirma, o lo dice también un intervalo con el doble de peso.",
                "Estoque usado (primeiro nível menos último mais entregas) contra dose vezes água perdida, ou as doses previstas, na janela mais curta em que os níveis podem dizer. Oxidantes e ácidos: contra o consumo inicial do próprio sistema por litro de reposição e por dia. Para planejar, o residual do inibidor o confirma, ou um intervalo com o dobro do peso diz o mesmo."),
            Doses),
        [FindingKinds.OverfedThenEmpty] = new(
            new(
                "Output hours, the drum at its heel, the residual and the bleed hours together: how long the pump can have fed, and how long the drum has then stood empty while the residual washed out.",
                "Horas de la salida, bidón en el fondo, residual y horas de purga juntos: cuánto pudo dosificar la bomba y cuánto lleva vacío el bidón mientras el residual se lavaba.",
                "Horas da saída, bombona no fundo, residual e horas de purga juntos: por quanto tempo a bomba pôde dosar e há quanto tempo a bombona está vazia enquanto o residual era lavado."),
            MassBalance),
        [FindingKinds.PumpOutput] = new(
            new(
                "Drop of the drum for each hour run at the same stroke and speed, against the pump's own first drawdown or early output, and against its rating. To be planned, the inhibitor's residual bears it out, or a stretch twice as telling says the same.",
                "Descenso del bidón por hora de marcha con la misma carrera y velocidad, frente al primer aforo propio o el caudal inicial, y frente al nominal de la bomba. Para planificarlo, el residual del inhibidor lo confirma, o lo dice también un intervalo con el doble de peso.",
                "Queda da bombona por hora de marcha com o mesmo curso e velocidade, contra a primeira aferição própria ou a vazão inicial, e contra a nominal da bomba. Para planejar, o residual do inibidor o confirma, ou um intervalo com o dobro do peso diz o mesmo."),
            Common),
        [FindingKinds.ResidualLow] = new(
            new(
                "Result against its range: beyond the limit by more than its expanded uncertainty, or twice in a row. A sample soon after a dose or during a hold tells nothing.",
                "Resultado frente a su rango: más allá del límite en más de su incertidumbre expandida, o dos veces seguidas. Una muestra poco después de una dosis o con la purga retenida no dice nada.",
                "Resultado contra a sua faixa: além do limite por mais que a sua incerteza expandida, ou duas vezes seguidas. Uma amostra pouco depois de uma dose ou com a purga retida não diz nada."),
            Common),
        [FindingKinds.ResidualHigh] = new(
            new(
                "Result against its range: beyond the limit by more than its expanded uncertainty, or twice in a row. A sample soon after a dose or during a hold tells nothing.",
                "Resultado frente a su rango: más allá del límite en más de su incertidumbre expandida, o dos veces seguidas. Una muestra poco después de una dosis o con la purga retenida no dice nada.",
                "Resultado contra a sua faixa: além do limite por mais que a sua incerteza expandida, ou duas vezes seguidas. Uma amostra pouco depois de uma dose ou com a purga retida não diz nada."),
            Common),
        [FindingKinds.WrongProduct] = new(
            new(
                "Product found or lot against the drum's product; or stock falls and the pump delivers as usual while the residual stays far below its balance for several half-lives.",
                "Producto encontrado o lote frente al del bidón; o las existencias bajan y la bomba entrega como siempre mientras el residual queda muy por debajo de su balance durante varias vidas medias.",
                "Produto encontrado ou lote contra o da bombona; ou o estoque cai e a bomba entrega como sempre enquanto o residual fica muito abaixo do seu balanço por várias meias-vidas."),
            Common),
        [FindingKinds.RunsOut] = new(
            new(
                "Level, usual use with its spread, days of running to the next visit and spares: the chance that the drum is empty before then. Between visits a new headline asks for more.",
                "Nivel, consumo habitual con su dispersión, días de marcha hasta la próxima visita y repuesto: la probabilidad de que el bidón se vacíe antes. Entre visitas un aviso nuevo exige más.",
                "Nível, consumo habitual com a sua dispersão, dias de operação até a próxima visita e reserva: a chance de a bombona esvaziar antes. Entre visitas um aviso novo exige mais."),
            Common),
        [FindingKinds.StockUnexplained] = new(
            new(
                "Level against the last one, deliveries, additions and hours run; a difference beyond its expanded uncertainty has no explanation on record.",
                "Nivel frente al anterior, entregas, adiciones y horas de marcha; una diferencia mayor que su incertidumbre expandida no tiene explicación registrada.",
                "Nível contra o anterior, entregas, adições e horas de marcha; uma diferença maior que a sua incerteza expandida não tem explicação registrada."),
            Common),
        [FindingKinds.DoseMissed] = new(
            new(
                "Doses that the plan asks for since the last visit against the output's hours and the drum; both must be well below.",
                "Dosis que pide el plan desde la última visita frente a las horas de la salida y al bidón; ambos deben quedar muy por debajo.",
                "Doses que o plano pede desde a última visita contra as horas da saída e a bombona; ambos devem ficar bem abaixo."),
            MassBalance),
        [FindingKinds.DosePlanClash] = new(
            new(
                "The programme as found, run through all its weeks: doses, contact times, gaps of the labels and holds must not overlap.",
                "El programa tal como se encontró, recorrido en todas sus semanas: dosis, tiempos de contacto, separaciones de etiqueta y retenciones no deben solaparse.",
                "O programa como encontrado, percorrido em todas as suas semanas: doses, tempos de contato, intervalos do rótulo e retenções não podem se sobrepor."),
            Common),
        [FindingKinds.DoseUntreated] = new(
            new(
                "Doses that moved product, by hours and drum, against the hours in which the water circulates, with the clock as found.",
                "Dosis que movieron producto, por horas y bidón, frente a las horas en que circula el agua, con el reloj tal como se encontró.",
                "Doses que moveram produto, por horas e bombona, contra as horas em que a água circula, com o relógio como encontrado."),
            MassBalance),
        [FindingKinds.HoldTooLong] = new(
            new(
                "Conductivity at the end of the hold: start plus make-up conductivity times evaporation times duration over volume, at busy-season load, against the high alarm.",
                "Conductividad al final de la retención: inicio más conductividad de reposición por evaporación por duración entre volumen, con carga de temporada alta, frente a la alarma alta.",
                "Condutividade no fim da retenção: início mais condutividade de reposição vezes evaporação vezes duração sobre volume, com carga de alta temporada, contra o alarme alto."),
            MassBalance),
        [FindingKinds.MicrobiologyHigh] = new(
            new(
                "The count in its unit against the bands of the rule in force on the day of the sample, else the programme's range, else fixed limits for total counts. Half a decade is noise for a slide.",
                "El recuento en su unidad frente a las bandas de la norma vigente el día de la muestra; si no, el rango del programa; si no, límites fijos para recuentos totales. Media década es ruido en una lámina.",
                "A contagem na sua unidade contra as faixas da regra em vigor no dia da amostra; senão, a faixa do programa; senão, limites fixos para contagens totais. Meia década é ruído em uma lâmina."),
            Guidance),
        [FindingKinds.ClockDue] = new(
            new(
                "Days since it was last done, since the event or since the result, days of operation where the rule says so, against the days allowed.",
                "Días desde la última vez, desde el suceso o desde el resultado, días de operación si la norma lo dice, frente a los días permitidos.",
                "Dias desde a última vez, desde o evento ou desde o resultado, dias de operação quando a regra diz, contra os dias permitidos."),
            Data),
        [FindingKinds.MakeUpChanged] = new(
            new(
                "Make-up tests against the last twelve readings of the same point: the shift must exceed a share and three standard deviations, and be repeated. Tests that moved along bear it out where all together are past the limit.",
                "Ensayos de la reposición frente a las últimas doce lecturas del mismo punto: el cambio debe superar una parte y tres desviaciones típicas, y repetirse. Los ensayos que cambiaron a la par lo confirman si todos juntos pasan el límite.",
                "Ensaios da reposição contra as últimas doze leituras do mesmo ponto: a mudança deve superar uma parte e três desvios padrão, e se repetir. Os ensaios que mudaram junto o confirmam quando todos juntos passam o limite."),
            Common),
        [FindingKinds.Scaling] = new(
            new(
                "Saturation index of the tower water from pH, temperature, calcium, alkalinity and dissolved solids, with the formula's honest ± against an aqueous-chemistry program, or the product's own limit.",
                "Índice de saturación del agua de la torre por pH, temperatura, calcio, alcalinidad y sólidos disueltos, con el ± honesto de la fórmula frente a un programa de química acuosa, o el límite del producto.",
                "Índice de saturação da água da torre por pH, temperatura, cálcio, alcalinidade e sólidos dissolvidos, com o ± honesto da fórmula contra um programa de química aquosa, ou o limite do produto."),
            Saturation),
        [FindingKinds.Corrosive] = new(
            new(
                "Coupon rates over at least 30 days, metals in the water, and pH on new galvanised steel; an index alone is only watched.",
                "Velocidades de testigos de al menos 30 días, metales en el agua y pH con galvanizado nuevo; un índice por sí solo solo se observa.",
                "Taxas de corpos de prova de pelo menos 30 dias, metais na água e pH com galvanizado novo; um índice sozinho só é observado."),
            Bands),
        [FindingKinds.SwitchNotAutomatic] = new(
            new(
                "Switch positions found and left.",
                "Posiciones de los selectores, encontradas y dejadas.",
                "Posições das chaves, encontradas e deixadas."),
            Data),
        [FindingKinds.SettingsChanged] = new(
            new(
                "Settings read this time against those left last time, compared as numbers within the display's last digit; what was not read is not changed.",
                "Ajustes leídos esta vez frente a los dejados la anterior, comparados como números dentro del último dígito; lo no leído no ha cambiado.",
                "Ajustes lidos desta vez contra os deixados na anterior, comparados como números dentro do último dígito; o que não foi lido não mudou."),
            Data),
        [FindingKinds.SettingsLost] = new(
            new(
                "Settings read this time against those left last time, compared as numbers within the display's last digit; what was not read is not changed.",
                "Ajustes leídos esta vez frente a los dejados la anterior, comparados como números dentro del último dígito; lo no leído no ha cambiado.",
                "Ajustes lidos desta vez contra os deixados na anterior, comparados como números dentro do último dígito; o que não foi lido não mudou."),
            Data),
        [FindingKinds.ControllerClock] = new(
            new(
                "Controller clock and programme week against true time and the calendar of the plan.",
                "Reloj y semana de programa del controlador frente a la hora real y el calendario del plan.",
                "Relógio e semana de programa do controlador contra a hora real e o calendário do plano."),
            Data),
        [FindingKinds.AlarmStanding] = new(
            new(
                "Alarms present at the visit, with the output they belong to and whether the plant runs.",
                "Alarmas presentes en la visita, con la salida a la que pertenecen y si la planta funciona.",
                "Alarmes presentes na visita, com a saída a que pertencem e se a planta funciona."),
            Data),
        [FindingKinds.InstrumentShift] = new(
            new(
                "Comparisons made with one hand meter on several sites against what other meters found there: their median must exceed the threshold and two standard errors; a failed standard decides alone.",
                "Comparaciones hechas con un medidor en varios sitios frente a lo que hallaron otros allí: su mediana debe superar el umbral y dos errores típicos; un patrón fallido decide por sí solo.",
                "Comparações feitas com um medidor em vários locais contra o que outros acharam ali: a sua mediana deve superar o limiar e dois erros padrão; um padrão reprovado decide sozinho."),
            Common),
        [FindingKinds.LotShift] = new(
            new(
                "Results with one reagent lot on several sites against each site's own expectation; the median must exceed the threshold and two standard errors while other lots stay put.",
                "Resultados con un lote en varios sitios frente a lo esperado en cada uno; la mediana debe superar el umbral y dos errores típicos mientras los otros lotes no se mueven.",
                "Resultados com um lote em vários locais contra o esperado em cada um; a mediana deve superar o limiar e dois erros padrão enquanto os outros lotes não se movem."),
            Common),
        [FindingKinds.SecondLook] = new(
            new(
                "At least two independent signs in the records of one visit; a question to a colleague, not a verdict.",
                "Al menos dos señales independientes en los registros de una visita; una pregunta a un colega, no un veredicto.",
                "Pelo menos dois sinais independentes nos registros de uma visita; uma pergunta a um colega, não um veredito."),
            Common),
        [FindingKinds.ValueSuspect] = new(
            new(
                "Each result against the median of the last six of the same test, point and source (at least three), and against what the test can show; a probe check against the readings that repeat it; counters against what the pipe carries and the time that passed. The value stays as entered and is never more than watched.",
                "Cada resultado frente a la mediana de los últimos seis del mismo análisis, punto y fuente (al menos tres) y frente a lo que el análisis puede mostrar; la comprobación de una sonda frente a las lecturas que la repiten; los contadores frente a lo que lleva la tubería y el tiempo pasado. El valor queda como se anotó y solo se vigila.",
                "Cada resultado contra a mediana dos últimos seis do mesmo teste, ponto e fonte (pelo menos três) e contra o que o teste pode mostrar; a verificação de uma sonda contra as leituras que a repetem; os contadores contra o que o tubo leva e o tempo passado. O valor fica como anotado e só se acompanha."),
            Common),
        [FindingKinds.SummaryUndelivered] = new(
            new(
                "What the mail server answered, and the hours since the summary was handed to it.",
                "Lo que respondió el servidor de correo y las horas desde que se le entregó el resumen.",
                "O que o servidor de correio respondeu e as horas desde que o resumo lhe foi entregue."),
            Data),
        [FindingKinds.RangeOut] = new(
            new(
                "Result against its range: beyond the limit by more than its expanded uncertainty, or twice in a row.",
                "Resultado frente a su rango: más allá del límite en más de su incertidumbre expandida, o dos veces seguidas.",
                "Resultado contra a sua faixa: além do limite por mais que a sua incerteza expandida, ou duas vezes seguidas."),
            Common),
        [FindingKinds.BiocideLapse] = new(
            new(
                "Every biocide of the system, by stock, switches, hours and residual: for how many days none can have worked while in use.",
                "Cada biocida del sistema, por existencias, selectores, horas y residual: cuántos días ninguno pudo actuar estando en uso.",
                "Cada biocida do sistema, por estoque, chaves, horas e residual: por quantos dias nenhum pôde agir estando em uso."),
            Common),
        [FindingKinds.RestartUnproved] = new(
            new(
                "A stop longer than the rule allows, running again, and no disinfection or sample on record since.",
                "Una parada más larga que la permitida, de nuevo en marcha, sin desinfección ni muestra registradas desde entonces.",
                "Uma parada mais longa que a permitida, de novo em marcha, sem desinfecção nem amostra registradas desde então."),
            Memory),
        [FindingKinds.LabelExceeded] = new(
            new(
                "Each dose, the week's total and the gap between doses against the product's label, with the system's volume at its low end.",
                "Cada dosis, el total de la semana y la separación entre dosis frente a la etiqueta, con el volumen del sistema en su extremo bajo.",
                "Cada dose, o total da semana e o intervalo entre doses contra o rótulo, com o volume do sistema no seu extremo baixo."),
            Label),
        [FindingKinds.MixingHazard] = new(
            new(
                "Products that must never meet, by the labels on file, standing or feeding where they can.",
                "Productos que nunca deben juntarse, según las etiquetas registradas, situados o dosificados donde pueden.",
                "Produtos que nunca podem se encontrar, segundo os rótulos registrados, guardados ou dosados onde podem."),
            Label),
        [FindingKinds.NotMeasured] = new(
            new(
                "Tests of the programme and the reference reading that visits in a row left out; days since the hand meter was last proved.",
                "Ensayos del programa y lectura de referencia que faltaron en visitas seguidas; días desde que se comprobó el medidor.",
                "Ensaios do programa e leitura de referência que faltaram em visitas seguidas; dias desde que o medidor foi comprovado."),
            Common),
        [FindingKinds.SeenAgain] = new(
            new(
                "The same observation on two visits with no action closed between them; on three where it was only to be watched.",
                "La misma observación en dos visitas sin una acción cerrada entre ellas; en tres si solo había que vigilarla.",
                "A mesma observação em duas visitas sem uma ação encerrada entre elas; em três se era só para observar."),
            Data),
    };

    /// <summary>How a kind is judged.</summary>
    /// <param name="kind">One of <see cref="FindingKinds"/>.</param>
    /// <returns>Method and source.</returns>
    /// <exception cref="KeyNotFoundException">No such kind.</exception>
    public static FindingMethod Of(string kind) => Methods[kind];
}
