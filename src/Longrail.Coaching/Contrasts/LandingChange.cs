using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Contrasts;

/// <summary>How far a bank lands from where the base lands, along the target cushion.</summary>
/// <param name="Diamonds">In diamonds, positive towards the higher numbers.</param>
/// <param name="Metres">The same in metres.</param>
/// <param name="IsLonger">True if the rebound is longer than the base's, false if shorter; null if there is no change,
/// or if the base comes straight off the cushion, where neither word has a meaning.</param>
public sealed record LandingChange(double Diamonds, double Metres, bool? IsLonger)
{
    // Below this the base counts as straight off the cushion: half a degree, which over a table's width is a sixth of a
    // ball.
    private const double StraightOff = 0.0087;

    /// <summary>The change against the base; null if the two do not reach the same cushion.</summary>
    public static LandingChange? Between(Trace baseTrace, BankReading? baseBank, BankReading? bank)
    {
        if (baseBank?.Target is null || bank?.Target != baseBank.Target)
            return null;
        double diamonds = bank.LandingDiamonds!.Value - baseBank.LandingDiamonds!.Value;
        double metres = bank.LandingMetres!.Value - baseBank.LandingMetres!.Value;
        int longWay = LongWay(baseTrace.Events[baseBank.EventIndex], baseBank.Target.Value);
        return new LandingChange(diamonds, metres, metres == 0 || longWay == 0 ? null : metres > 0 == longWay > 0);
    }

    // +1 if a wider rebound lands at a higher number, -1 if at a lower one, 0 if the base comes straight off.
    private static int LongWay(ShotEvent rebound, CushionName target)
    {
        Vec2 d = rebound.AfterA.Velocity.Normalized();
        Vec2 normal = rebound.Cushion switch
        {
            CushionName.Head => new Vec2(1, 0),
            CushionName.Foot => new Vec2(-1, 0),
            CushionName.Left => new Vec2(0, -1),
            _ => new Vec2(0, 1),
        };
        double offNormal = normal.Cross(d);
        if (Math.Abs(offNormal) < StraightOff)
            return 0;

        // Turning d further from the normal (to the left if it lies left of it) moves the landing along the rail u by
        // s cross(d, d') / cross(d, u), where cross(d, d') has the sign of the turn.
        Vec2 rail = target is CushionName.Left or CushionName.Right ? new Vec2(1, 0) : new Vec2(0, 1);
        return Math.Sign(offNormal) * Math.Sign(d.Cross(rail));
    }
}
