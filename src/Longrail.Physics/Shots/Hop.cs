using Longrail.Physics.Contacts;

namespace Longrail.Physics.Shots;

/// <summary>How high a real ball would likely hop where this model keeps it on the bed. Estimates for a caution,
/// nothing more.</summary>
internal static class Hop
{
    /// <summary>Restitution of a ball dropped on the cloth over slate, about 0.5 (Alciatore, collected properties of
    /// balls and tables).</summary>
    internal const double BedRestitution = 0.5;

    /// <summary>Height of a hop from an upward speed, metres.</summary>
    internal static double Height(double upward, double gravity) => upward * upward / (2 * gravity);

    /// <summary>A raised butt drives the ball into the bed, which throws it up again.</summary>
    internal static double FromStroke(Stroke stroke, double gravity) =>
        Height(BedRestitution * stroke.Speed * Math.Tan(stroke.Elevation), gravity);
}
