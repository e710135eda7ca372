using LogBook.Domain.Languages;

namespace LogBook.Domain.Visits;

/// <summary>Wording of doubts about an entry.</summary>
internal static class VisitChecksTexts
{
    public static readonly Text BeyondLimits = new(
        "Please read again: {0} {1} is outside {2}",
        "Lea de nuevo, por favor: {0} {1} está fuera de {2}",
        "Leia novamente, por favor: {0} {1} está fora de {2}");

    public static readonly Text FarFromUsual = new(
        "Please read again: {0} {1}, usual here is {2}",
        "Lea de nuevo, por favor: {0} {1}, lo habitual aquí es {2}",
        "Leia novamente, por favor: {0} {1}, o habitual aqui é {2}");

    public static readonly Text Slip = new(
        "Please read again: {0} {1}, usual here is {2}; the unit or the point may have slipped ({3})",
        "Lea de nuevo, por favor: {0} {1}, lo habitual aquí es {2}; puede haber un error de unidad o de coma ({3})",
        "Leia novamente, por favor: {0} {1}, o habitual aqui é {2}; pode haver erro de unidade ou de vírgula ({3})");

    public static readonly Text PartAboveWhole = new(
        "Please read again: {0} {1} is more than {2}\u00a0{3}",
        "Lea de nuevo, por favor: {0} {1} es más que {2}\u00a0{3}",
        "Leia novamente, por favor: {0} {1} é mais que {2}\u00a0{3}");

    public static readonly Text SaidTwice = new(
        "Please read again: {0} {1} here, {2} among the readings",
        "Lea de nuevo, por favor: {0} {1} aquí, {2} entre las lecturas",
        "Leia novamente, por favor: {0} {1} aqui, {2} entre as leituras");

    public static readonly Text Lower = new(
        "Please read again: {0} {1} is lower than {2} last time, and neither reset nor replacement is noted",
        "Lea de nuevo, por favor: {0} {1} es menor que {2} la última vez, y no consta ni reinicio ni cambio",
        "Leia novamente, por favor: {0} {1} é menor que {2} da última vez, e não consta reinício nem troca");

    public static readonly Text TooFast = new(
        "Please read again: {0} means {1}\u00a0L/h since last time, the pipe carries {2}\u00a0L/h",
        "Lea de nuevo, por favor: {0} significa {1}\u00a0L/h desde la última vez, la tubería lleva {2}\u00a0L/h",
        "Leia novamente, por favor: {0} significa {1}\u00a0L/h desde a última vez, a tubulação leva {2}\u00a0L/h");

    public static readonly Text Unusual = new(
        "Please read again: {0} means {1}\u00a0L/h since last time, usual here is {2}\u00a0L/h",
        "Lea de nuevo, por favor: {0} significa {1}\u00a0L/h desde la última vez, lo habitual aquí es {2}\u00a0L/h",
        "Leia novamente, por favor: {0} significa {1}\u00a0L/h desde a última vez, o habitual aqui é {2}\u00a0L/h");

    public static readonly Text MoreHours = new(
        "Please read again: {0}\u00a0h more than last time, but only {1}\u00a0h have passed",
        "Lea de nuevo, por favor: {0}\u00a0h más que la última vez, pero solo han pasado {1}\u00a0h",
        "Leia novamente, por favor: {0}\u00a0h a mais que da última vez, mas só passaram {1}\u00a0h");

    public static readonly Text Rose = new(
        "Please read again: about {0}\u00a0L in drum {1}, {2}\u00a0L last time, and no delivery is noted",
        "Lea de nuevo, por favor: unos {0}\u00a0L en el bidón {1}, {2}\u00a0L la última vez, y no consta ninguna entrega",
        "Leia novamente, por favor: cerca de {0}\u00a0L na bombona {1}, {2}\u00a0L da última vez, e não consta entrega");

    public static readonly Text UsedMore = new(
        "Please read again: about {0}\u00a0L used from drum {1} since last time, usual for so long is {2}\u00a0L",
        "Lea de nuevo, por favor: unos {0}\u00a0L gastados del bidón {1} desde la última vez, lo habitual en ese tiempo es {2}\u00a0L",
        "Leia novamente, por favor: cerca de {0}\u00a0L gastos da bombona {1} desde a última vez, o habitual nesse tempo é {2}\u00a0L");

    public static readonly Text Delivered = new(
        "Please read again: {0}\u00a0L delivered, usual here is {1}\u00a0L",
        "Lea de nuevo, por favor: {0}\u00a0L entregados, lo habitual aquí es {1}\u00a0L",
        "Leia novamente, por favor: {0}\u00a0L entregues, o habitual aqui é {1}\u00a0L");

    public static readonly Text UnusualHours = new(
        "Please read again: {0}\u00a0h more than last time, usual for so long is {1}\u00a0h",
        "Lea de nuevo, por favor: {0}\u00a0h más que la última vez, lo habitual en ese tiempo es {1}\u00a0h",
        "Leia novamente, por favor: {0}\u00a0h a mais que da última vez, o habitual nesse tempo é {1}\u00a0h");

    public static readonly Text RegistersPart = new(
        "Please read again: {0}\u00a0L by the dial since last time, {1}\u00a0L by the controller's total",
        "Lea de nuevo, por favor: {0}\u00a0L por el contador desde la última vez, {1}\u00a0L por el total del controlador",
        "Leia novamente, por favor: {0}\u00a0L pelo hidrômetro desde a última vez, {1}\u00a0L pelo total do controlador");

    public static readonly Text OtherOfSameWater = new(
        "Please read again: {0} {1} here, {2} for the same water",
        "Lea de nuevo, por favor: {0} {1} aquí, {2} para la misma agua",
        "Leia novamente, por favor: {0} {1} aqui, {2} para a mesma água");

    public static readonly Text NotAsLeft = new(
        "Please read again: {0}\u00a0%, left at {1}\u00a0% last time",
        "Lea de nuevo, por favor: {0}\u00a0%, quedó en {1}\u00a0% la última vez",
        "Leia novamente, por favor: {0}\u00a0%, ficou em {1}\u00a0% da última vez");

    public static readonly Text OutputOfPump = new(
        "Please read again: this makes {0} mL/min, {1} mL/min last time",
        "Lea de nuevo, por favor: esto da {0} mL/min, {1} mL/min la última vez",
        "Leia novamente, por favor: isto dá {0} mL/min, {1} mL/min da última vez");

    /// <summary>A number with at most four figures, in the format of a language.</summary>
    public static string Number(double value, Language language)
    {
        // Rounding to figures, not decimals: 0.0123 and 12,340 both keep what matters.
        var digits = value == 0 ? 0 : 3 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var rounded = digits >= 0 ? Math.Round(value, Math.Min(digits, 15)) : Math.Round(value * Math.Pow(10, digits)) / Math.Pow(10, digits);
        return rounded.ToString("#,0.###############", Cultures.Of(language));
    }
}
