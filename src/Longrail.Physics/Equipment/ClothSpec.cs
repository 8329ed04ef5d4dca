namespace Longrail.Physics.Equipment;

/// <summary>What the cloth does to a ball.</summary>
/// <param name="SlidingFriction">Coulomb coefficient of a ball skidding on the bed, dimensionless, positive.</param>
/// <param name="RollingFriction">Deceleration of a rolling ball over gravity, dimensionless, positive.</param>
/// <param name="SpinDecay">Deceleration of the spin about the vertical axis, rad/s^2, positive.</param>
public sealed record ClothSpec(double SlidingFriction, double RollingFriction, double SpinDecay);
