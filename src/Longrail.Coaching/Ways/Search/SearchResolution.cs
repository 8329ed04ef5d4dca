namespace Longrail.Coaching.Ways.Search;

/// <summary>How finely the search looks, each number with its reason.</summary>
internal static class SearchResolution
{
    /// <summary>Radians in a degree.</summary>
    internal const double Degree = Math.PI / 180;

    /// <summary>Step of the first look round the table, radians of aim. A ball seen over two cushions may be narrower;
    /// between two steps it shows by being passed on either side.</summary>
    internal const double Round = 2.0 * Degree;

    /// <summary>Where two neighbours differ in what the cue ball does before it meets the object ball, they are looked
    /// at down to this.</summary>
    internal const double BeforeMeeting = 0.5 * Degree;

    /// <summary>The leeway resolution: edges of windows are found to this, and a window narrower than it may be
    /// lost. A club player's aim strays by nearly twenty times as much.</summary>
    internal const double Edge = 0.01 * Degree;

    /// <summary>A pocket between the places that two neighbours reach is looked for down to this.</summary>
    internal const double Pocket = 0.004 * Degree;

    /// <summary>Within a window it is looked at every so often whether the cue ball goes down too; a narrower band of
    /// scratches is passed over.</summary>
    internal const double Scratch = 0.1 * Degree;

    /// <summary>Step across the object ball on a direct hit, sine of the cut. Full on it is two degrees of the object
    /// ball's way.</summary>
    internal const double DirectStep = 1.0 / 30;

    /// <summary>The same after a kick.</summary>
    internal const double KickStep = 1.0 / 8;

    /// <summary>Thinnest hit that is looked for, sine of the cut: 84 degrees.</summary>
    internal const double Thinnest = 0.995;

    /// <summary>The same after a kick: 78 degrees.</summary>
    internal const double ThinnestKick = 0.98;
}
