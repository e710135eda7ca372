using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.SetPoints;

/// <summary>Why there is no set point.</summary>
public static class SetPointReasons
{
    /// <summary>The make-up was not measured.</summary>
    public static readonly Reason NoMakeUp = new("set-point-no-make-up", new Text(
        "The make-up's conductivity is missing.",
        "Falta la conductividad de la reposición.",
        "Falta a condutividade da reposição."));

    /// <summary>Neither cycles aimed at nor an ion with a limit.</summary>
    public static readonly Reason NothingLimits = new("set-point-nothing-limits", new Text(
        "Neither target cycles nor a limit with a make-up reading is given.",
        "No hay ciclos objetivo ni un límite con lectura de reposición.",
        "Não há ciclos alvo nem um limite com leitura da reposição."));

    /// <summary>The make-up itself is at or above a limit.</summary>
    public static readonly Reason MakeUpAboveLimit = new("set-point-make-up-above-limit", new Text(
        "The make-up itself is at or above a limit: no bleed brings the water below it.",
        "La propia reposición alcanza o supera un límite: ninguna purga baja el agua por debajo.",
        "A própria reposição alcança ou passa de um limite: nenhuma purga baixa a água para menos."));

    /// <summary>A number that cannot occur.</summary>
    public static readonly Reason Impossible = new("set-point-value-impossible", new Text(
        "A number of the set point cannot occur.",
        "Un número del punto de consigna no es posible.",
        "Um número do ponto de ajuste não é possível."));
}
