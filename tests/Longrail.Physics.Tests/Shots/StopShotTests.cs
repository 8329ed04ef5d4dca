using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>Sliding and rolling on arrival, stop shots, drift, the double kiss: closed forms of the trade's check
/// values, recomputed.</summary>
public class StopShotTests
{
    private const double Inch = 0.0254, G = 9.80665;

    private static readonly EquipmentSpec _field = Plain
        .WithTable(t => t with { Length = 400, Width = 200 })
        .WithBalls(b => b with { Restitution = 1, Friction = new BallFriction(0, 0, 0) });

    [Fact]
    public void The_slowest_ball_that_still_slides_at_a_distance_is_as_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("slides-at-distance").Rows)
        {
            double d = row["distance"].Value, mu = row["friction"].Value, half = row["speed"].HalfUnit;
            double v = Math.Sqrt(49 * mu * G * d / 12);
            Expect.Printed(row["speed"], v, $"{row}");
            EquipmentSpec cloth = _field.WithCloth(c => c with { SlidingFriction = mu });
            foreach (int sign in new[] { -1, 1 })
            {
                double speed = row["speed"].Value + 2 * sign * half;
                double slide = cloth.With(Ball(200, 100, new Vec2(speed, 0))).Play(5)
                    .Events.First(e => e.Kind == ShotEventKind.SlideEnds).AfterA.Position.X - 200;
                Expect.That(sign > 0 == slide > d, $"{row}: at {speed} m/s it slides {slide} m");
            }
        }
    }

    [Fact]
    public void How_much_of_its_roll_a_stunned_ball_has_on_arrival_is_as_tabled()
    {
        foreach (GoldenRow row in GoldenTable.Load("roll-on-arrival").Rows)
        {
            double width = row["distance"].Value;
            EquipmentSpec table = Plain.WithTable(t => t with { Width = 2 }).WithCushion(
                c => c with { NoseHeight = R });
            ShotEvent touch = table.With(Ball(1, 2 - R - width, new Vec2(0, row["speed"].Value))).Play()
                .Events.First(e => e.Kind == ShotEventKind.Cushion);
            double ratio = -R * touch.BeforeA.Spin.X / touch.BeforeA.Velocity.Y;
            Expect.Printed(row["roll_ratio"], ratio, $"{row}");
        }
    }

    [Fact]
    public void A_stop_shot_struck_as_low_as_tabled_arrives_without_roll_and_stops_dead()
    {
        // Backspin dies at t = b v/(mu g), b in radii: D = (v^2/mu g)(b - b^2/2). Rigid-body derivation.
        foreach (GoldenRow row in GoldenTable.Load("stop-shot").Rows)
        {
            double d = row["distance"].Value, v = row["speed"].Value;
            double b = 1 - Math.Sqrt(1 - 2 * 0.2 * G * d / (v * v));
            Expect.Printed(row["offset"], b, $"{row}");
            TipResult hit = TipContact.Strike(new Stroke(0, v, 0, -b * R, 0), R, M, Plain.Cue with { TipFriction = 5 });
            Trace trace = _field.With(Ball(200, 100, hit.Velocity, hit.Spin), Ball(200 + d + 2 * R, 100)).Play();
            ShotEvent meet = trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet);
            Expect.Near(0, R * meet.BeforeA.Spin.Length, 1e-9, $"{row}: spin on arrival, as surface speed");
            Expect.Near(0, trace.Balls[0].State.Position.DistanceTo(new Vec2(200 + d, 100)), 1e-9, $"{row}: drift");
        }
    }

    [Fact]
    public void What_spin_is_left_carries_the_cue_ball_on_as_tabled()
    {
        // d = (2 f v/7)^2 / (2 mu_r g): the roll phase of a ball left with spin f v and no speed (the short skid is
        // left out).
        foreach (GoldenRow row in GoldenTable.Load("drift").Rows)
        {
            double f = row["percent"].Value / 100, v = 2;
            ShotEvent meet = Plays.Meet(_field.WithTable(t => t with { Length = 10, Width = 5 }), v, 0, f, 0);
            double rolls = Plays.Final(meet.AfterA).Length;
            Expect.Printed(row["inches"], rolls * rolls / (2 * 0.01 * G) / Inch, $"{row}");
        }
    }

    [Fact]
    public void A_full_stop_shot_bank_kisses_nearer_than_the_closed_form_and_clears_beyond_it()
    {
        // d > R (1 - sin 2a)/sin a for a mirror rebound at a, d from the ball-centre line of the cushion. Plane
        // geometry.
        foreach (GoldenRow row in GoldenTable.Load("double-kiss").Rows)
        {
            double a = row["angle"].Value * Math.PI / 180, limit = R * (1 - Math.Sin(2 * a)) / Math.Sin(a);
            Expect.Near(row["inches"].Value, limit / Inch, row["inches"].HalfUnit, $"{row}");
            if (limit < 1e-3) continue;
            Expect.That(Meetings(a, limit * 0.999) == 2, $"{row}: a thousandth nearer there is a second kiss");
            Expect.That(Meetings(a, limit * 1.001) == 1, $"{row}: a thousandth farther there is none");
        }
    }

    private static int Meetings(double angle, double distance)
    {
        Vec2 ob = new(0.6, 1.27 - R - distance), way = new(Math.Sin(angle), Math.Cos(angle));
        Vec2 cue = ob - (2 * R + 0.01) * way;
        Trace trace = Lossless.With(Ball(cue.X, cue.Y, 2 * way), Ball(ob.X, ob.Y)).Play(1.2);
        return trace.Events.Count(e => e.Kind == ShotEventKind.BallsMeet && e.Time < (2.5 * distance + 0.2) / 2);
    }
}
