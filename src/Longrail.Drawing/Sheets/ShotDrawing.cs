using Longrail.Drawing.Paths;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Sheets;

/// <summary>A shot reduced to what is drawn of it.</summary>
internal sealed record ShotDrawing
{
    internal required string Title { get; init; }

    internal required EquipmentSpec Equipment { get; init; }

    internal required IReadOnlyList<BallTrack> Tracks { get; init; }

    internal required IReadOnlyList<string> Names { get; init; }

    /// <summary>Stripe axes at time 0, one per ball.</summary>
    internal required IReadOnlyList<Vec3?> StripeAxes { get; init; }

    /// <summary>What is numbered on the drawing, in order.</summary>
    internal required IReadOnlyList<KeyRow> Key { get; init; }

    /// <summary>Index of the ball that is struck, if one is.</summary>
    internal int? Struck { get; init; }

    /// <summary>Where struck ball and first object ball touch, if they do.</summary>
    internal GhostBall? Ghost { get; init; }

    /// <summary>The stroke for the inset, if there was one.</summary>
    internal TipView? Tip { get; init; }

    /// <summary>What is to be said about the shot as a whole: kisses, cautions; each one line.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];

    internal string? TableName { get; init; }

    internal DateOnly? Date { get; init; }
}
