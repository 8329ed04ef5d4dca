using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The making region of ways that were found: the strokes that hang together with one of their
/// windows.</summary>
/// <remarks>
/// Windows stand at the nodes of the grid only. A stroke between the nodes lies in the region of a way if it makes the
/// ball by that way's route, and can be changed step by step, speed and tip in equal parts and the aim as needed, into a
/// stroke within one of the way's windows, while the ball is made by the route all along: at each step and half way
/// between. A step is at most an eighth of the way to the node. A route that was not found, or an island of its making
/// region that the grid has no window on, is so told from what was found, and no interpolation is trusted.
/// </remarks>
public sealed class WayRegion
{
    /// <summary>How many windows are walked to before a stroke counts as outside.</summary>
    private const int Tries = 16;

    private readonly StrokePlayer _player;
    private readonly RouteWalk _walk;
    private readonly Dictionary<RouteKey, IReadOnlyList<AimWindow>> _windows = [];
    private readonly double _tipScale;

    /// <summary>Takes the ways of a search.</summary>
    /// <param name="request">The question.</param>
    /// <param name="ways">The ways found.</param>
    public WayRegion(WaySearchRequest request, IReadOnlyList<FoundWay> ways)
    {
        RequestCheck.Require(request);
        ArgumentNullException.ThrowIfNull(ways);
        _player = new StrokePlayer(request, new RouteRules(request));
        _walk = new RouteWalk(_player);
        _tipScale = TipContact.MiscueLimit(_player.Cue) * _player.Radius;
        foreach (FoundWay way in ways) _windows[RouteKey.Of(way.Route)] = way.Windows;
    }

    /// <summary>The route by which a stroke makes the ball within the cushions asked for; null if it does not, or the
    /// cue ball goes down.</summary>
    /// <param name="stroke">The stroke.</param>
    public WayRoute? RouteOf(Stroke stroke)
    {
        SeenShot shot = _player.Play(stroke);
        return shot.Fate == ShotFate.Made ? shot.Route.ToRoute() : null;
    }

    /// <summary>Whether a stroke lies in the region of the ways.</summary>
    /// <param name="stroke">The stroke.</param>
    public bool Contains(Stroke stroke)
    {
        SeenShot shot = _player.Play(stroke);
        if (shot.Fate != ShotFate.Made || !_windows.TryGetValue(shot.Route, out IReadOnlyList<AimWindow>? windows))
            return false;
        RouteKey route = shot.Route;
        return windows.OrderBy(w => Distance(stroke, w)).Take(Tries).Any(w => _walk.Reaches(route, stroke, w));
    }

    /// <summary>How far a window's node is from a stroke, and how far the aim has to turn.</summary>
    private double Distance(Stroke stroke, AimWindow window)
    {
        double speed = Math.Log(window.Speed / stroke.Speed) / 0.25;
        double right = (window.TipRight - stroke.OffsetRight) / (0.5 * _tipScale);
        double above = (window.TipAbove - stroke.OffsetAbove) / (0.5 * _tipScale);
        double turn = Math.IEEERemainder(Way(window) - Way(stroke), 2 * Math.PI) / (5 * SearchResolution.Degree);
        return Math.Sqrt(speed * speed + right * right + above * above + turn * turn);
    }

    private double Way(Stroke stroke) => stroke.Aim + _player.Squirt(stroke);

    private double Way(AimWindow w) => Way(new Stroke(w.Middle, w.Speed, w.TipRight, w.TipAbove, 0));
}
