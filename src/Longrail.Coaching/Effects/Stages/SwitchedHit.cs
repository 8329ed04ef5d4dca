using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>Two balls meeting with the causes of the hit on or off.</summary>
/// <remarks>
/// Throw turns the struck ball's velocity. Its two causes are the two parts of the slip across the line of centres,
/// the cut's v sin(cut) and the side's R w_z; each is switched off by taking its part out of the slip from which the
/// friction on the velocity is computed. The spin that the hit hands over, about the vertical and level, is that of
/// the whole friction, whichever part of the throw is on.
/// </remarks>
internal static class SwitchedHit
{
    /// <summary>The struck ball after a hit.</summary>
    /// <param name="striker">The striker at the touch.</param>
    /// <param name="strikerBall">Its size.</param>
    /// <param name="struck">The struck ball at the touch.</param>
    /// <param name="struckBall">Its size.</param>
    /// <param name="restitution">Restitution between balls.</param>
    /// <param name="friction">Friction between balls, of the condition that is on.</param>
    /// <param name="on">What is at work.</param>
    internal static BallState Of(
        in BallState striker, in ShotBall strikerBall, in BallState struck, in ShotBall struckBall, double restitution,
        BallFriction friction, Switches on)
    {
        BallState whole = Struck(striker, strikerBall, struck, struckBall, restitution, friction);
        Vec3 spin = on.Has(EffectKind.Side) ? whole.Spin : whole.Spin with { Z = struck.Spin.Z };
        bool cut = on.Has(EffectKind.CutThrow);
        bool side = on.Has(EffectKind.SpinThrow);
        if (cut && side)
            return whole with { Spin = spin };

        Vec2 across = (struck.Position - striker.Position).Normalized().Left;
        BallState a = striker;
        BallState b = struck;
        if (!side)
        {
            a = a with { Spin = a.Spin with { Z = 0 } };
            b = b with { Spin = b.Spin with { Z = 0 } };
        }

        // Only the friction is taken from this; the velocity across that the struck ball had before stays.
        if (!cut)
            a = a with { Velocity = a.Velocity - (a.Velocity - b.Velocity).Dot(across) * across };
        BallState part = Struck(a, strikerBall, b, struckBall, restitution, friction);
        return new BallState(struck.Position, part.Velocity, spin);
    }

    private static BallState Struck(
        BallState a, in ShotBall aBall, BallState b, in ShotBall bBall, double restitution, BallFriction friction)
    {
        BallContact.Collide(
            ref a, aBall.Radius, aBall.Mass, ref b, bBall.Radius, bBall.Mass, restitution, friction);
        return b;
    }
}
