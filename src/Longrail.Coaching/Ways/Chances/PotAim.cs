using Longrail.Physics.Contacts;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>The aim of a straight pot, throw and squirt allowed for.</summary>
internal static class PotAim
{
    /// <summary>The ball's direction is met to this, radians (0.006 degrees: 2 mm over two metres).</summary>
    private const double Tolerance = 1e-4;

    private const int MostSteps = 8;

    /// <summary>The stroke, or null if no aim nearby sends the ball to the pocket.</summary>
    /// <param name="player">The layout.</param>
    /// <param name="cueBall">Index of the cue ball.</param>
    /// <param name="ball">Index of the ball to pot.</param>
    /// <param name="pot">The line.</param>
    /// <param name="contact">Distance of the centres at the touch, metres.</param>
    /// <param name="template">The stroke; its aim is ignored.</param>
    public static Stroke? Of(
        LayoutPlayer player, int cueBall, int ball, PotLine pot, double contact, Stroke template)
    {
        // To the left by so much turns the ball to the right by distance over width as much: good enough for a first
        // step; after it the slope that was seen.
        double slope = -Math.Max(pot.Reach, contact) / (contact * Math.Cos(pot.Cut));
        double aim = pot.Approach;
        double lastAim = double.NaN;
        double lastError = 0;
        for (int i = 0; i < MostSteps; i++)
        {
            Stroke stroke = template with { Aim = aim };
            var watch = new DepartureWatch(cueBall, ball);
            player.Play(stroke, ref watch);
            if (watch.Direction is not { } direction) return null;
            double error = Math.IEEERemainder(direction - pot.Line, 2 * Math.PI);
            if (Math.Abs(error) < Tolerance) return stroke;
            double seen = (error - lastError) / (aim - lastAim);
            if (seen < 0 && double.IsFinite(seen)) slope = seen;
            (lastAim, lastError) = (aim, error);
            aim -= error / slope;
        }

        return null;
    }

    /// <summary>Ends the shot as the struck ball sets off.</summary>
    private struct DepartureWatch(int cueBall, int ball) : IShotWatch
    {
        /// <summary>The ball's direction, radians; null if something else came first.</summary>
        public double? Direction { get; private set; }

        /// <inheritdoc/>
        public bool GoesOn(ShotMoment moment)
        {
            if (!moment.Involves(cueBall) || moment.Kind is ShotEventKind.Tip or ShotEventKind.SlideEnds) return true;
            if (moment.Kind != ShotEventKind.BallsMeet || !moment.Involves(ball)) return false;
            Vec2 velocity = moment.BallA == ball ? moment.AfterA.Velocity : moment.AfterB.Velocity;
            if (velocity.LengthSquared > 0) Direction = velocity.Angle;
            return false;
        }
    }
}
