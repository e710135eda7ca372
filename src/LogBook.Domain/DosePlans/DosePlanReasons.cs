using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>Why a part of a dose plan cannot be worked out.</summary>
public static class DosePlanReasons
{
    /// <summary>A number that cannot occur.</summary>
    public static readonly Reason Impossible = new("dose-plan-value-impossible", new Text(
        "A number of the dose plan cannot occur.",
        "Un número del plan de dosis no es posible.",
        "Um número do plano de doses não é possível."));

    /// <summary>The target is never reached.</summary>
    public static readonly Reason NeverReached = new("dose-plan-never-reached", new Text(
        "That target is never reached, however long one waits.",
        "Ese objetivo nunca se alcanza, por mucho que se espere.",
        "Esse alvo nunca é alcançado, por mais que se espere."));
}
