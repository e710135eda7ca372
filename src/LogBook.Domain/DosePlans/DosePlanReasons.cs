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

    /// <summary>No high alarm is set.</summary>
    public static readonly Reason NoAlarm = new("dose-plan-no-alarm", new Text(
        "No high alarm is set.", "No hay alarma alta fijada.", "Não há alarme alto definido."));

    /// <summary>A bleed-down without a known valve.</summary>
    public static readonly Reason NoValve = new("dose-plan-no-valve", new Text(
        "The flow of the bleed valve is not known, so the bleed-down cannot be worked out.",
        "No se conoce el caudal de la válvula de purga y no se puede calcular la purga previa.",
        "Não se conhece a vazão da válvula de purga e não se pode calcular a purga prévia."));
}
