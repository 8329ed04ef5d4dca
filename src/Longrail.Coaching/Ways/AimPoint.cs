using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways;

/// <summary>The point on a cushion at which the stick points.</summary>
/// <param name="Cushion">The cushion.</param>
/// <param name="Diamonds">Where its nose line is met, in diamonds along it (along: from the head; across: from the
/// right).</param>
public readonly record struct AimPoint(CushionName Cushion, double Diamonds);
