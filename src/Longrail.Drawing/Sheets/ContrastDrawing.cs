using Longrail.Coaching.Contrasts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Sheets;

/// <summary>A comparison reduced to what is drawn of it.</summary>
internal sealed record ContrastDrawing
{
    internal required string Title { get; init; }

    /// <summary>What is varied: "stroke.speed".</summary>
    internal required string Varied { get; init; }

    /// <summary>What is held: "the stick's line".</summary>
    internal required string Held { get; init; }

    internal required bool VariesTwoThings { get; init; }

    internal required EquipmentSpec Equipment { get; init; }

    internal required IReadOnlyList<string> Names { get; init; }

    internal required IReadOnlyList<Vec3?> StripeAxes { get; init; }

    internal required IReadOnlyList<double> Radii { get; init; }

    /// <summary>Index of the struck ball, if one is.</summary>
    internal int? Struck { get; init; }

    /// <summary>The base first.</summary>
    internal required IReadOnlyList<VariantDrawing> Variants { get; init; }

    internal required IReadOnlyList<ContrastColumn> Columns { get; init; }

    /// <summary>What must be said beside the table.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The cushion at which the base lands; null if it lands on none.</summary>
    internal CushionName? Target { get; init; }

    internal string? TableName { get; init; }

    internal DateOnly? Date { get; init; }
}
