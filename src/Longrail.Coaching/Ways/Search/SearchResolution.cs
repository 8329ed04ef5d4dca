namespace Longrail.Coaching.Ways.Search;

/// <summary>How finely the search looks, each number with its reason.</summary>
internal static class SearchResolution
{
    /// <summary>Radians in a degree.</summary>
    internal const double Degree = Math.PI / 180;

    /// <summary>Step of the first look round the table, radians of aim. Balls seen over two cushions are about two
    /// degrees wide; a ball between two steps shows by being passed on either side.</summary>
    internal const double Round = 1.0 * Degree;

    /// <summary>Where two neighbours differ in what the cue ball does before it meets the object ball, they are looked
    /// at down to this.</summary>
    internal const double BeforeMeeting = 0.25 * Degree;

    /// <summary>The leeway resolution: edges of windows are found to this, and a window narrower than it may be
    /// lost. A good player's aim strays by ten times as much.</summary>
    internal const double Edge = 0.01 * Degree;

    /// <summary>A pocket between the places that two neighbours reach is looked for down to this.</summary>
    internal const double Pocket = 0.004 * Degree;

    /// <summary>Step across the object ball on a direct hit, sine of the cut. Full on it is two degrees of the object
    /// ball's way.</summary>
    internal const double DirectStep = 1.0 / 30;

    /// <summary>The same after a kick.</summary>
    internal const double KickStep = 1.0 / 12;

    /// <summary>Thinnest hit that is looked for, sine of the cut: 84 degrees.</summary>
    internal const double Thinnest = 0.995;

    /// <summary>The same after a kick: 78 degrees.</summary>
    internal const double ThinnestKick = 0.98;
}
