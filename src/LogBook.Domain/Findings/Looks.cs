using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Causes and next looks that several rules share.</summary>
internal static class Looks
{
    public static Said Say(string en, string es, string pt) => new(new Text(en, es, pt));

    public static (string Cause, Said Words) Cause(string cause, string en, string es, string pt) => (cause, Say(en, es, pt));

    public static Said ReadAgain { get; } = Say("Read again on the same water.", "Lea otra vez en la misma agua.", "Leia de novo na mesma água.");

    public static Said ProveMeter { get; } = Say("Prove the hand meter in a standard.", "Compruebe el medidor portátil en un patrón.", "Verifique o medidor portátil em um padrão.");

    public static Said CleanProbe { get; } = Say("Clean the probe, then read again before any calibration.", "Limpie la sonda y lea otra vez antes de calibrar.", "Limpe a sonda e leia de novo antes de calibrar.");

    public static Said TimeBleed { get; } = Say("Time the bleed into a bucket.", "Mida la purga con un cubo y un cronómetro.", "Meça a purga com um balde e um cronômetro.");

    public static Said TestMakeUp { get; } = Say("Test the make-up again, from the running tap.", "Analice otra vez la reposición, con el grifo corriendo.", "Teste de novo a reposição, com a torneira correndo.");

    public static Said PumpRuns { get; } = Say("See the pump run and its line full.", "Vea la bomba en marcha y su línea llena.", "Veja a bomba funcionar e sua linha cheia.");

    public static Said LevelAgain { get; } = Say("Read the level again; ask about deliveries and exchanges.", "Lea otra vez el nivel; pregunte por entregas y cambios.", "Leia de novo o nível; pergunte sobre entregas e trocas.");

    public static Said LabelFirst { get; } = Say(
        "Any dose stays within the product's label.", "Toda dosis queda dentro de la etiqueta del producto.", "Toda dose fica dentro do rótulo do produto.");

    public static (string Cause, Said Words) Reading { get; } = Cause("reading", "a reading slipped", "una lectura equivocada", "uma leitura errada");
}
