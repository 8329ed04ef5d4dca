using System.Reflection;
using Longrail.Physics.Geometry;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.TestKit.TestEquipment;

namespace Longrail.Physics.Tests.References;

/// <summary>What is asked of every trace: a spoiled trace must be refused for what was spoiled.</summary>
public class TraceExpectTests
{
    private static readonly ShotSetup _shot = Plain.With(
        Moving(0.8, 0.6, 3, 0.3, 0, 0.4), Ball(1.3, 0.75), Ball(2.0, 0.3));
    private static readonly Trace _trace = _shot.Play();

    [Fact]
    public void A_sound_trace_passes_them_all()
    {
        Assert.Contains(_trace.Events, e => e.Kind == ShotEventKind.BallsMeet);
        TraceExpect.Finite(_trace);
        TraceExpect.InOrder(_trace);
        TraceExpect.EnergyNeverRises(_trace);
        TraceExpect.MomentumKept(_trace);
        TraceExpect.NoOverlap(_trace);
        TraceExpect.AtRestOnTable(_trace);
    }

    [Fact]
    public void A_number_that_is_not_finite_is_found()
    {
        Trace spoiled = Spoiled(ShotEventKind.Cushion, e => e with { AfterA = Faster(e.AfterA, double.NaN) });
        Assert.Throws<ExpectationException>(() => TraceExpect.Finite(spoiled));
    }

    [Fact]
    public void Events_out_of_order_are_found()
    {
        Trace spoiled = Spoiled(ShotEventKind.Cushion, e => e with { Time = -1 });
        Assert.Throws<ExpectationException>(() => TraceExpect.InOrder(spoiled));
    }

    [Fact]
    public void Energy_from_a_cushion_is_found()
    {
        Trace spoiled = Spoiled(ShotEventKind.Cushion, e => e with { AfterA = Faster(e.BeforeA, 1 + 1e-8) });
        Assert.Throws<ExpectationException>(() => TraceExpect.EnergyNeverRises(spoiled));
    }

    [Fact]
    public void Energy_and_momentum_from_a_meeting_are_found()
    {
        Trace spoiled = Spoiled(ShotEventKind.BallsMeet, e => e with { AfterB = Faster(e.AfterB!.Value, 1.2) });
        Assert.Throws<ExpectationException>(() => TraceExpect.EnergyNeverRises(spoiled));
        Assert.Throws<ExpectationException>(() => TraceExpect.MomentumKept(spoiled));
    }

    [Fact]
    public void Energy_from_the_cloth_is_found()
    {
        MotionSegment[][] ways = Ways();
        ways[0][0] = ways[0][0] with { Acceleration = -ways[0][0].Acceleration };
        Assert.Throws<ExpectationException>(
            () => TraceExpect.EnergyNeverRises(Made(_trace.Ended, [.. _trace.Events], ways, [.. _trace.Balls])));
    }

    [Fact]
    public void Overlapping_balls_are_found()
    {
        MotionSegment[][] ways = Ways();
        BallState beside = ways[1][0].Start with { Position = ways[2][^1].Start.Position + new Vec2(2 * R - 2e-6, 0) };
        ways[1][^1] = ways[1][^1] with { Start = beside };
        Assert.Throws<ExpectationException>(
            () => TraceExpect.NoOverlap(Made(_trace.Ended, [.. _trace.Events], ways, [.. _trace.Balls])));
    }

    [Theory]
    [InlineData(0.5, -0.1, false)]
    [InlineData(0.5, 0.5, true)]
    public void A_ball_off_the_table_or_still_moving_at_the_end_is_found(double x, double y, bool moves)
    {
        BallEnd[] ends = [.. _trace.Balls];
        ends[1] = ends[1] with { State = new BallState(new Vec2(x, y), new Vec2(moves ? 0.1 : 0, 0), Vec3.Zero) };
        Assert.Throws<ExpectationException>(
            () => TraceExpect.AtRestOnTable(Made(_trace.Ended, [.. _trace.Events], Ways(), ends)));
    }

    [Fact]
    public void A_shot_that_did_not_end_by_itself_is_found() => Assert.Throws<ExpectationException>(
        () => TraceExpect.AtRestOnTable(Made(StopReason.Stalled, [.. _trace.Events], Ways(), [.. _trace.Balls])));

    [Fact]
    public void A_failing_case_is_reported_with_its_number_and_the_smallest_first()
    {
        var error = Assert.Throws<ExpectationException>(() => Cases.Check(
            CsCheck.Gen.Int[0, 1000], 200, n => Expect.That(n < 700, $"{n}"), n => $"number {n}", n => n));
        Assert.Contains("of 200 cases failed", error.Message, StringComparison.Ordinal);
        int smallest =
            Enumerable.Range(0, 200).Select(i => Cases.At(CsCheck.Gen.Int[0, 1000], i)).Where(n => n >= 700).Min();
        Assert.Contains($"number {smallest}", error.Message, StringComparison.Ordinal);
    }

    private static BallState Faster(BallState s, double factor) =>
        s with { Velocity = factor * s.Velocity, Spin = factor * s.Spin };

    private static Trace Spoiled(ShotEventKind kind, Func<ShotEvent, ShotEvent> change)
    {
        ShotEvent[] events = [.. _trace.Events];
        int index = Array.FindIndex(events, e => e.Kind == kind && e.Time > 0);
        events[index] = change(events[index]);
        return Made(_trace.Ended, events, Ways(), [.. _trace.Balls]);
    }

    private static MotionSegment[][] Ways() => [.. Enumerable.Range(0, 3).Select(i => _trace.Segments(i).ToArray())];

    /// <summary>Traces are made by the engine alone; a spoiled one has to be made behind its back.</summary>
    private static Trace Made(StopReason ended, ShotEvent[] events, MotionSegment[][] ways, BallEnd[] balls) =>
        (Trace)typeof(Trace).GetConstructors(BindingFlags.Instance | BindingFlags.NonPublic).Single()
            .Invoke([_shot, ended, _trace.Duration, events, ways, balls]);
}
