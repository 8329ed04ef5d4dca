using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Physics.Contacts;

/// <summary>Tip on ball: what a stroke gives the ball it strikes.</summary>
/// <remarks>
/// A point impact without slip (rigid-body derivation): the ball leaves along the stick at V (1 + e)/(1 + m/M + 5/2
/// (b/R)^2) with spin R w/v = 5/2 b/R about the axis square to stick and offset. The shaft's end is pushed aside with
/// its effective mass m_e, which turns the path by tan(squirt) = 5/2 (b/R) sqrt(1 - (b/R)^2) / (1 + m/m_e + 5/2 (1 -
/// (b/R)^2)) away from the offset (R. Cross, Am. J. Phys. 76, 205 (2008) and R. Shepard (2001) for the mechanism; form
/// as Alciatore TP A.31). A raised butt drives the ball into the bed, which takes the downward part; the tilted spin
/// that remains makes it swerve. The ball's hop off the bed is not followed.
/// </remarks>
public static class TipContact
{
    /// <summary>The ball's velocity and spin after a stroke. Does not refuse a miscue: compare the offset with
    /// <see cref="TipResult.MiscueLimit"/>.</summary>
    /// <param name="stroke">The stroke; its offsets must lie within the ball.</param>
    /// <param name="ballRadius">Ball radius, metres, positive.</param>
    /// <param name="ballMass">Ball mass, kilograms, positive.</param>
    /// <param name="cue">The cue.</param>
    /// <exception cref="ArgumentOutOfRangeException">The offset does not lie on the ball, or a number is not finite or
    /// out of range.</exception>
    public static TipResult Strike(Stroke stroke, double ballRadius, double ballMass, CueSpec cue)
    {
        ArgumentNullException.ThrowIfNull(cue);
        double right = stroke.OffsetRight / ballRadius;
        double above = stroke.OffsetAbove / ballRadius;
        double offset = Math.Sqrt(right * right + above * above);
        if (!(offset < 1.0)) throw new ArgumentOutOfRangeException(nameof(stroke), offset, "The tip must meet the ball: offset below one radius.");
        if (!(stroke.Elevation is >= 0 and < Math.PI / 2))
            throw new ArgumentOutOfRangeException(nameof(stroke), stroke.Elevation, "Elevation must be from 0 to less than a right angle.");

        (double sinElevation, double cosElevation) = Math.SinCos(stroke.Elevation);
        double alongStick = stroke.Speed / cosElevation;
        double cueSpeed = alongStick / SpeedRatio(offset, ballMass, cue);
        double squirt = Math.Atan(SquirtTangent(offset, ballMass, cue) * (offset > 0 ? right / offset : 0));

        // The stick's frame: forward (down by the elevation), left, and up square to both.
        Vec2 aim = Vec2.FromAngle(stroke.Aim);
        var left = new Vec3(-aim.Y, aim.X, 0);
        var up = new Vec3(aim.X * sinElevation, aim.Y * sinElevation, cosElevation);
        double spinScale = 2.5 * alongStick / ballRadius;
        Vec3 spin = (spinScale * right) * up + (spinScale * above) * left;
        return new TipResult(
            aim.Rotated(squirt) * stroke.Speed, spin, cueSpeed, squirt, MiscueLimit(cue) * ballRadius);
    }

    /// <summary>The ball's speed along the stick over the stick's speed before contact.</summary>
    /// <param name="offset">Offset of the contact from the centre over the ball's radius, in [0, 1).</param>
    /// <param name="ballMass">Ball mass, kilograms.</param>
    /// <param name="cue">The cue.</param>
    public static double SpeedRatio(double offset, double ballMass, CueSpec cue) =>
        (1.0 + cue.TipRestitution) / (1.0 + ballMass / cue.Mass + 2.5 * offset * offset);

    /// <summary>Tangent of the squirt angle, towards the side away from the offset.</summary>
    /// <param name="offset">Offset of the contact from the centre over the ball's radius, in [0, 1).</param>
    /// <param name="ballMass">Ball mass, kilograms.</param>
    /// <param name="cue">The cue.</param>
    public static double SquirtTangent(double offset, double ballMass, CueSpec cue)
    {
        double face = 1.0 - offset * offset;
        return 2.5 * offset * Math.Sqrt(face) / (1.0 + ballMass / cue.EndMass + 2.5 * face);
    }

    /// <summary>Largest offset over radius that the tip holds without slipping off: sin(atan(mu)).</summary>
    /// <param name="cue">The cue.</param>
    public static double MiscueLimit(CueSpec cue) => cue.TipFriction / Math.Sqrt(1.0 + cue.TipFriction * cue.TipFriction);

    /// <summary>The contact's offset when the shaft's axis is moved off the centre: the dome of the tip touches nearer
    /// to the centre.</summary>
    /// <param name="shaftOffset">Offset B of the shaft's axis, metres.</param>
    /// <param name="ballRadius">Ball radius R, metres.</param>
    /// <param name="cue">The cue; its tip radius r gives b = B R/(R + r).</param>
    public static double ContactOffset(double shaftOffset, double ballRadius, CueSpec cue) =>
        shaftOffset * ballRadius / (ballRadius + cue.TipRadius);

    /// <summary>The inverse of <see cref="ContactOffset"/>.</summary>
    /// <param name="contactOffset">Offset b of the contact, metres.</param>
    /// <param name="ballRadius">Ball radius, metres.</param>
    /// <param name="cue">The cue.</param>
    public static double ShaftOffset(double contactOffset, double ballRadius, CueSpec cue) =>
        contactOffset * (ballRadius + cue.TipRadius) / ballRadius;
}
