using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots;

/// <summary>Refuses a set-up that no table could hold. Cheap: done before every run.</summary>
internal static class SetupCheck
{
    internal static void Require(ShotSetup setup, TableOutline outline)
    {
        EquipmentSpec e = setup.Equipment ?? throw new ArgumentException("The set-up has no equipment.", nameof(setup));
        Positive(e.Table.Length, "table length");
        Positive(e.Table.Width, "table width");
        Positive(e.Table.Gravity, "gravity");
        Positive(e.Cloth.SlidingFriction, "cloth sliding friction");
        Positive(e.Cloth.RollingFriction, "cloth rolling friction");
        Positive(e.Cloth.SpinDecay, "cloth spin decay");
        Between(e.Cushion.Restitution, 1e-3, 1, "cushion restitution");
        Between(e.Cushion.Friction, 0, 2, "cushion friction");
        Positive(e.Cushion.ContactTime, "cushion contact time");
        Between(e.BallSet.Restitution, 0, 1, "ball restitution");
        Between(e.BallSet.Friction.Base, 0, 2, "ball friction base");
        Between(e.BallSet.Friction.Gain, 0, 2, "ball friction gain");
        Between(e.BallSet.Friction.Decay, 0, 1e6, "ball friction decay");

        for (int i = 0; i < setup.Balls.Count; i++)
        {
            ShotBall ball = setup.Balls[i];
            Positive(ball.Radius, "radius", i);
            Positive(ball.Mass, "mass", i);
            BallState s = ball.Start;
            double sum = s.Position.X + s.Position.Y + s.Velocity.X + s.Velocity.Y + s.Spin.X + s.Spin.Y + s.Spin.Z;
            if (!double.IsFinite(sum)) throw Fault($"ball {i}: its state is not finite");
            double sine = (e.Cushion.NoseHeight - ball.Radius) / ball.Radius;
            if (!(sine is >= -1e-9 and < 0.95))
                throw Fault($"cushion nose height {e.Cushion.NoseHeight:g4} m is not between centre and top of ball {i} (radius {ball.Radius:g4} m)");
            double reach = TableOutline.Reach(ball.Radius, e.Cushion.NoseHeight);
            foreach (ref readonly RubberPiece piece in outline.Pieces.AsSpan())
            {
                double gap = piece.Gap(s.Position, reach, out _);
                if (gap < -LoopLimits.RoundingOverlap)
                    throw Fault($"ball {i} stands {-gap * 1000:g4} mm in the {piece.Cushion} cushion");
            }

            for (int j = 0; j < i; j++)
            {
                double gap = s.Position.DistanceTo(setup.Balls[j].Start.Position) - BallContact.Reach(ball.Radius, setup.Balls[j].Radius);
                if (gap < -LoopLimits.RoundingOverlap) throw Fault($"balls {j} and {i} overlap by {-gap * 1000:g4} mm");
            }
        }
    }

    private static void Positive(double value, string what, int ball = -1)
    {
        if (value > 0 && double.IsFinite(value)) return;
        throw Fault(ball < 0 ? $"{what} {value:g4} is not a positive number" : $"ball {ball}: {what} {value:g4} is not a positive number");
    }

    private static void Between(double value, double low, double high, string what)
    {
        if (!(value >= low && value <= high)) throw Fault($"{what} {value:g4} is not between {low:g4} and {high:g4}");
    }

    private static ArgumentException Fault(FormattableString text) => new(text.ToString(CultureInfo.InvariantCulture) + ".");

    private static ArgumentException Fault(string text) => new(text + ".");
}
