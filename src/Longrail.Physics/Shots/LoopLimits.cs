namespace Longrail.Physics.Shots;

/// <summary>The small numbers of the shot loop, each with its reason and what breaks if it changes.</summary>
internal static class LoopLimits
{
    /// <summary>Closing speed below which two touching things are left to press on each other, m/s.</summary>
    /// <remarks>Without it, a ball that leans on another would bounce ever faster without end. At 0.1 mm/s a pair
    /// overlaps by at most v^2/(2 a): 2 nm while skidding, 0.05 micrometres at the slowest roll. Larger: overlap one
    /// might see. Smaller: more events in a press (about 15,000 a second as it stands).</remarks>
    internal const double SlowestClosing = 1e-4;

    /// <summary>How far balls that close more slowly than that may sink into each other before they meet after all,
    /// metres.</summary>
    internal const double Sink = 5e-8;

    /// <summary>Closing speed below which a ball on a cushion's touch line is left alone, m/s. The rubber carries
    /// anything faster, so this only has to be above rounding.</summary>
    internal const double SlowestTouch = 1e-7;

    /// <summary>Ball-ball contacts slower than this give back all the speed they take, m/s; so a press neither sinks in
    /// nor stalls.</summary>
    internal const double LosslessClosing = 2e-4;

    /// <summary>Cushion contacts slower than this are carried by the rubber even under the impulse law, m/s: a ball
    /// that merely leans on a cushion has no instant of impact.</summary>
    internal const double LeaningSpeed = 1e-3;

    /// <summary>Length at the end of a cushion that its facing keeps from yielding, metres (1.5 in;
    /// assumption).</summary>
    /// <remarks>Without it a hard ball would plough from the straight nose through the jaw into the pocket.</remarks>
    internal const double StiffEnd = 0.0381;

    /// <summary>A ball in the rubber for longer than this many contact times leans on it: the cloth's slow losses then
    /// count.</summary>
    internal const double ContactTimesOfPress = 4;

    /// <summary>Speed and surface speed below which a ball that leans on a cushion lies still, m/s: rolling friction
    /// stops it within 0.05 micrometres.</summary>
    internal const double LyingSpeed = 1e-4;

    /// <summary>Gap below which two balls count as frozen together, metres; rounding leaves 1e-15.</summary>
    internal const double FrozenGap = 1e-9;

    /// <summary>Largest gap that is bridged within one contact at any speed, metres.</summary>
    internal const double BridgedGap = 20e-6;

    /// <summary>Distance within which a point counts as on a cushion's touch line, metres: rounding of coordinates of a
    /// few metres.</summary>
    internal const double OnLine = 1e-12;

    /// <summary>Time that does not count as going on, seconds: a thousandth of what any contact takes to
    /// matter.</summary>
    internal const double NoProgress = 1e-12;

    /// <summary>Events at one instant, for each ball, after which the run is given up as stalled.</summary>
    internal const int EventsAtOnePlace = 200;

    /// <summary>Overlap at the start that is taken for rounding, metres; more is refused.</summary>
    internal const double RoundingOverlap = 1e-6;
}
