using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing;

/// <summary>All that a picture of one shot shows.</summary>
public sealed record ShotPictureInput
{
    /// <summary>The shot that was played.</summary>
    public required Trace Trace { get; init; }

    /// <summary>The readings taken from it.</summary>
    public required TraceReadings Readings { get; init; }

    /// <summary>The balls' names, in the order of the set-up; any text.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>For each ball the unit axis about which its stripe runs at time 0, or null for a ball without one; null
    /// for no stripes.</summary>
    public IReadOnlyList<Vec3?>? StripeAxes { get; init; }

    /// <summary>The title; any text. Empty for none.</summary>
    public string Title { get; init; } = "";

    /// <summary>What the table is called ("pool-9ft"), or null.</summary>
    public string? TableName { get; init; }

    /// <summary>A date to print, or null: a picture never takes one from the clock.</summary>
    public DateOnly? Date { get; init; }
}
