using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace LogBook.Domain.Estimates;

/// <summary>Named common parts of an estimate: a handful, so two small arrays serve better than a hash table for each figure.</summary>
internal sealed class CommonParts : IReadOnlyDictionary<string, double>
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

    public static CommonParts Of(IReadOnlyDictionary<string, double>? parts) => parts switch
    {
        null or { Count: 0 } => None,
        CommonParts own => own,
        _ => new CommonParts([.. parts.Keys], [.. parts.Values]),
    };

    /// <summary>A single part.</summary>
    public static CommonParts One(string name, double part) => new([name], [part]);

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

        var sum = new Sum(this, factor);
        sum.Add(other, otherFactor);
        return sum.ToParts();
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
    public CommonParts With(string name, double part) => Combine(1, One(name, part), 1);

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
