using Longrail.Physics.Contacts;
using Longrail.Scenes;

namespace Longrail.Coaching.Ways;

/// <summary>A way as a scene that can be played.</summary>
public static class WayScene
{
    /// <summary>The layout with the way's stroke. Played, it makes the ball by the way's route.</summary>
    /// <param name="request">The question.</param>
    /// <param name="way">One of its answers.</param>
    public static Scene Of(WaysRequest request, Way way)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(way);
        string title = request.Scene.Asked.Title is { Length: > 0 } given ? $"{given}: {way.Words}" : way.Words;
        Stroke stroke = way.Stroke.Stroke;
        return request.Scene.Asked.WithStroke(request.CueBall!, stroke).WithTitle(title);
    }
}
