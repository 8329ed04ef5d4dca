using Longrail.Coaching.Contrasts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Sheets;

/// <summary>The ways to play a ball reduced to what is drawn of them.</summary>
internal sealed record WaysDrawing
{
    internal required string Title { get; init; }

    /// <summary>The question: "9, then 8".</summary>
    internal required string Asked { get; init; }

    /// <summary>Whose odds: "club".</summary>
    internal required string Player { get; init; }

    internal required EquipmentSpec Equipment { get; init; }

    internal required IReadOnlyList<string> Names { get; init; }

    internal required IReadOnlyList<Vec3?> StripeAxes { get; init; }

    internal required IReadOnlyList<double> Radii { get; init; }

    /// <summary>Where the balls stand.</summary>
    internal required IReadOnlyList<TablePoint> Starts { get; init; }

    internal required int CueBall { get; init; }

    internal required int ObjectBall { get; init; }

    internal int? NextBall { get; init; }

    /// <summary>The ways that are drawn, best first.</summary>
    internal required IReadOnlyList<WayDrawing> Ways { get; init; }

    /// <summary>How many more there are.</summary>
    internal int MoreWays { get; init; }

    internal required IReadOnlyList<ContrastColumn> Columns { get; init; }

    /// <summary>How the first way is played: names and words.</summary>
    internal IReadOnlyList<(string Name, string Words)> Details { get; init; } = [];

    /// <summary>Why the first is better than the second, or null.</summary>
    internal string? Reason { get; init; }

    /// <summary>Why other routes cannot be played.</summary>
    internal IReadOnlyList<string> NotPlayable { get; init; } = [];

    /// <summary>What must be said with it: that the list is partial, cautions.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];

    internal string? TableName { get; init; }

    internal DateOnly? Date { get; init; }
}
