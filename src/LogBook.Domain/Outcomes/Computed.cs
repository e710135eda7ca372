namespace LogBook.Domain.Outcomes;

/// <summary>A value, or the reasons why there is none. Never NaN, never zero in place of unknown.</summary>
/// <remarks>A struct, because an assessment makes some hundreds of them for each visit. <c>default</c> is no value without a reason and nothing that
/// this class gives.</remarks>
/// <typeparam name="T">Type of the value.</typeparam>
public readonly struct Computed<T> : IEquatable<Computed<T>>
{
    private readonly T? _value;

    // One reason, or a list of several: nearly always one, so that no list is made for it before somebody reads it.
    private readonly object? _why;

    private Computed(T? value, bool hasValue, object? why) => (_value, HasValue, _why) = (value, hasValue, why);

    /// <summary>Whether there is a value.</summary>
    public bool HasValue { get; }

    /// <summary>Reasons why there is none; empty when there is a value.</summary>
    public IReadOnlyList<Reason> Reasons => _why switch
    {
        Reason reason => [reason],
        IReadOnlyList<Reason> reasons => reasons,
        _ => [],
    };

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none: ask <see cref="HasValue"/> first.</exception>
    public T Value => HasValue ? _value! : throw new InvalidOperationException("No value: " + string.Join(", ", Reasons.Select(r => r.Code)));

    /// <summary>A value.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The outcome.</returns>
    public static Computed<T> Of(T value) => new(value, true, null);

    /// <summary>No value.</summary>
    /// <param name="reason">Why.</param>
    /// <returns>The outcome.</returns>
    public static Computed<T> None(Reason reason) => Because(reason);

    /// <summary>No value.</summary>
    /// <param name="reasons">At least one reason.</param>
    /// <returns>The outcome.</returns>
    public static Computed<T> None(params IReadOnlyList<Reason> reasons) =>
        reasons.Count > 0 ? Because(reasons) : throw new ArgumentException("A reason is needed.", nameof(reasons));

    /// <summary>Turns the value into another; reasons pass through.</summary>
    /// <typeparam name="TOther">Type of the new value.</typeparam>
    /// <param name="map">Applied to the value.</param>
    /// <returns>The new outcome.</returns>
    public Computed<TOther> Map<TOther>(Func<T, TOther> map) => HasValue ? Computed<TOther>.Of(map(_value!)) : WithoutValue<TOther>();

    /// <summary>Goes on with another computation; reasons pass through.</summary>
    /// <typeparam name="TOther">Type of the new value.</typeparam>
    /// <param name="next">Applied to the value.</param>
    /// <returns>The new outcome.</returns>
    public Computed<TOther> Then<TOther>(Func<T, Computed<TOther>> next) => HasValue ? next(_value!) : WithoutValue<TOther>();

    /// <summary>The same reasons for another kind of value.</summary>
    /// <typeparam name="TOther">Type of the value there is not.</typeparam>
    /// <returns>The outcome; only of one that has no value.</returns>
    public Computed<TOther> WithoutValue<TOther>() => Computed<TOther>.Because(_why);

    /// <summary>The value, or another where there is none.</summary>
    /// <param name="other">Used where there is no value.</param>
    /// <returns>One of both.</returns>
    public T Or(T other) => HasValue ? _value! : other;

    internal static Computed<T> Because(object? why) => new(default, false, why);

    /// <summary>Whether two outcomes hold equal values, or are missing for the same reasons.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">Another.</param>
    public static bool operator ==(Computed<T> one, Computed<T> other) => one.Equals(other);

    /// <summary>Whether two outcomes differ.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">Another.</param>
    public static bool operator !=(Computed<T> one, Computed<T> other) => !one.Equals(other);

    /// <inheritdoc />
    public bool Equals(Computed<T> other) =>
        HasValue == other.HasValue && (HasValue ? EqualityComparer<T>.Default.Equals(_value, other._value) : Reasons.SequenceEqual(other.Reasons));

    /// <inheritdoc />
    public override bool Equals(object? obj) => obj is Computed<T> other && Equals(other);

    /// <inheritdoc />
    public override int GetHashCode() => HasValue ? HashCode.Combine(_value) : Reasons[0].GetHashCode();
}
