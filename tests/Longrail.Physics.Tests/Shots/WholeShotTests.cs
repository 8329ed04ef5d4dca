using CsCheck;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using Longrail.TestKit.Reference;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.Shots;

/// <summary>Whole shots against the reference integrator, which shares no code with the engine: every place within a
/// tenth of a millimetre, every orientation within what that and a tenth of a degree allow.</summary>
public class WholeShotTests
{
    [Theory]
    [InlineData(CushionLaw.Yielding, 2.5, 0.35, 1.0, 0.0)]
    [InlineData(CushionLaw.Yielding, 4.0, 0.9, 0.0, 0.5)]
    [InlineData(CushionLaw.Yielding, 6.0, 2.2, -0.6, -0.8)]
    [InlineData(CushionLaw.Yielding, 1.2, -1.2, 1.0, 1.0)]
    [InlineData(CushionLaw.Impulse, 3.0, 0.5, 1.0, -0.4)]
    [InlineData(CushionLaw.Impulse, 5.0, 2.5, 0.3, 0.7)]
    public void A_ball_alone_goes_the_same_way_over_four_cushions(
        CushionLaw law, double speed, double angle, double roll, double side)
    {
        ShotSetup shot = Plain.WithCushion(c => c with { Law = law }).With(Moving(0.8, 0.5, speed, angle, roll, side));
        Trace trace = shot.Play();
        double[] touches = [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion).Select(e => e.Time)];
        if (speed > 2) Assert.True(touches.Length >= 3);

        // Over four cushions, to the touch of a fifth.
        Agree(trace, ReferenceIntegrator.Run(shot, touches.Length > 4 ? touches[4] : 60));
    }

    [Theory]
    [InlineData(CushionLaw.Yielding, 2.0, 0.0, 1.0, 0.0)]
    [InlineData(CushionLaw.Yielding, 3.5, 0.2, 0.0, 0.4)]
    [InlineData(CushionLaw.Yielding, 5.0, -0.5, -0.5, 0.0)]
    [InlineData(CushionLaw.Impulse, 3.0, 0.4, 0.5, -0.3)]
    public void A_bank_of_two_balls_goes_the_same_way(
        CushionLaw law, double speed, double cut, double roll, double side)
    {
        // The struck ball is driven up to the left cushion and comes back; cut is the angle of the hit.
        Vec2 struck = new(1.3, 0.9), way = Vec2.FromAngle(1.3);
        Vec2 cue = struck - 2 * R * way.Rotated(cut) - 0.5 * way;
        ShotSetup shot = Plain.WithCushion(c => c with { Law = law })
            .With(Moving(cue.X, cue.Y, speed, way.Angle, roll, side), Ball(struck.X, struck.Y));
        Trace trace = shot.Play();
        Assert.Contains(trace.Events, e => e.Kind == ShotEventKind.BallsMeet);
        Assert.Contains(trace.Events, e => e.Kind == ShotEventKind.Cushion && e.BallA == 1);

        // After the second meeting of the same two balls small differences have grown a hundredfold or more: compare
        // until then.
        double[] meets = [.. trace.Events.Where(e => e.Kind == ShotEventKind.BallsMeet).Select(e => e.Time)];
        Agree(trace, ReferenceIntegrator.Run(shot, meets.Length > 2 ? meets[2] : 60));
    }

    [Theory]
    [InlineData(0.8, 0.0)]
    [InlineData(2.0, 0.5)]
    [InlineData(4.0, 0.5)]
    public void A_ball_frozen_to_the_cushion_and_struck_into_it_goes_the_same_way_while_rubber_and_ball_press_it(
        double speed, double cut)
    {
        double sin = (Plain.Cushion.NoseHeight - R) / R, line = 1.27 - R * Math.Sqrt(1 - sin * sin);
        Vec2 struck = new(1.3, line), way = new(0, 1);
        Vec2 cue = struck - 2 * R * way.Rotated(cut) - 0.3 * way;
        ShotSetup shot = Plain.With(Moving(cue.X, cue.Y, speed, Math.PI / 2), Ball(struck.X, struck.Y));
        Trace trace = shot.Play(0.8);
        ReferenceRun run = ReferenceIntegrator.Run(shot, 0.8, new ReferenceSteps(Sample: 0.01));
        int meets = run.Events.Count(e => e.Other is not null);
        Assert.Equal(meets, trace.Events.Count(e => e.Kind == ShotEventKind.BallsMeet));
        Agree(trace, run);
    }

    [Fact]
    public void Random_balls_on_random_equipment_go_the_same_way() => Cases.Check(
        from equipment in SceneGen.Equipment
        from balls in SceneGen.Scattered(1, 1)
        select new ShotSetup(equipment with { Table = Plain.Table }, balls),
        40,
        shot =>
        {
            Trace trace = shot.Play(6);
            // A corner, where two cushions press at once, is beyond the reference: leave the shot there.
            double corner = trace.Events
                .Where(e => e.Kind == ShotEventKind.Cushion && NearCorner(e.AfterA.Position))
                .Select(e => e.Time)
                .DefaultIfEmpty(6).First();
            double[] touches = [.. trace.Events.Where(e => e.Kind == ShotEventKind.Cushion).Select(e => e.Time)];
            double end = Math.Min(corner - 0.01, touches.Length > 4 ? touches[4] : 6);
            if (end > 0) Agree(trace, ReferenceIntegrator.Run(shot, end));
        },
        SceneText.Describe);

    private static bool NearCorner(Vec2 p) =>
        Math.Min(p.X, 2.54 - p.X) < 0.15 && Math.Min(p.Y, 1.27 - p.Y) < 0.15;

    private static void Agree(Trace trace, ReferenceRun run)
    {
        for (int k = 0; k < run.SampleTimes.Count; k++)
        {
            double time = run.SampleTimes[k];
            for (int i = 0; i < run.Final.Count; i++)
            {
                BallState expected = run.Samples[k][i], actual = trace.StateAt(i, time);
                Expect.Near(
                    0,
                    actual.Position.DistanceTo(expected.Position),
                    Tolerance.WholeShot,
                    $"place of ball {i} at {time} s");

                // A place off by a tenth of a millimetre is a rolled angle off by that over the radius.
                Expect.Near(
                    0,
                    trace.OrientationAt(i, time).AngleTo(run.Orientations[k][i]),
                    Tolerance.Orientation + Tolerance.WholeShot / R,
                    $"orientation of ball {i} at {time} s");
            }
        }
    }
}
