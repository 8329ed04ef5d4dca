using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Motion;

/// <summary>Orientation over a stretch of linearly changing spin, against tiny turns one after another.</summary>
public class TurningTests
{
    [Fact]
    public void A_long_skid_at_high_spin_turns_right_to_a_fiftieth_of_a_tenth_of_a_degree()
    {
        // 0.1 degree is what a whole shot may be off (its stripe is to be trusted); one skid may take a fiftieth of it.
        var random = new Random(20261125);
        double Next(double low, double high) => low + (high - low) * random.NextDouble();
        for (int i = 0; i < 200; i++)
        {
            var spin = new Vec3(Next(-150, 150), Next(-150, 150), Next(20, 100));
            double rate = 2.5 * 0.2 * 9.80665 / 0.028575;
            double angle = Next(0, 2 * Math.PI);
            var change = new Vec3(rate * Math.Cos(angle), rate * Math.Sin(angle), -10);
            double time = Next(0, 0.5);
            const int steps = 20_000;
            double h = time / steps;
            Rotation tiny = Rotation.Identity;
            for (int k = 0; k < steps; k++) tiny = tiny.Then(Rotation.FromVector(h * (spin + ((k + 0.5) * h) * change)));
            double off = Turning.Over(spin, change, time, verticalStops: true).AngleTo(tiny) * 180 / Math.PI;
            Expect.Less(off, 0.1 / 50, "degrees off");
        }
    }

    [Fact]
    public void Spin_about_the_vertical_stops_at_zero_on_the_cloth_and_goes_on_in_the_rubber()
    {
        var spin = new Vec3(0, 0, 5);
        var change = new Vec3(0, 0, -10);
        // On the cloth: 5 t - 5 t^2 until it dies at 0.5 s, 1.25 rad; without the stop it comes back to 0 at 1 s.
        Expect.Near(1.25, Turning.Over(spin, change, 1, verticalStops: true).AngleTo(Rotation.Identity), 1e-12, "turn on the cloth");
        Expect.Near(0, Turning.Over(spin, change, 1, verticalStops: false).AngleTo(Rotation.Identity), 1e-12, "turn in the rubber");
    }
}
