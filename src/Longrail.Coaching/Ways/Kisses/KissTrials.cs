using Longrail.Coaching.Ways.Chances;
using Longrail.Coaching.Ways.Search;
using Longrail.Physics.Contacts;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways.Kisses;

/// <summary>Plays strokes and looks whether they make the ball by a route, and how near to a kiss.</summary>
internal sealed class KissTrials
{
    private readonly LayoutPlayer _player;
    private readonly RouteRules _rules;
    private readonly KissQuestion _question;

    public KissTrials(KissQuestion question)
    {
        _question = question;
        _player = new LayoutPlayer(question.Setup, question.CueBall);
        WayRoute[] routes = [question.Route, .. question.Others.Select(other => other.Route)];
        int rails = routes.Max(route => route.ObjectBall.Count);
        int kicks = routes.Max(route => route.CueBall.Count);
        _rules = new RouteRules(new WaySearchRequest(
            question.Setup, question.CueBall, question.ObjectBall, question.BallNames, 0, rails, kicks, null,
            question.Stroke.Elevation, question.Player, 1));
        ShotBall cue = question.Setup.Balls[question.CueBall];
        ShotBall ball = question.Setup.Balls[question.ObjectBall];
        // The sine of the cut changes by so much for a radian of aim; on a kick the way is longer, and the straight
        // distance only sets how finely the aims are looked through.
        double contact = BallContact.Reach(cue.Radius, ball.Radius);
        double distance = cue.Start.Position.DistanceTo(ball.Start.Position);
        Handed = Math.Max(1, distance / contact);
    }

    /// <summary>How much the hit changes for a radian of aim, as a part of a ball.</summary>
    public double Handed { get; }

    /// <summary>Largest offset that the tip holds, metres.</summary>
    public double Grip => _player.Grip;

    /// <summary>A stroke, played.</summary>
    public KissTrial Play(Stroke stroke, WayRoute route)
    {
        var watch = new RouteWatch(_rules, toTheEnd: true);
        _player.Play(stroke, ref watch);
        SeenShot seen = watch.Seen;
        bool kisses = seen.Fate == ShotFate.DoubleKiss;
        double cut = Math.Asin(Math.Clamp(seen.Offset, -1, 1));
        return new KissTrial(seen.Makes(RouteKey.Of(route)), kisses, kisses ? 0 : Gap(), cut);
    }

    private double? Gap()
    {
        ShotPlayer shot = _player.Shot;
        for (int i = 0; i < shot.EventCount; i++)
        {
            ShotMoment moment = shot[i];
            if (moment.Kind == ShotEventKind.BallsMeet && moment.Involves(_question.CueBall))
            {
                return moment.Partner(_question.CueBall) == _question.ObjectBall
                    ? shot.ClosestAfter(_question.CueBall, _question.ObjectBall, moment.Time)
                    : null;
            }
        }

        return null;
    }
}
