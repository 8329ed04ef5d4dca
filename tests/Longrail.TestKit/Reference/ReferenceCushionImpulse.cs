namespace Longrail.TestKit.Reference;

/// <summary>A rebound at an instant: the equations of Mathavan, Jackson and Parkin (Proc. IMechE C 224, 1863 (2010),
/// doi:10.1243/09544062JMES1964) taken in many small impulses, with Stronge's energetic restitution.</summary>
public static class ReferenceCushionImpulse
{
    /// <summary>The motion after the rebound, in the rail's frame.</summary>
    /// <param name="ball">The motion before; it must go into the cushion.</param>
    /// <param name="radius">Ball radius, metres.</param>
    /// <param name="noseHeight">Height of the nose, metres.</param>
    /// <param name="restitution">Root of work given back over work taken in.</param>
    /// <param name="noseFriction">Coefficient at the nose.</param>
    /// <param name="bedFriction">Coefficient at the bed.</param>
    /// <param name="steps">About how many pushes stop the ball.</param>
    public static RailMotion Rebound(
        RailMotion ball,
        double radius,
        double noseHeight,
        double restitution,
        double noseFriction,
        double bedFriction,
        int steps)
    {
        if (!(ball.Vy > 0)) throw new ArgumentException("The ball does not go into the cushion.", nameof(ball));
        var contact = new NoseAndBed(radius, noseHeight, noseFriction, bedFriction);
        double push = ball.Vy / (contact.Cos * steps);

        // Compression: until the ball no longer goes in. The work is the integral of the approach over the push.
        double work = 0;
        while (true)
        {
            RailMotion next = ball;
            contact.Push(ref next, push, 0);
            if (next.Vy <= 0) break;
            work += contact.Cos * 0.5 * (ball.Vy + next.Vy) * push;
            ball = next;
        }

        double last = Bisect(0, push, p => Pushed(contact, ball, p).Vy <= 0);
        RailMotion stopped = Pushed(contact, ball, last);
        work += contact.Cos * 0.5 * (ball.Vy + stopped.Vy) * last;
        ball = stopped;

        // Restitution: until the part e^2 of the work is given back.
        double owed = restitution * restitution * work;
        while (true)
        {
            RailMotion next = Pushed(contact, ball, push);
            double given = -contact.Cos * 0.5 * (ball.Vy + next.Vy) * push;
            if (given >= owed) break;
            owed -= given;
            ball = next;
        }

        double final = Bisect(0, push, p => -contact.Cos * 0.5 * (ball.Vy + Pushed(contact, ball, p).Vy) * p >= owed);
        return Pushed(contact, ball, final);
    }

    private static RailMotion Pushed(NoseAndBed contact, RailMotion ball, double push)
    {
        contact.Push(ref ball, push, 0);
        return ball;
    }

    private static double Bisect(double low, double high, Func<double, bool> reached)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (reached(middle)) high = middle;
            else low = middle;
        }

        return high;
    }
}
