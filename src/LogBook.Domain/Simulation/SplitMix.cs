namespace LogBook.Domain.Simulation;

/// <summary>Small seeded generator: the same seed gives the same numbers on every machine and in every release of the runtime.</summary>
/// <remarks>SplitMix64 (Steele, Lea, Flood 2014). The runtime's own generator may change between releases, so it is not used.</remarks>
public sealed class SplitMix
{
    private ulong _state;

    /// <summary>A generator that starts at a seed.</summary>
    /// <param name="seed">Any number.</param>
    public SplitMix(ulong seed)
    {
        _state = seed;
    }

    /// <summary>A generator of its own for one purpose, so that one purpose drawing more numbers does not shift another.</summary>
    /// <param name="seed">Seed of the whole.</param>
    /// <param name="purpose">Name of the purpose.</param>
    /// <returns>The generator.</returns>
    public static SplitMix For(ulong seed, string purpose)
    {
        // FNV-1a: string.GetHashCode differs from run to run.
        var hash = 14695981039346656037UL;
        foreach (var letter in purpose)
        {
            hash = (hash ^ letter) * 1099511628211UL;
        }

        return new SplitMix(new SplitMix(seed).NextBits() ^ hash);
    }

    /// <summary>Next 64 bits.</summary>
    /// <returns>Uniform bits.</returns>
    public ulong NextBits()
    {
        _state += 0x9E3779B97F4A7C15UL;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    /// <summary>Next number from 0 (included) to 1 (excluded).</summary>
    /// <returns>Uniform number.</returns>
    public double NextUnit() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Next whole number from 0 to <paramref name="count"/> - 1.</summary>
    /// <param name="count">At least 1.</param>
    /// <returns>Whole number.</returns>
    public int NextBelow(int count) => (int)(NextUnit() * count);

    /// <summary>Next number of mean 0 and standard deviation 1, within -6 and +6.</summary>
    /// <returns>Sum of twelve uniform numbers less 6: close to normal, and free of functions whose last bit differs between machines.</returns>
    public double NextNormal()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++)
        {
            sum += NextUnit();
        }

        return sum;
    }
}
