using Longrail.Physics.Equipment;

namespace Longrail.Physics.Shots;

/// <summary>All that a shot depends on: the equipment and the balls as they start.</summary>
/// <remarks>Balls are known by their place in <see cref="Balls"/>; a name is the business of whoever reads and writes
/// scenes.</remarks>
/// <param name="Equipment">Table, cloth, cushions, ball contact, cue.</param>
/// <param name="Balls">The balls at time 0, none overlapping.</param>
/// <param name="Stroke">What the tip did, when the shot begins with a stroke: it becomes the event "tip" at time
/// 0.</param>
public sealed record ShotSetup(EquipmentSpec Equipment, IReadOnlyList<ShotBall> Balls, StrokeRecord? Stroke = null);
