using System.Security.Cryptography;
using System.Text;

namespace Longrail.Workbench.Hosting;

/// <summary>The code that other machines need, and the pass that a right code earns. Both live as long as the
/// program.</summary>
internal sealed class LanCode(bool isAsked)
{
    // No letters that are taken for others on paper or when read aloud.
    private const string Letters = "ABCDEFGHJKMNPQRTUVWXYZ2346789";
    private const int Length = 8;

    // Eight letters of 29 are 5e11 codes: at ten tries a minute nobody guesses one.
    private const int TriesAMinute = 10;

    private readonly Lock _lock = new();
    private readonly string _pass = Convert.ToHexString(RandomNumberGenerator.GetBytes(32));
    private DateTime _minute;
    private int _tries;

    /// <summary>Whether a code is asked for at all.</summary>
    public bool IsAsked { get; } = isAsked;

    /// <summary>The code.</summary>
    public string Text { get; } = RandomNumberGenerator.GetString(Letters, Length);

    /// <summary>The pass for a right code; null for a wrong one, or after too many tries within a minute.</summary>
    public string? Try(string? typed, DateTime now)
    {
        lock (_lock)
        {
            if (now - _minute > TimeSpan.FromMinutes(1))
                (_minute, _tries) = (now, 0);
            if (++_tries > TriesAMinute)
                return null;
        }

        return IsEqual(typed?.Trim().ToUpperInvariant(), Text) ? _pass : null;
    }

    /// <summary>Whether a pass is the right one.</summary>
    public bool IsPass(string? pass) => IsEqual(pass, _pass);

    private static bool IsEqual(string? given, string wanted) => given is not null
        && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(wanted));
}
