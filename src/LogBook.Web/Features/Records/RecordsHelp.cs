using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Records;

/// <summary>Help of the records of instruments.</summary>
public sealed class RecordsHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "probe-record",
            RecordTexts.Probe,
            [
                new(
                    "How a conductivity probe read against the hand meter: as found, after cleaning, as left, with the tolerance, and the line on which it drifts since it was last cleaned, calibrated or renewed. What cleaning takes away is fouling; what stays is calibration. A probe that is calibrated while dirty will be wrong again soon. Below stand the checks of the hand meters in their standards: an unproved meter proves nothing. Where a feed follows a display (ORP, pH), its display, set point, the test of the water and the hours run stand side by side: a coated probe shows its set point while the feed starves.",
                    "Cómo leyó una sonda de conductividad frente al medidor portátil: como se encontró, tras limpiar, como se dejó, con la tolerancia y la recta en que deriva desde la última limpieza, calibración o renovación. Lo que quita la limpieza es suciedad; lo que queda es calibración. Una sonda calibrada sucia volverá a errar pronto. Debajo están las verificaciones de los medidores con sus patrones: un medidor sin verificar no prueba nada. Donde una dosificación sigue una indicación (ORP, pH), la indicación, la consigna, el análisis del agua y las horas de marcha están juntos: una sonda con depósitos muestra su consigna mientras falta dosificación.",
                    "Como uma sonda de condutividade leu contra o medidor portátil: como encontrada, depois de limpar, como deixada, com a tolerância e a reta em que deriva desde a última limpeza, calibração ou troca. O que a limpeza tira é sujeira; o que fica é calibração. Uma sonda calibrada suja logo errará de novo. Abaixo estão as verificações dos medidores com seus padrões: um medidor sem verificação não prova nada. Onde uma dosagem segue uma indicação (ORP, pH), a indicação, o ajuste, o teste da água e as horas de funcionamento ficam lado a lado: uma sonda com depósitos mostra seu ajuste enquanto falta dosagem."),
            ],
            "/sites/{Code}/systems/{System}/probe"),
        new(
            "meter-record",
            RecordTexts.Meter,
            [
                new(
                    "Every reading of a water meter: dial and total, what passed by each since the last reading, their difference and the pulses lost, rollovers, exchanges and resets. A number that could not be worked out is a dash; its reason stands beside it.",
                    "Cada lectura de un contador: esfera y total, lo que pasó según cada uno desde la última lectura, su diferencia y los pulsos perdidos, vueltas a cero, cambios y reinicios. Un número que no se pudo calcular es una raya; su motivo está al lado.",
                    "Cada leitura de um hidrômetro: mostrador e total, o que passou por cada um desde a última leitura, a diferença e os pulsos perdidos, viradas, trocas e zeragens. Um número que não pôde ser calculado é um traço; o motivo está ao lado."),
            ],
            "/sites/{Code}/systems/{System}/meters"),
        new(
            "pump-output",
            RecordTexts.Pump,
            [
                new(
                    "What a feed pump moves for each hour run, from the drop of its drum and the hours of its output, beside timed measuring columns, the plate and the pump's own past. A pump that wears or loses its prime shows here before the residual does.",
                    "Lo que mueve una bomba por hora de marcha, según la bajada de su bidón y las horas de su salida, junto a columnas cronometradas, la placa y su propio pasado. Una bomba que se desgasta o pierde el cebado se ve aquí antes que en el residual.",
                    "O que uma bomba move por hora de funcionamento, pela queda da bombona e pelas horas da saída, ao lado de colunas cronometradas, da placa e do próprio passado. Uma bomba que se desgasta ou perde a escorva aparece aqui antes do residual."),
            ],
            "/sites/{Code}/systems/{System}/pumps"),
    ];
}
