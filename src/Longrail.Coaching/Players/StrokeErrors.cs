using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Players;

/// <summary>The strokes a player makes of one that was meant: aim, speed, tip across, tip up and elevation each stray
/// by an independent normal error.</summary>
/// <remarks>
/// Where the normal law would leave what can be played it is cut off: a stroke is not played slower than a tenth of
/// what was meant; a butt that would come out below level is raised by as much instead (a folded normal); a contact
/// beyond the tip's grip is a miscue, which is not played and counts as a miss. Independence is an assumption: real
/// errors of aim and tip hang together, because the stick turns about the bridge.
/// </remarks>
/// <param name="Player">Whose errors.</param>
/// <param name="Stream">Where the random numbers come from.</param>
public readonly record struct StrokeErrors(Player Player, RandomNumbers Stream)
{
    private const double SlowestPart = 0.1;
    private const double Steepest = 85 * Math.PI / 180;

    /// <summary>One stroke.</summary>
    /// <param name="meant">The stroke that was meant.</param>
    /// <param name="number">Which one: the same number gives the same errors.</param>
    /// <param name="grip">Largest offset that the tip holds, metres.</param>
    /// <returns>The stroke, or null for a miscue.</returns>
    public Stroke? Played(Stroke meant, ulong number, double grip)
    {
        Span<double> z = stackalloc double[5];
        Stream.Normals(number, z);
        double right = meant.OffsetRight + Player.TipAcross * z[2];
        double above = meant.OffsetAbove + Player.TipUp * z[3];
        if (!(right * right + above * above < grip * grip)) return null;
        return new Stroke(
            meant.Aim + Player.Aim * z[0],
            meant.Speed * Math.Max(SlowestPart, 1 + Player.Speed * z[1]),
            right,
            above,
            Math.Min(Steepest, Math.Abs(meant.Elevation + Player.Elevation * z[4])));
    }
}
