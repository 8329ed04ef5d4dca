namespace Longrail.Drawing;

/// <summary>The motion of one ball.</summary>
/// <param name="Ball">Index of the ball.</param>
/// <param name="Name">Its name; any text.</param>
/// <param name="Colour">The colour that it is drawn in, "#rrggbb".</param>
/// <param name="Radius">Its radius on the sheet.</param>
/// <param name="StripeAxis">The unit axis about which its stripe runs at time 0, in the table's frame; null for a ball
/// without one.</param>
/// <param name="Gone">When it drops into a pocket, seconds; null if it stays on the table.</param>
/// <param name="Keys">Seven numbers for each time: the time in seconds, x and y on the sheet, and how the ball has
/// turned since time 0 as a unit quaternion w, x, y, z in the table's frame (z up).</param>
public sealed record BallMotion(
    int Ball, string Name, string Colour, double Radius, double[]? StripeAxis, double? Gone, double[] Keys);
