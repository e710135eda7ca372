using System.Collections;
using Microsoft.AspNetCore.Components;

namespace LogBook.Entry.State;

/// <summary>Tells whether a component is given something new to show.</summary>
internal sealed class GivenParameters
{
    private readonly List<(string Name, object? Value)> _given = [];
    private bool _hasTaken;

    /// <summary>Takes what is given.</summary>
    /// <param name="parameters">The parameters.</param>
    /// <returns>True when they are not those of the last time: lists by what they hold, acts by the code they come from.</returns>
    public bool Take(ParameterView parameters)
    {
        var (at, areNew) = (0, !_hasTaken);
        _hasTaken = true;
        foreach (var parameter in parameters)
        {
            if (at == _given.Count)
            {
                _given.Add((parameter.Name, parameter.Value));
                areNew = true;
            }
            else if (_given[at].Name != parameter.Name || !IsSame(_given[at].Value, parameter.Value))
            {
                _given[at] = (parameter.Name, parameter.Value);
                areNew = true;
            }

            at++;
        }

        if (at < _given.Count)
        {
            _given.RemoveRange(at, _given.Count - at);
            areNew = true;
        }

        return areNew;
    }

    private static bool IsSame(object? before, object? now) => (before, now) switch
    {
        (Delegate a, Delegate b) => a.Method == b.Method,
        (IList a, IList b) => IsSame(a, b),
        _ => Equals(before, now),
    };

    private static bool IsSame(IList before, IList now)
    {
        if (ReferenceEquals(before, now))
        {
            return true;
        }

        if (before.Count != now.Count)
        {
            return false;
        }

        for (var i = 0; i < before.Count; i++)
        {
            if (!Equals(before[i], now[i]))
            {
                return false;
            }
        }

        return true;
    }
}
