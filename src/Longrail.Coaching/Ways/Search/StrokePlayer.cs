using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Motion;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Plays strokes at one layout, one after another, and sorts them. Belongs to one thread at a time.</summary>
internal sealed class StrokePlayer
{
    /// <summary>No shot of interest lasts longer than a minute.</summary>
    private static readonly ShotOptions _options = new(MaxTime: 60, MaxEvents: 5_000);

    private readonly ShotPlayer _player = new();
    private readonly ShotBall[] _balls;
    private readonly ShotSetup _setup;
    private readonly RouteRules _rules;
    private readonly ShotBall _cueBall;

    internal StrokePlayer(WaySearchRequest request, RouteRules rules)
    {
        _rules = rules;
        _balls = [.. request.Setup.Balls.Select(ball => ball with { Start = BallState.AtRest(ball.Start.Position) })];
        _cueBall = _balls[request.CueBall];
        _setup = request.Setup with { Balls = _balls, Stroke = null };
    }

    /// <summary>How many shots it has played.</summary>
    internal long Played { get; private set; }

    internal CueSpec Cue => _setup.Equipment.Cue;

    internal double Radius => _cueBall.Radius;

    /// <summary>The angle from the stick to the way of the ball, radians, positive to the left.</summary>
    internal double Squirt(in Stroke stroke) => Strike(stroke with { Aim = 0 }).Squirt;

    /// <summary>Plays a stroke to its end if it makes the ball, otherwise to the miss.</summary>
    internal SeenShot Play(in Stroke stroke) => Play(stroke, toTheEnd: true);

    /// <summary>Plays a stroke until the object ball's fate is decided: whether the cue ball goes down after it is left
    /// open, and the shot costs half as much.</summary>
    internal SeenShot PlayToTheDrop(in Stroke stroke) => Play(stroke, toTheEnd: false);

    private SeenShot Play(in Stroke stroke, bool toTheEnd)
    {
        TipResult struck = Strike(stroke);
        _balls[_rules.CueBall] = _cueBall with
        {
            Start = new BallState(_cueBall.Start.Position, struck.Velocity, struck.Spin),
        };
        var watch = new RouteWatch(_rules, toTheEnd);
        _player.Play(_setup, _options, ref watch);
        Played++;
        watch.Seen.Direction = stroke.Aim + struck.Squirt;
        return watch.Seen;
    }

    private TipResult Strike(in Stroke stroke) => TipContact.Strike(stroke, _cueBall.Radius, _cueBall.Mass, Cue);
}
