namespace LogBook.Domain.Estimates;

/// <summary>A few values by code, kept while they hold: a handful, so a search serves better than a hash table for each visit. Case does not count.</summary>
/// <typeparam name="T">Type of the values.</typeparam>
internal sealed class CodeMemo<T>
{
    private (string Code, T Value)[] _items = new (string, T)[4];
    private int _count;

    public bool TryGet(string code, out T value)
    {
        for (var i = 0; i < _count; i++)
        {
            if (ReferenceEquals(_items[i].Code, code) || string.Equals(_items[i].Code, code, StringComparison.OrdinalIgnoreCase))
            {
                value = _items[i].Value;
                return true;
            }
        }

        value = default!;
        return false;
    }

    /// <summary>Keeps a value and gives it back.</summary>
    public T Keep(string code, T value)
    {
        if (_count == _items.Length)
        {
            Array.Resize(ref _items, 2 * _count);
        }

        _items[_count++] = (code, value);
        return value;
    }
}
