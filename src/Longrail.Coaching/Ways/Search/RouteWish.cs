using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Which routes are asked for.</summary>
/// <param name="request">The question.</param>
internal sealed class RouteWish(WaySearchRequest request)
{
    private static readonly PocketName[] _all = Enum.GetValues<PocketName>();

    /// <summary>The pockets asked for.</summary>
    internal PocketName[] Pockets { get; } = request.Pocket is { } pocket ? [pocket] : _all;

    /// <summary>Whether a shot sends the object ball down by a route that is asked for, a scratch at the same time
    /// apart.</summary>
    internal bool Wants(in SeenShot shot) => shot.Fate is ShotFate.Down or ShotFate.Made && Asks(shot.Route);

    internal bool Asks(RouteKey route) =>
        route.ObjectBall.Count >= request.FewestRails && route.ObjectBall.Count <= request.MostRails
        && route.CueBall.Count <= request.MostKickRails && (request.Pocket is not { } only || only == route.Pocket);
}
