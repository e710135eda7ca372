namespace LogBook.Domain.Outcomes;

/// <summary>A value, or the reasons why there is none. Never NaN, never zero in place of unknown.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public sealed class Computed<T>
{
    private readonly T? _value;

    private Computed(T? value, bool hasValue, IReadOnlyList<Reason> reasons)
    {
        _value = value;
        HasValue = hasValue;
        Reasons = reasons;
    }

    /// <summary>Whether there is a value.</summary>
    public bool HasValue { get; }

    /// <summary>Reasons why there is none; empty when there is a value.</summary>
    public IReadOnlyList<Reason> Reasons { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none: ask <see cref="HasValue"/> first.</exception>
    public T Value => HasValue ? _value! : throw new InvalidOperationException("No value: " + string.Join(", ", Reasons.Select(r => r.Code)));

    /// <summary>A value.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The outcome.</returns>
    public static Computed<T> Of(T value) => new(value, true, []);

    /// <summary>No value.</summary>
    /// <param name="reasons">At least one reason.</param>
    /// <returns>The outcome.</returns>
    public static Computed<T> None(params IReadOnlyList<Reason> reasons) =>
        reasons.Count > 0 ? new(default, false, reasons) : throw new ArgumentException("A reason is needed.", nameof(reasons));

    /// <summary>Turns the value into another; reasons pass through.</summary>
    /// <typeparam name="TOther">Type of the new value.</typeparam>
    /// <param name="map">Applied to the value.</param>
    /// <returns>The new outcome.</returns>
    public Computed<TOther> Map<TOther>(Func<T, TOther> map) => HasValue ? Computed<TOther>.Of(map(_value!)) : Computed<TOther>.None(Reasons);

    /// <summary>Goes on with another computation; reasons pass through.</summary>
    /// <typeparam name="TOther">Type of the new value.</typeparam>
    /// <param name="next">Applied to the value.</param>
    /// <returns>The new outcome.</returns>
    public Computed<TOther> Then<TOther>(Func<T, Computed<TOther>> next) => HasValue ? next(_value!) : Computed<TOther>.None(Reasons);

    /// <summary>The value, or another where there is none.</summary>
    /// <param name="other">Used where there is no value.</param>
    /// <returns>One of both.</returns>
    public T Or(T other) => HasValue ? _value! : other;
}
