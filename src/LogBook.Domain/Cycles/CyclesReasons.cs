using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Cycles;

/// <summary>Why cycles or a part of the water balance cannot be worked out.</summary>
public static class CyclesReasons
{
    /// <summary>The make-up reading is zero or below.</summary>
    public static readonly Reason MakeUpZero = new("make-up-zero", new Text(
        "The make-up reading is zero.",
        "La lectura del agua de reposición es cero.",
        "A leitura da água de reposição é zero."));

    /// <summary>Two readings in different units.</summary>
    public static readonly Reason UnitsDiffer = new("units-differ", new Text(
        "Tower and make-up are in different units.",
        "Torre y reposición están en unidades distintas.",
        "Torre e reposição estão em unidades diferentes."));

    /// <summary>The bleed volume is zero.</summary>
    public static readonly Reason BleedZero = new("bleed-zero", new Text(
        "No bleed was counted.",
        "No se contó ninguna purga.",
        "Nenhuma purga foi contada."));

    /// <summary>Cycles of one or less: nothing was concentrated.</summary>
    public static readonly Reason CyclesNotAboveOne = new("cycles-not-above-one", new Text(
        "Cycles are not above 1: the water was not concentrated.",
        "Los ciclos no superan 1: el agua no se concentró.",
        "Os ciclos não passam de 1: a água não se concentrou."));

    /// <summary>Cycles of zero or less.</summary>
    public static readonly Reason CyclesZero = new("cycles-zero", new Text(
        "Cycles are zero or missing.",
        "Los ciclos son cero o faltan.",
        "Os ciclos são zero ou faltam."));

    /// <summary>A flow, volume, heat or time that cannot occur.</summary>
    public static readonly Reason Impossible = new("balance-value-impossible", new Text(
        "A number of the water balance cannot occur.",
        "Un número del balance de agua no es posible.",
        "Um número do balanço de água não é possível."));

    /// <summary>No liquid leaves.</summary>
    public static readonly Reason NoLoss = new("no-loss", new Text(
        "No water leaves as liquid, so there is no steady level.",
        "No sale agua líquida, así que no hay nivel estable.",
        "Nenhuma água sai como líquido, então não há nível estável."));

    /// <summary>The level asked for is never reached.</summary>
    public static readonly Reason NeverReached = new("never-reached", new Text(
        "That level is never reached under these conditions.",
        "Ese nivel nunca se alcanza en estas condiciones.",
        "Esse nível nunca é alcançado nestas condições."));

    /// <summary>Shares that do not add up to one.</summary>
    public static readonly Reason SharesWrong = new("shares-wrong", new Text(
        "The shares of the make-up waters do not add up to one.",
        "Las proporciones de las aguas de reposición no suman uno.",
        "As frações das águas de reposição não somam um."));

    /// <summary>More cycles than the relation of conductivity to cycles covers.</summary>
    public static readonly Reason LawEnds = new("conductivity-law-ends", new Text(
        "At so many cycles conductivity no longer tells the cycles: use an ion.",
        "Con tantos ciclos la conductividad ya no dice los ciclos: use un ion.",
        "Com tantos ciclos a condutividade já não diz os ciclos: use um íon."));
}
