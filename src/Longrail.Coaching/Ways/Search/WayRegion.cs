using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>The making region of ways that were found: the strokes that hang together with one of their
/// windows.</summary>
/// <remarks>
/// Windows stand at the nodes of the grid only. A stroke between the nodes lies in the region of a way if it makes the
/// ball by that way's route, and can be changed step by step, in speed, tip and aim, into a stroke within one of the
/// way's windows (to the resolution of their ends), while the ball is made by the route all along: at each step and
/// half way between. Steps go straight to the nearest windows, at most an eighth of the way each; where a hole lies between,
/// such as a band of speeds that scratch, up to sixty places about the stroke are tried. Every step is a shot on the
/// full physics and nothing is interpolated: a route that was not found, or an island of its making region on which the
/// grid has no window, is told from what was found.
/// </remarks>
public sealed class WayRegion
{
    private readonly StrokePlayer _player;
    private readonly RouteWalk _walk;
    private readonly Dictionary<RouteKey, IReadOnlyList<AimWindow>> _windows = [];

    /// <summary>Takes the ways of a search.</summary>
    /// <param name="request">The question.</param>
    /// <param name="ways">The ways found.</param>
    public WayRegion(WaySearchRequest request, IReadOnlyList<FoundWay> ways)
    {
        RequestCheck.Require(request);
        ArgumentNullException.ThrowIfNull(ways);
        _player = new StrokePlayer(request, new RouteRules(request));
        _walk = new RouteWalk(_player);
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
        return _walk.Reaches(shot.Route, stroke, windows);
    }
}
