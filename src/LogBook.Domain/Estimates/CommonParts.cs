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

        var names = new List<string>(_names);
        var values = new List<double>(Count + other.Count);
        foreach (var value in _values)
        {
            values.Add(value * factor);
        }

        for (var i = 0; i < other.Count; i++)
        {
            var at = IndexOf(other._names[i]);
            if (at >= 0)
            {
                values[at] += other._values[i] * otherFactor;
            }
            else
            {
                names.Add(other._names[i]);
                values.Add(other._values[i] * otherFactor);
            }
        }

        return new CommonParts([.. names], [.. values]);
    }

    public CommonParts Scaled(double factor) => Count == 0 || factor == 1 ? this : new CommonParts(_names, Array.ConvertAll(_values, value => value * factor));

    /// <summary>These with one more part, added to one of the same name.</summary>
    public CommonParts With(string name, double part) => Combine(1, new CommonParts([name], [part]), 1);

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

    private int IndexOf(string name)
    {
        for (var i = 0; i < _names.Length; i++)
        {
            if (string.Equals(_names[i], name, StringComparison.Ordinal))
            {
                return i;
            }
        }

        return -1;
    }
}
