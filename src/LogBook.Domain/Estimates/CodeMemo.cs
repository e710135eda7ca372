namespace LogBook.Domain.Estimates;

/// <summary>A few values by code, kept while they hold: a handful, so a search serves better than a hash table for each visit. Case does not count.</summary>
/// <remarks>A struct that changes: a field of its owner, never copied. <c>default</c> is empty.</remarks>
/// <typeparam name="T">Type of the values.</typeparam>
internal struct CodeMemo<T>
{
    private (string Code, T Value)[]? _items;
    private int _count;

    /// <summary>What is kept for a code.</summary>
    public readonly bool TryGet(string code, out T value)
    {
        if (_items is { } items)
        {
            // Most callers name a test by the same constant.
            for (var i = 0; i < _count; i++)
            {
                if (ReferenceEquals(items[i].Code, code))
                {
                    value = items[i].Value;
                    return true;
                }
            }

            for (var i = 0; i < _count; i++)
            {
                if (string.Equals(items[i].Code, code, StringComparison.OrdinalIgnoreCase))
                {
                    value = items[i].Value;
                    return true;
                }
            }
        }

        value = default!;
        return false;
    }

    /// <summary>Keeps a value and gives it back.</summary>
    public T Keep(string code, T value)
    {
        if (_items is null)
        {
            _items = new (string, T)[2];
        }
        else if (_count == _items.Length)
        {
            Array.Resize(ref _items, 2 * _count);
        }

        _items[_count++] = (code, value);
        return value;
    }
}
