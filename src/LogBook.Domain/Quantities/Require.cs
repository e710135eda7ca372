using System.Runtime.CompilerServices;

namespace LogBook.Domain.Quantities;

/// <summary>Refuses impossible arguments at the factory, so that no quantity has to be checked twice.</summary>
internal static class Require
{
    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "A finite number is needed.");

    internal static double FiniteNotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        InRange(value, 0, double.MaxValue, name);

    internal static double InRange(double value, double low, double high, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"A number from {low} to {high} is needed."));
}
