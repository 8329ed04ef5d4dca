namespace Longrail.Physics.Equipment;

/// <summary>What a cushion does to a ball.</summary>
/// <param name="Law">Which law of contact applies.</param>
/// <param name="Restitution">Energetic restitution along the tilted contact normal: the square root of the work given
/// back over the work taken in, dimensionless, in (0, 1]. It is not the ratio of speeds seen from above (see
/// docs/physics.md).</param>
/// <param name="Friction">Coulomb coefficient between ball and cushion cloth, dimensionless, not negative.</param>
/// <param name="NoseHeight">Height of the nose above the bed, metres.</param>
/// <param name="ContactTime">Duration of a straight, spinless, frictionless contact under
/// <see cref="CushionLaw.Yielding"/>, seconds.</param>
public sealed record CushionSpec(CushionLaw Law, double Restitution, double Friction, double NoseHeight, double ContactTime);
