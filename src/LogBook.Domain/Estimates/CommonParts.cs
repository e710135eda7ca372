using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace LogBook.Domain.Estimates;

/// <summary>
/// Named common parts of an estimate: a handful, so two small arrays serve better than a hash table for each figure. A struct, because an
/// assessment makes some hundreds of estimates for each visit; as a dictionary it is boxed where somebody asks for one. <c>default</c> is
/// nothing that this class gives: without parts there is <see cref="None"/>.
/// </summary>
internal readonly struct CommonParts : IReadOnlyDictionary<string, double>, IEquatable<CommonParts>
{
    public static readonly CommonParts None = new([], []);

    private readonly string[] _names;
    private readonly double[] _values;

    private CommonParts(string[] names, double[] values)
    {
        _names = names;
        _values = values;
    }

    public int Count => _names.Length;

    public IEnumerable<string> Keys => _names;

    public IEnumerable<double> Values => _values;

    public double this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException(key);

    /// <summary>Sum of the squares.</summary>
    public double Squares
    {
        get
        {
            var sum = 0.0;
            foreach (var value in _values)
            {
                sum += value * value;
            }

            return sum;
        }
    }

    /// <summary>Sum of the squares of the differences, equal names against each other.</summary>
    public double SquaresOfDifference(CommonParts other)
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
        {
            var at = i < other.Count && ReferenceEquals(_names[i], other._names[i]) ? i : other.IndexOf(_names[i]);
            var part = at >= 0 ? _values[i] - other._values[at] : _values[i];
            sum += part * part;
        }

        for (var i = 0; i < other.Count; i++)
        {
            if (!(i < Count && ReferenceEquals(_names[i], other._names[i])) && IndexOf(other._names[i]) < 0)
            {
                sum += other._values[i] * other._values[i];
            }
        }

        return sum;
    }

    public static CommonParts Of(IReadOnlyDictionary<string, double>? parts) => parts switch
    {
        null or { Count: 0 } => None,
        CommonParts own => own,
        _ => new CommonParts([.. parts.Keys], [.. parts.Values]),
    };

    /// <summary>A single part.</summary>
    public static CommonParts One(string name, double part) => new([name], [part]);

    /// <summary>A single part of a name that is given as an array, to be shared by many.</summary>
    public static CommonParts One(string[] name, double part) => new(name, [part]);

    /// <summary>Parts in arrays that nobody changes any more.</summary>
    public static CommonParts Sharing(string[] names, double[] values) => new(names, values);

    /// <summary>Adds these to parts that are being summed up.</summary>
    /// <param name="names">Names so far; another array where one is added.</param>
    /// <param name="values">Values so far.</param>
    /// <param name="owns">Whether <paramref name="values"/> may be changed in place.</param>
    public void AddTo(ref string[] names, ref double[] values, ref bool owns)
    {
        if (names.Length == 0)
        {
            (names, values, owns) = (_names, _values, false);
            return;
        }

        for (var i = 0; i < Count; i++)
        {
            var at = i < names.Length && ReferenceEquals(names[i], _names[i]) ? i : IndexOf(names, names.Length, _names[i]);
            if (at < 0)
            {
                (names, values, owns) = ([.. names, _names[i]], [.. values, _values[i]], true);
                continue;
            }

            if (!owns)
            {
                (values, owns) = ([.. values], true);
            }

            values[at] += _values[i];
        }
    }

    public static bool operator ==(CommonParts one, CommonParts other) => one.Equals(other);

    public static bool operator !=(CommonParts one, CommonParts other) => !one.Equals(other);

    // The same arrays, as it was when this was a class.
    public bool Equals(CommonParts other) => ReferenceEquals(_names, other._names) && ReferenceEquals(_values, other._values);

    public override bool Equals(object? obj) => obj is CommonParts other && Equals(other);

    public override int GetHashCode() => RuntimeHelpers.GetHashCode(_values);

    /// <summary>These times one factor plus others times another, equal names added.</summary>
    public CommonParts Combine(double factor, CommonParts other, double otherFactor)
    {
        if (other.Count == 0)
        {
            return Scaled(factor);
        }

        if (Count == 0)
        {
            return other.Scaled(otherFactor);
        }

        // Figures of one system mostly carry the same parts in the same order.
        if (ReferenceEquals(_names, other._names) || _names.AsSpan().SequenceEqual(other._names))
        {
            var both = new double[_values.Length];
            for (var i = 0; i < both.Length; i++)
            {
                both[i] = (_values[i] * factor) + (other._values[i] * otherFactor);
            }

            return new CommonParts(_names, both);
        }

        return Joined(factor, other, otherFactor);
    }

    public CommonParts Scaled(double factor)
    {
        if (Count == 0 || factor == 1)
        {
            return this;
        }

        var scaled = new double[_values.Length];
        for (var i = 0; i < scaled.Length; i++)
        {
            scaled[i] = _values[i] * factor;
        }

        return new CommonParts(_names, scaled);
    }

    /// <summary>These with one more part, added to one of the same name.</summary>
    public CommonParts With(string name, double part)
    {
        var at = IndexOf(name);
        var values = new double[at < 0 ? Count + 1 : Count];
        _values.CopyTo(values, 0);
        values[at < 0 ? Count : at] += part;
        return new CommonParts(at < 0 ? [.. _names, name] : _names, values);
    }

    public bool ContainsKey(string key) => IndexOf(key) >= 0;

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out double value)
    {
        var at = IndexOf(key);
        value = at >= 0 ? _values[at] : 0;
        return at >= 0;
    }

    public IEnumerator<KeyValuePair<string, double>> GetEnumerator()
    {
        for (var i = 0; i < Count; i++)
        {
            yield return new(_names[i], _values[i]);
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private int IndexOf(string name) => IndexOf(_names, _names.Length, name);

    // Arrays of the right length at once: first where each of the others goes, then the sum.
    private CommonParts Joined(double factor, CommonParts other, double otherFactor)
    {
        Span<int> places = other.Count <= 32 ? stackalloc int[other.Count] : new int[other.Count];
        var count = Count;
        for (var i = 0; i < places.Length; i++)
        {
            var at = i < Count && ReferenceEquals(_names[i], other._names[i]) ? i : IndexOf(other._names[i]);
            places[i] = at >= 0 ? at : count++;
        }

        var (names, values) = (_names, new double[count]);
        for (var i = 0; i < Count; i++)
        {
            values[i] = _values[i] * factor;
        }

        if (count > Count)
        {
            names = new string[count];
            _names.CopyTo(names, 0);
        }

        for (var i = 0; i < places.Length; i++)
        {
            var part = other._values[i] * otherFactor;
            if (places[i] < Count)
            {
                values[places[i]] += part;
            }
            else
            {
                (names[places[i]], values[places[i]]) = (other._names[i], part);
            }
        }

        return new CommonParts(names, values);
    }

    private static int IndexOf(string[] names, int count, string name)
    {
        for (var i = 0; i < count; i++)
        {
            if (string.Equals(names[i], name, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Parts that are still being added up: names in the order in which they came first.</summary>
    internal ref struct Sum
    {
        private string[] _names;
        private double[] _values;
        private int _count;
        private bool _ownsNames;

        public Sum(CommonParts first, double factor)
        {
            (_names, _count) = (first._names, first.Count);
            _values = new double[_count];
            for (var i = 0; i < _count; i++)
            {
                _values[i] = first._values[i] * factor;
            }
        }

        public void Add(CommonParts other, double factor)
        {
            for (var i = 0; i < other.Count; i++)
            {
                var at = i < _count && ReferenceEquals(_names[i], other._names[i]) ? i : IndexOf(_names, _count, other._names[i]);
                if (at >= 0)
                {
                    _values[at] += other._values[i] * factor;
                }
                else
                {
                    Append(other._names[i], other._values[i] * factor);
                }
            }
        }

        public readonly CommonParts ToParts() => _count == 0 ? None
            : _count == _values.Length && _count == _names.Length ? new CommonParts(_names, _values)
            : new CommonParts(_names[.._count], _values[.._count]);

        private void Append(string name, double value)
        {
            if (!_ownsNames || _count == _names.Length)
            {
                var names = new string[_count + 2];
                Array.Copy(_names, names, _count);
                (_names, _ownsNames) = (names, true);
            }

            if (_count == _values.Length)
            {
                Array.Resize(ref _values, _names.Length);
            }

            (_names[_count], _values[_count]) = (name, value);
            _count++;
        }
    }
}
