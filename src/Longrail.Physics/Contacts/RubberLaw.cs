using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>The yielding rubber for one size of ball.</summary>
/// <remarks>
/// While the ball sinks deeper than ever before, the normal force is k d, with d the depth along the tilted normal; on
/// the way back, and if the ball is driven in again, it is e^2 k d up to the old depth. So the rubber gives back
/// exactly e^2 of the work it took, whatever friction does meanwhile, and the ball leaves where the nose line was. k is
/// set by the duration of a straight, frictionless contact, pi/(2 w) (1 + 1/e) with w = cos(theta) sqrt(k/m).
/// </remarks>
internal readonly struct RubberLaw
{
    internal RubberLaw(double radius, CushionSpec cushion, ClothSpec cloth, double gravity)
    {
        Friction = NoseBedLaw.For(radius, cushion.NoseHeight, cushion.Friction, cloth.SlidingFriction);
        Reach = TableOutline.Reach(radius, cushion.NoseHeight);
        double frequency = Math.PI * (1.0 + 1.0 / cushion.Restitution) / (2.0 * cushion.ContactTime);
        Stiffness = frequency * frequency / Friction.Cos;
        ReturnStiffness = cushion.Restitution * cushion.Restitution * Stiffness;
        LongestStep = cushion.ContactTime / StepsPerContact;
        Gravity = gravity;
        LeaningForce = 2.0 * cloth.SlidingFriction * gravity;
    }

    /// <summary>Steps over a contact. Fourth order; at 24 the speeds are right to about 1e-6 of the speed on
    /// arrival.</summary>
    internal const int StepsPerContact = 24;

    internal NoseBedLaw Friction { get; }

    /// <summary>Distance in plan of the ball's centre from the nose line at the touch, metres.</summary>
    internal double Reach { get; }

    /// <summary>Normal force per unit mass and metre of depth seen from above, 1/s^2.</summary>
    internal double Stiffness { get; }

    internal double ReturnStiffness { get; }

    /// <summary>Force below which a ball only leans, m/s^2: twice what the bed's friction can press it with.</summary>
    /// <remarks>A ball pressed by less than the rubber's force going in and more than its force coming back would hang
    /// at the deepest point for ever. Contacts so gentle (below about 1 cm/s) are therefore lossless.</remarks>
    internal double LeaningForce { get; }

    internal double LongestStep { get; }

    /// <summary>How far rounding of the ball's place can change the normal force, m/s^2: a few units in the last digit
    /// of a few metres.</summary>
    internal double Rounding => 4e-15 * Stiffness;

    internal double Gravity { get; }

    /// <summary>Normal force per unit mass, m/s^2.</summary>
    /// <param name="depth">Depth seen from above, metres.</param>
    /// <param name="loses">Whether the rubber is on its way back, with its loss.</param>
    internal double Force(double depth, bool loses) => depth > 0 ? (loses ? ReturnStiffness : Stiffness) * depth : 0.0;
}
