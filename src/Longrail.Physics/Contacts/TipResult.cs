using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>What a stroke gave the ball.</summary>
/// <param name="Velocity">Velocity of the ball over the cloth, m/s, squirt included.</param>
/// <param name="Spin">Spin, rad/s.</param>
/// <param name="CueSpeed">Speed of the stick just before contact that gives this ball speed, m/s.</param>
/// <param name="Squirt">Angle from the stick's line to the ball's path, radians, positive to the left.</param>
/// <param name="MiscueLimit">Largest offset of the contact from the centre that this tip holds, metres.</param>
public readonly record struct TipResult(Vec2 Velocity, Vec3 Spin, double CueSpeed, double Squirt, double MiscueLimit);
