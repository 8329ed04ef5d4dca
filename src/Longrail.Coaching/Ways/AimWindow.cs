namespace Longrail.Coaching.Ways;

/// <summary>At one speed and tip position, a range of aims that all make the ball by one route.</summary>
/// <param name="Speed">The cue ball's speed as it leaves the tip, m/s.</param>
/// <param name="TipRight">Contact offset to the right, metres.</param>
/// <param name="TipAbove">Contact offset above the centre, metres.</param>
/// <param name="From">First aim that makes it, radians counter-clockwise from +x.</param>
/// <param name="To">Last aim that makes it, radians, above <paramref name="From"/>.</param>
public readonly record struct AimWindow(double Speed, double TipRight, double TipAbove, double From, double To)
{
    /// <summary>The aim in the middle, radians.</summary>
    public double Middle => 0.5 * (From + To);

    /// <summary>Width, radians.</summary>
    public double Width => To - From;
}
