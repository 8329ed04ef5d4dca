namespace Longrail.Coaching.Ways.Kisses;

/// <summary>The double kiss of a full, stopped bank in closed form: the cue ball is hit full, stays where it met the
/// object ball, and the object ball comes straight back off the cushion past it.</summary>
/// <remarks>
/// With the object ball's centre at the origin, the cushion's ball-centre line a distance d ahead of it, and the ball
/// going in at an angle a from the normal, the cue ball stands at -2R (sin a, cos a) and the ball turns at (d tan a,
/// d). It leaves at b along (sin b, -cos b); the cue ball's centre is then sin b (2R cos a + d) + cos b (2R sin a + d
/// tan a) from that line (a cross product). Less 2R that is the gap. Set to zero it gives d = 2R cos a (1 - sin(a + b))
/// / sin(a + b), which for a = b is R (1 - sin 2a) / sin a. No curve, no drift of the cue ball: the real gap is the
/// engine's.
/// </remarks>
public static class KissClearance
{
    /// <summary>How much room the object ball has as it passes the cue ball.</summary>
    /// <param name="radius">Ball radius, metres.</param>
    /// <param name="distance">From the object ball's centre to the ball-centre line of the cushion, square to it,
    /// metres, not negative.</param>
    /// <param name="angleIn">Angle in, from the normal, radians, in (0, pi/2).</param>
    /// <param name="angleOut">Angle out, from the normal, radians, in (0, pi/2), on the other side.</param>
    /// <returns>Clear distance at the nearest, metres; negative where they kiss.</returns>
    public static double Gap(double radius, double distance, double angleIn, double angleOut)
    {
        (double sinIn, double cosIn) = Math.SinCos(angleIn);
        (double sinOut, double cosOut) = Math.SinCos(angleOut);
        double across = 2 * radius * sinIn + distance * sinIn / cosIn;
        double back = 2 * radius * cosIn + distance;
        // Where the ball draws away from the very turn, the turn is the nearest place.
        bool drawsAway = back * cosOut <= across * sinOut;
        double nearest = drawsAway
            ? Math.Sqrt(across * across + back * back)
            : sinOut * back + cosOut * across;
        return nearest - 2 * radius;
    }

    /// <summary>How far off the cushion the object ball must be for the bank to clear.</summary>
    /// <param name="radius">Ball radius, metres.</param>
    /// <param name="angleIn">Angle in, from the normal, radians, in (0, pi/2).</param>
    /// <param name="angleOut">Angle out, from the normal, radians, in (0, pi/2).</param>
    /// <returns>Least distance from the ball-centre line, metres; 0 where even a ball on the cushion clears.</returns>
    public static double LeastDistance(double radius, double angleIn, double angleOut)
    {
        double sum = angleIn + angleOut;
        return sum < Math.PI / 2 ? 2 * radius * Math.Cos(angleIn) * (1 - Math.Sin(sum)) / Math.Sin(sum) : 0;
    }
}
