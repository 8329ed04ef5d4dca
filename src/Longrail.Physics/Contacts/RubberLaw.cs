using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>The yielding rubber for one size of ball.</summary>
/// <remarks>
/// While the ball sinks deeper than ever before, the normal force is k d, with d the depth along the tilted normal; on the way back, and if the
/// ball is driven in again, it is e^2 k d up to the old depth. So the rubber gives back exactly e^2 of the work it took, whatever friction does
/// meanwhile, and the ball leaves where the nose line was. k is set by the duration of a straight, frictionless contact,
/// pi/(2 w) (1 + 1/e) with w = cos(theta) sqrt(k/m).
/// </remarks>
internal readonly struct RubberLaw
{
    internal RubberLaw(double radius, CushionSpec cushion, ClothSpec cloth, double gravity)
    {
        Friction = NoseBedLaw.For(radius, cushion.NoseHeight, cushion.Friction, cloth.SlidingFriction);
        Reach = TableOutline.Reach(radius, cushion.NoseHeight);
        Restitution = cushion.Restitution;
        double frequency = Math.PI * (1.0 + 1.0 / cushion.Restitution) / (2.0 * cushion.ContactTime);
        Stiffness = frequency * frequency / Friction.Cos;
        ReturnStiffness = cushion.Restitution * cushion.Restitution * Stiffness;
        LongestStep = cushion.ContactTime / StepsPerContact;
        Gravity = gravity;
    }

    /// <summary>Steps over a contact. Fourth order; at 24 the speeds are right to about 1e-6 of the speed on arrival.</summary>
    internal const int StepsPerContact = 24;

    internal NoseBedLaw Friction { get; }

    /// <summary>Distance in plan of the ball's centre from the nose line at the touch, metres.</summary>
    internal double Reach { get; }

    internal double Restitution { get; }

    /// <summary>Normal force per unit mass and metre of depth seen from above, 1/s^2.</summary>
    internal double Stiffness { get; }

    internal double ReturnStiffness { get; }

    internal double LongestStep { get; }

    /// <summary>How far rounding of the ball's place can change the normal force, m/s^2: a few units in the last digit of a few metres.</summary>
    internal double Rounding => 4e-15 * Stiffness;

    internal double Gravity { get; }

    /// <summary>Normal force per unit mass, m/s^2.</summary>
    /// <param name="depth">Depth seen from above, metres.</param>
    /// <param name="returning">Whether the rubber is on its way back.</param>
    internal double Force(double depth, bool returning) => depth > 0 ? (returning ? ReturnStiffness : Stiffness) * depth : 0.0;
}
