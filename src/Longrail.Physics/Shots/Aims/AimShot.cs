using Longrail.Physics.Contacts;
using Longrail.Physics.Motion;

namespace Longrail.Physics.Shots.Aims;

/// <summary>One and the same shot, played at one aim after another.</summary>
internal sealed class AimShot
{
    private readonly ShotSetup _setup;
    private readonly ShotBall[] _balls;
    private readonly int _cueBall;
    private readonly Stroke _template;

    internal AimShot(ShotSetup setup, int cueBall, Stroke template)
    {
        _balls = [.. setup.Balls];
        _setup = setup with { Balls = _balls, Stroke = null };
        _cueBall = cueBall;
        _template = template;
    }

    internal ShotSetup Setup => _setup;

    internal Trace Play(double aim, ShotOptions options)
    {
        ShotBall ball = _balls[_cueBall];
        TipResult struck = TipContact.Strike(_template with { Aim = aim }, ball.Radius, ball.Mass, _setup.Equipment.Cue);
        _balls[_cueBall] = ball with { Start = new BallState(ball.Start.Position, struck.Velocity, struck.Spin) };
        return ShotRunner.Run(_setup, options);
    }
}
