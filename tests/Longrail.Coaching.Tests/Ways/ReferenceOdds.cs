using Longrail.Coaching.Players;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Tests.Ways;

/// <summary>The odds counted in the plainest way: another source of random numbers, every shot to its end, nothing cut
/// short.</summary>
internal static class ReferenceOdds
{
    internal static double Share(ShotSetup setup, Stroke meant, PocketName pocket, Player player, int shots)
    {
        var random = new Random(20_261_125);
        ShotBall cue = setup.Balls[0];
        ShotBall[] balls = [.. setup.Balls];
        ShotSetup layout = setup with { Balls = balls };
        var ends = new BallEnd[balls.Length];
        double grip = TipContact.MiscueLimit(setup.Equipment.Cue) * cue.Radius;
        int made = 0;
        for (int i = 0; i < shots; i++)
        {
            double hard = Math.Sqrt(1 + Math.Pow(meant.Speed / player.HardStroke, 2));
            var stroke = new Stroke(
                meant.Aim + hard * player.Aim * Normal(random),
                meant.Speed * (1 + player.Speed * Normal(random)),
                meant.OffsetRight + hard * player.TipAcross * Normal(random),
                meant.OffsetAbove + hard * player.TipUp * Normal(random),
                Math.Abs(meant.Elevation + player.Elevation * Normal(random)));
            if (double.Hypot(stroke.OffsetRight, stroke.OffsetAbove) >= grip) continue;
            TipResult struck = TipContact.Strike(stroke, cue.Radius, cue.Mass, setup.Equipment.Cue);
            balls[0] = cue with { Start = new BallState(cue.Start.Position, struck.Velocity, struck.Spin) };
            ShotRunner.RunToEnd(layout, ShotOptions.Default, ends);
            if (ends[1].Pocket == pocket && ends[0].Phase != MotionPhase.Pocketed) made++;
        }

        return (double)made / shots;
    }

    // G. Marsaglia and T. A. Bray, SIAM Rev. 6, 260 (1964): the polar method, another one than the library's.
    private static double Normal(Random random)
    {
        while (true)
        {
            double x = 2 * random.NextDouble() - 1;
            double y = 2 * random.NextDouble() - 1;
            double s = x * x + y * y;
            if (s is > 0 and < 1) return x * Math.Sqrt(-2 * Math.Log(s) / s);
        }
    }
}
