using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Compensation;

/// <summary>Why a conductivity cannot be brought to 25 °C or worked out.</summary>
public static class CompensationReasons
{
    /// <summary>Outside the range of the method.</summary>
    public static readonly Reason OutsideRange = new("compensation-outside-range", new Text(
        "The temperature is outside the range of this compensation.",
        "La temperatura está fuera del intervalo de esta compensación.",
        "A temperatura está fora do intervalo desta compensação."));

    /// <summary>Not a standard of the table.</summary>
    public static readonly Reason NoSuchStandard = new("no-such-standard", new Text(
        "The table has no such standard solution.",
        "La tabla no tiene esa solución patrón.",
        "A tabela não tem essa solução padrão."));

    /// <summary>A number that cannot occur.</summary>
    public static readonly Reason Impossible = new("conductivity-value-impossible", new Text(
        "A number of this calculation cannot occur.",
        "Un número de este cálculo no es posible.",
        "Um número deste cálculo não é possível."));
}
