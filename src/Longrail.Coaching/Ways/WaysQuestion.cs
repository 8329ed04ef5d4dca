using Longrail.Physics.Shots;

namespace Longrail.Coaching.Ways;

/// <summary>A question in which nothing is wrong, with names turned into places in the set-up.</summary>
/// <param name="Request">As it was asked.</param>
/// <param name="Setup">Equipment and balls, all at rest.</param>
/// <param name="CueBall">Index of the ball that is struck.</param>
/// <param name="ObjectBall">Index of the ball to make.</param>
/// <param name="NextBall">Index of the ball to play next, or null.</param>
/// <param name="Elevation">How far the butt is raised, radians.</param>
internal sealed record WaysQuestion(
    WaysRequest Request, ShotSetup Setup, int CueBall, int ObjectBall, int? NextBall, double Elevation)
{
    /// <summary>The question with its names looked up; they must be there.</summary>
    internal static WaysQuestion Of(WaysRequest request)
    {
        ShotSetup asked = request.Scene.Setup;
        int? next = request.NextBall is { } ball ? request.Scene.IndexOf(ball) : null;
        return new WaysQuestion(
            request, WayShot.AtRest(asked), request.Scene.IndexOf(request.CueBall!),
            request.Scene.IndexOf(request.Ball), next, asked.Stroke?.Stroke.Elevation ?? 0.0);
    }
}
