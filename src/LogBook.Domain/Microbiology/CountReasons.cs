using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Microbiology;

/// <summary>Why counts do not compare.</summary>
public static class CountReasons
{
    /// <summary>A count of zero or below.</summary>
    public static readonly Reason NotACount = new("count-not-above-zero", new Text(
        "A count is zero or missing; below the limit of the method is not a number.",
        "Un recuento es cero o falta; por debajo del límite del método no es un número.",
        "Uma contagem é zero ou falta; abaixo do limite do método não é um número."));
}
