using CsCheck;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Shots;

/// <summary>What must hold for any shot. 20,000 random scenes: up to 16 balls, frozen clusters, grazing contacts,
/// balls on cushions, with and without pockets, both cushion laws, speeds from 1 mm/s to 15 m/s.</summary>
public class ShotPropertyTests
{
    private const int Scenes = 20_000;

    [Fact]
    public void Every_shot_ends_at_rest_on_the_table_with_finite_numbers_and_never_gains_energy_and_keeps_momentum() =>
        Cases.Check(
        SceneGen.Shot,
        Scenes,
        shot =>
        {
            Trace trace = shot.Play(5000);
            TraceExpect.Finite(trace);
            TraceExpect.InOrder(trace);
            TraceExpect.AtRestOnTable(trace);
            TraceExpect.EnergyNeverRises(trace);
            TraceExpect.MomentumKept(trace);
        },
        SceneText.Describe,
        shot => shot.Balls.Count);

    [Fact]
    public void Balls_never_overlap() => Cases.Check(
        SceneGen.Shot,
        Scenes / 10,
        shot => TraceExpect.NoOverlap(shot.Play(5000)),
        SceneText.Describe,
        shot => shot.Balls.Count,
        seed: 7);

    [Fact]
    public void The_mirrored_shot_goes_the_mirrored_way() => Cases.Check(
        SceneGen.SmallShot,
        1000,
        shot =>
        {
            double width = shot.Equipment.Table.Width;
            ShotSetup mirrored = Changed(shot, s => Mirrored(s, width));
            SameWay(shot.Play(), mirrored.Play(), s => Mirrored(s, width), i => i);
        },
        SceneText.Describe,
        shot => shot.Balls.Count);

    [Fact]
    public void The_shot_turned_end_for_end_goes_the_turned_way() => Cases.Check(
        SceneGen.SmallShot,
        1000,
        shot =>
        {
            var far = new Vec2(shot.Equipment.Table.Length, shot.Equipment.Table.Width);
            BallState Turned(BallState s) => new(
                far - s.Position, -s.Velocity, new Vec3(-s.Spin.X, -s.Spin.Y, s.Spin.Z));
            SameWay(shot.Play(), Changed(shot, Turned).Play(), Turned, i => i);
        },
        SceneText.Describe,
        shot => shot.Balls.Count);

    [Fact]
    public void Renumbering_the_balls_changes_nothing_but_their_numbers() => Cases.Check(
        SceneGen.SmallShot,
        1000,
        shot =>
        {
            int last = shot.Balls.Count - 1;
            SameWay(shot.Play(), (shot with { Balls = [.. shot.Balls.Reverse()] }).Play(), s => s, i => last - i);
        },
        SceneText.Describe,
        shot => shot.Balls.Count);

    [Fact]
    public void A_shot_stopped_and_started_again_from_its_state_goes_on_as_if_it_had_not_been() => Cases.Check(
        from shot in SceneGen.SmallPlainShot
        from part in Gen.Double[0.02, 0.6]
        select (shot, part),
        1000,
        item =>
        {
            Trace whole = item.shot.Play();
            double time = Math.Min(item.part * whole.Duration, 3);
            int balls = item.shot.Balls.Count;
            // What a ball in the rubber does next depends on how deep it was: that is not in its state.
            if (Enumerable.Range(0, balls).Any(i => whole.SegmentAt(i, time).Phase == MotionPhase.InRubber)) return;
            ShotSetup rest = item.shot with
            {
                Balls = [.. item.shot.Balls.Select((b, i) => b with { Start = whole.StateAt(i, time) })],
            };
            Trace second = rest.Play();
            foreach (double t in Until(whole).Where(t => t >= time))
            {
                for (int i = 0; i < balls; i++)
                {
                    double off = whole.StateAt(i, t).Position.DistanceTo(second.StateAt(i, t - time).Position);
                    Expect.Near(0, off, Grown, $"ball {i} at {t:R} s, stopped at {time:R} s");
                }
            }
        },
        item => $"{item.part}\n{SceneText.Describe(item.shot)}",
        item => item.shot.Balls.Count);

    [Fact]
    public void The_hash_is_the_same_on_one_thread_and_on_many_and_differs_between_shots()
    {
        ShotSetup[] shots = [.. Enumerable.Range(0, 400).Select(i => Cases.At(SceneGen.Shot, i, 11))];
        ulong[] one = [.. shots.Select(s => s.Play().Hash())];
        var many = new ulong[shots.Length];
        Parallel.For(
            0, shots.Length, new ParallelOptions { MaxDegreeOfParallelism = 8 }, i => many[i] = shots[i].Play().Hash());
        Assert.Equal(one, many);
        Assert.Equal(one.Length, one.Distinct().Count());
    }

    /// <summary>Metres. Where a contact is on the edge of sticking the engine decides with a margin of 1e-9, so
    /// mirrored shots may differ by 1e-9 of the speed: 1e-8 m over ten metres, grown a hundredfold by a meeting of
    /// balls that does not graze. Anything wrong in a sign is millions of times larger.</summary>
    private const double Grown = 1e-6;

    private static BallState Mirrored(BallState s, double width) => new(
        new Vec2(s.Position.X, width - s.Position.Y),
        new Vec2(s.Velocity.X, -s.Velocity.Y),
        new Vec3(-s.Spin.X, s.Spin.Y, -s.Spin.Z));

    private static ShotSetup Changed(ShotSetup shot, Func<BallState, BallState> change) =>
        shot with { Balls = [.. shot.Balls.Select(b => b with { Start = change(b.Start) })] };

    private static void SameWay(Trace a, Trace b, Func<BallState, BallState> change, Func<int, int> number)
    {
        foreach (double time in Until(a))
        {
            for (int i = 0; i < a.Balls.Count; i++)
            {
                BallState expected = change(a.StateAt(i, time)), actual = b.StateAt(number(i), time);
                Expect.Near(
                    0, expected.Position.DistanceTo(actual.Position), Grown, $"place of ball {i} at {time:R} s");
            }
        }
    }

    /// <summary>Times at which to compare, up to the third meeting of balls or touch of a jaw, or the first grazing
    /// one.</summary>
    private static IEnumerable<double> Until(Trace trace)
    {
        ShotEvent[] round = [.. trace.Events.Where(e => e.Kind is ShotEventKind.BallsMeet or ShotEventKind.Jaw)];
        int last = Array.FindIndex(round, Grazes) is var g && g >= 0 ? Math.Min(g, 2) : 2;
        double end = last < round.Length ? round[last].Time : trace.Duration;
        for (int k = 0; k <= 40; k++) yield return end * k / 40 * (1 - 1e-12);
    }

    private static bool Grazes(ShotEvent e)
    {
        if (e.BeforeB is not BallState other) return false;
        Vec2 relative = e.BeforeA.Velocity - other.Velocity;
        return (other.Position - e.BeforeA.Position).Normalized().Dot(relative) < 0.1 * relative.Length;
    }
}
