namespace Longrail.Physics.Equipment;

/// <summary>Friction between two balls, falling with slip speed: mu(v) = base + gain exp(-decay v).</summary>
/// <remarks>Form and default coefficients: Alciatore, technical proof TP A.28 (2007), a fit to three rows of W. Marlow,
/// The Physics of Pocket Billiards (1995), table 10. See docs/sources.md.</remarks>
/// <param name="Base">Coefficient at high slip speed, dimensionless, not negative.</param>
/// <param name="Gain">What is added at zero slip, dimensionless, not negative.</param>
/// <param name="Decay">How fast it falls with slip speed, s/m, not negative.</param>
public readonly record struct BallFriction(double Base, double Gain, double Decay)
{
    /// <summary>The coefficient at a slip speed.</summary>
    /// <param name="slipSpeed">Relative speed of the two surfaces at the point of contact, m/s, not negative.</param>
    public double At(double slipSpeed) => Base + Gain * Math.Exp(-Decay * slipSpeed);
}
