using Longrail.Physics.Contacts;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Chances;

/// <summary>One layout, played with one stroke after another.</summary>
internal sealed class LayoutPlayer
{
    /// <summary>Longer than any shot on a table; a search must not hang on a freak.</summary>
    private static readonly ShotOptions _options = new(MaxTime: 60, MaxEvents: 5_000);

    private readonly ShotPlayer _player;
    private readonly ShotBall[] _balls;
    private readonly ShotSetup _setup;
    private readonly int _cueBall;

    /// <summary>Takes a layout.</summary>
    /// <param name="setup">Equipment and balls at rest.</param>
    /// <param name="cueBall">Index of the ball that is struck.</param>
    /// <param name="player">One to play with that has been used before, and is warm.</param>
    public LayoutPlayer(ShotSetup setup, int cueBall, ShotPlayer? player = null)
    {
        _player = player ?? new ShotPlayer();
        _balls = [.. setup.Balls];
        _setup = setup with { Balls = _balls, Stroke = null };
        _cueBall = cueBall;
        Grip = TipContact.MiscueLimit(setup.Equipment.Cue) * _balls[cueBall].Radius;
    }

    /// <summary>The shot that was played last.</summary>
    public ShotPlayer Shot => _player;

    /// <summary>Largest offset that the tip holds on the cue ball, metres.</summary>
    public double Grip { get; }

    /// <summary>Plays a stroke until nothing moves or the watch has seen enough.</summary>
    public StopReason Play<TWatch>(Stroke stroke, ref TWatch watch)
        where TWatch : struct, IShotWatch
    {
        ShotBall ball = _balls[_cueBall];
        TipResult struck = TipContact.Strike(stroke, ball.Radius, ball.Mass, _setup.Equipment.Cue);
        BallState before = ball.Start;
        _balls[_cueBall] = ball with { Start = new BallState(before.Position, struck.Velocity, struck.Spin) };
        StopReason ended = _player.Play(_setup, _options, ref watch);
        _balls[_cueBall] = ball;
        return ended;
    }
}
