namespace LogBook.Domain.Findings;

/// <summary>
/// Subjects of a system's findings, each once: the rules name the same few dozen at every step. As many as there are codes in its set-up and
/// records. May be used by several threads at once.
/// </summary>
internal sealed class Subjects
{
    private (string Code, About About)[] _tests = [];
    private (string Code, About About)[] _drums = [];
    private (string Code, About About)[] _outputs = [];
    private (string Code, About About)[] _meters = [];
    private (string Code, About About)[] _probes = [];
    private (string Code, About About)[] _instruments = [];

    /// <summary>A test.</summary>
    public About Test(string code) => Of(ref _tests, code, static code => new About { Test = code });

    /// <summary>A drum.</summary>
    public About Drum(string code) => Of(ref _drums, code, static code => new About { Drum = code });

    /// <summary>An output.</summary>
    public About Output(string code) => Of(ref _outputs, code, static code => new About { Output = code });

    /// <summary>A meter.</summary>
    public About Meter(string code) => Of(ref _meters, code, static code => new About { Meter = code });

    /// <summary>A probe.</summary>
    public About Probe(string code) => Of(ref _probes, code, static code => new About { Probe = code });

    /// <summary>An instrument.</summary>
    public About Instrument(string code) => Of(ref _instruments, code, static code => new About { Instrument = code });

    // Codes as they are written: a subject is told as the record tells it. The arrays are never changed; of two threads that add one, one adds in vain.
    private static About Of(ref (string Code, About About)[] all, string code, Func<string, About> make)
    {
        foreach (var (known, about) in all)
        {
            if (known == code)
            {
                return about;
            }
        }

        var made = make(code);
        all = [.. all, (code, made)];
        return made;
    }
}
