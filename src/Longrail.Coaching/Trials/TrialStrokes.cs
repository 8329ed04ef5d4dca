using Longrail.Coaching.Contrasts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes.Compiling;

namespace Longrail.Coaching.Trials;

/// <summary>Plays a condition of a trial many times over with a player's errors.</summary>
internal sealed class TrialStrokes
{
    // Streams of the seed: the player's errors are the same in every condition, which takes them out of the difference.
    private const uint StrokePart = 1;
    private const uint ReadingPart = 2;

    private static readonly ShotOptions _options = new(MaxTime: 60, MaxEvents: 5_000);

    private readonly TrialRequest _request;
    private readonly CushionName? _target;
    private readonly PocketName? _pocket;
    private readonly ulong _key;

    internal TrialStrokes(TrialRequest request, CushionName? target, PocketName? pocket)
    {
        _request = request;
        _target = target;
        _pocket = pocket;
        _key = RandomNumbers.Mixed(0x747269616CUL, (ulong)(uint)request.Seed);
    }

    /// <summary>Plays one condition.</summary>
    /// <param name="ready">Its scene.</param>
    /// <param name="played">Called after each stroke, from any thread.</param>
    /// <param name="stop">Ends it early.</param>
    internal SimulatedShot[] Play(ReadyScene ready, Action played, CancellationToken stop)
    {
        StrokeRecord meant = ready.Setup.Stroke!;
        double grip = TipContact.MiscueLimit(ready.Setup.Equipment.Cue) * ready.Setup.Balls[meant.Ball].Radius;
        var errors = new StrokeErrors(_request.Player, new RandomNumbers(_key, StrokePart));
        var shots = new SimulatedShot[_request.Strokes];
        Parallel.For(0, shots.Length, new ParallelOptions { CancellationToken = stop }, i =>
        {
            shots[i] = errors.Played(meant.Stroke, (ulong)i, grip) is { } stroke
                ? Play(ready.Setup, meant.Ball, stroke, (ulong)i)
                : new SimulatedShot(double.NaN, meant.Stroke.Speed, false);
            played();
        });
        return shots;
    }

    private SimulatedShot Play(ShotSetup setup, int cue, Stroke stroke, ulong number)
    {
        ShotBall ball = setup.Balls[cue];
        TipResult struck = TipContact.Strike(stroke, ball.Radius, ball.Mass, setup.Equipment.Cue);
        ShotBall[] balls = [.. setup.Balls];
        balls[cue] = ball with { Start = new BallState(ball.Start.Position, struck.Velocity, struck.Spin) };
        Trace trace = ShotRunner.Run(
            setup with { Balls = balls, Stroke = new StrokeRecord(cue, stroke, struck) }, _options);
        BankReading? bank = BankReading.Of(trace, TraceReadings.Of(trace));

        Span<double> noise = stackalloc double[1];
        new RandomNumbers(_key, ReadingPart).Normals(number, noise);
        double speed = stroke.Speed * (1 + _request.SpeedReading * noise[0]);
        double landing = bank is not null && bank.Target == _target ? bank.LandingMetres ?? double.NaN : double.NaN;
        bool made = _pocket is not null && bank?.Pocket == _pocket && trace.Balls[cue].Pocket is null;
        return new SimulatedShot(landing, speed, made);
    }
}
