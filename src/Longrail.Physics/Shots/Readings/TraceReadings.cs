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
    /// <param name="stripeAxes">For each ball the unit axis about which its stripe runs at time 0, or null for a ball
    /// without one; null for no stripes at all.</param>
    public static TraceReadings Of(Trace trace, IReadOnlyList<Vec3?>? stripeAxes = null)
    {
        ArgumentNullException.ThrowIfNull(trace);
        var outline = new TableOutline(trace.Setup.Equipment.Table);
        var events = new object?[trace.Events.Count];
        for (int i = 0; i < events.Length; i++)
        {
            ShotEvent e = trace.Events[i];
            events[i] = e.Kind switch
            {
                ShotEventKind.Tip => TipReadings.Of(trace, e),
                ShotEventKind.BallsMeet => MeetReadings.Of(trace, e),
                ShotEventKind.Cushion or ShotEventKind.Jaw => CushionReadings.Of(trace, outline, i, stripeAxes?[e.BallA]),
                ShotEventKind.Pocketed => PocketReadings.Of(trace, outline, i),
                _ => null,
            };
        }

        return new TraceReadings(events, ShotReadings.Of(trace, events));
    }
}
