using System.Security.Cryptography;
using System.Text;

namespace LogBook.Web.Hosting;

/// <summary>
/// Opens the first-run page once: whoever reads the console of the machine may name the firm and its first administrator.
/// It lives in memory only; a new start makes a new one.
/// </summary>
public sealed class FirstRunCode
{
    private byte[] _code = RandomNumberGenerator.GetBytes(16);
    private bool _used;

    /// <summary>The code as it is printed.</summary>
    public string Text => Convert.ToHexStringLower(_code);

    /// <summary>Whether this is the code and it has not been used.</summary>
    public bool Opens(string? given) => !_used && given is not null
        && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given.Trim()), Encoding.UTF8.GetBytes(Text));

    /// <summary>Ends the code.</summary>
    public void Use()
    {
        _used = true;
        _code = RandomNumberGenerator.GetBytes(16);
    }
}
