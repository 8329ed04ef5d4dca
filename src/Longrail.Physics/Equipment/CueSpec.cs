namespace Longrail.Physics.Equipment;

/// <summary>A cue and its tip.</summary>
/// <param name="Mass">Mass of the whole cue, kilograms, positive.</param>
/// <param name="TipDiameter">Width of the tip, metres, positive.</param>
/// <param name="TipRadius">Radius of the tip's dome, metres, not negative (a flat tip has none of its own: 0 means a
/// point).</param>
/// <param name="EndMass">Effective mass of the shaft's end that is pushed sideways by the ball, kilograms, positive; it
/// sets the squirt.</param>
/// <param name="TipRestitution">Restitution of tip on ball, in [0, 1].</param>
/// <param name="TipFriction">Coulomb coefficient of a chalked tip, dimensionless, positive; it sets the miscue
/// limit.</param>
public sealed record CueSpec(
    double Mass,
    double TipDiameter,
    double TipRadius,
    double EndMass,
    double TipRestitution,
    double TipFriction);
