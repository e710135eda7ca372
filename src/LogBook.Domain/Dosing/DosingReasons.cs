using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Dosing;

/// <summary>Why a dose, feed or expected use cannot be worked out.</summary>
public static class DosingReasons
{
    /// <summary>A number that cannot occur.</summary>
    public static readonly Reason Impossible = new("dosing-value-impossible", new Text(
        "A number of this dose cannot occur.",
        "Un número de esta dosis no es posible.",
        "Um número desta dose não é possível."));

    /// <summary>Cycles of zero or less.</summary>
    public static readonly Reason CyclesZero = new("dosing-cycles-zero", new Text(
        "Cycles are zero or missing.",
        "Los ciclos son cero o faltan.",
        "Os ciclos são zero ou faltam."));

    /// <summary>No water left, so nothing washes out and nothing has to be fed.</summary>
    public static readonly Reason NoWater = new("dosing-no-water", new Text(
        "No water passed, so there is nothing to compare with.",
        "No pasó agua, así que no hay con qué comparar.",
        "Não passou água, então não há com que comparar."));

    /// <summary>The level is never above that.</summary>
    public static readonly Reason NeverAbove = new("dosing-never-above", new Text(
        "The dose never reaches that level.",
        "La dosis nunca alcanza ese nivel.",
        "A dose nunca alcança esse nível."));

    /// <summary>Nothing takes the level down.</summary>
    public static readonly Reason NeverBelow = new("dosing-never-below", new Text(
        "Nothing takes the level down: no water leaves.",
        "Nada baja el nivel: no sale agua.",
        "Nada baixa o nível: não sai água."));

    /// <summary>A number that this mode needs is missing.</summary>
    public static readonly Reason PartMissing = new("dosing-part-missing", new Text(
        "A number that this way of feeding needs is missing.",
        "Falta un número que necesita esta forma de dosificar.",
        "Falta um número que esta forma de dosar precisa."));

    /// <summary>A mode without a run time of its own.</summary>
    public static readonly Reason OtherMode = new("dosing-other-mode", new Text(
        "This way of feeding follows a measured value or a person: there is no run time to work out.",
        "Esta forma de dosificar sigue un valor medido o a una persona: no hay tiempo de marcha que calcular.",
        "Esta forma de dosar segue um valor medido ou uma pessoa: não há tempo de marcha a calcular."));
}
