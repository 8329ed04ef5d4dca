namespace Longrail.Coaching.Effects.Stages;

/// <summary>Which causes are at work, and those of a cushion at which.</summary>
/// <param name="Bits">One bit a cause that acts before the cushions, then one for each cushion and cause that acts
/// there.</param>
internal readonly record struct Switches(uint Bits)
{
    private const int BeforeCushions = 5;
    private const int AtCushion = 4;

    /// <summary>The plain mirror bank.</summary>
    internal static Switches AllOff => default;

    /// <summary>Whether a cause is at work.</summary>
    /// <param name="kind">The cause.</param>
    /// <param name="cushion">The cushion, counted from 0; of no meaning for a cause that acts before the
    /// cushions.</param>
    internal bool Has(EffectKind kind, int cushion = 0) => (Bits & Bit(kind, cushion)) != 0;

    internal Switches And(Switches other) => new(Bits | other.Bits);

    internal Switches Without(Switches other) => new(Bits & ~other.Bits);

    /// <summary>A cause at one cushion.</summary>
    internal static Switches At(EffectKind kind, int cushion) => new(Bit(kind, cushion));

    /// <summary>A cause wherever it acts.</summary>
    internal static Switches Of(EffectKind kind, int cushions)
    {
        if (!ActsAtCushion(kind))
            return new Switches(Bit(kind, 0));
        uint bits = 0;
        for (int k = 0; k < cushions; k++)
            bits |= Bit(kind, k);
        return new Switches(bits);
    }

    /// <summary>Whether a cause acts at a cushion, on the way to it or from it, rather than before.</summary>
    internal static bool ActsAtCushion(EffectKind kind) =>
        kind is EffectKind.Roll or EffectKind.Curve or EffectKind.Rubber or EffectKind.Speed;

    private static uint Bit(EffectKind kind, int cushion) => kind switch
    {
        EffectKind.SquirtAndSwerve => 1u << 0,
        EffectKind.CutThrow => 1u << 1,
        EffectKind.SpinThrow => 1u << 2,
        EffectKind.Side => 1u << 3,
        EffectKind.BallCondition => 1u << 4,
        EffectKind.Roll => 1u << (BeforeCushions + AtCushion * cushion),
        EffectKind.Curve => 2u << (BeforeCushions + AtCushion * cushion),
        EffectKind.Rubber => 4u << (BeforeCushions + AtCushion * cushion),
        _ => 8u << (BeforeCushions + AtCushion * cushion),
    };
}
