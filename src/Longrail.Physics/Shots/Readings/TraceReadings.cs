using Longrail.Physics.Geometry;

namespace Longrail.Physics.Shots.Readings;

/// <summary>The readings of a whole trace: one per event (null where the kind has none) and one for the shot.</summary>
public sealed class TraceReadings
{
    private TraceReadings(object?[] events, ShotReading shot)
    {
        Events = events;
        Shot = shot;
    }

    /// <summary>One reading per event, in the events' order: <see cref="TipReading"/>, <see cref="MeetReading"/>,
    /// <see cref="CushionReading"/> (cushions and jaws), <see cref="PocketReading"/>, or null.</summary>
    public IReadOnlyList<object?> Events { get; }

    /// <summary>The shot as a whole.</summary>
    public ShotReading Shot { get; }

    /// <summary>Takes the readings of a trace.</summary>
    /// <param name="trace">The trace.</param>
    /// <param name="stripeAxes">For each ball the unit axis about which its stripe runs at time 0, or null for a ball without one;
    /// null for no stripes at all.</param>
    public static TraceReadings Of(Trace trace, IReadOnlyList<Vec3?>? stripeAxes = null) => throw new NotImplementedException();
}
