using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Charts;

/// <summary>The question of a bank chart: by how much does a bank have to be aimed beside the mirror point?</summary>
/// <remarks>The cue ball strikes the object ball full from a stated distance with a level stick; a kick is the cue ball
/// alone.</remarks>
public sealed record ChartRequest
{
    /// <summary>The equipment.</summary>
    public required EquipmentSpec Equipment { get; init; }

    /// <summary>What it is called.</summary>
    public EquipmentNames Names { get; init; } = new();

    /// <summary>The bank.</summary>
    public required ChartRoute Route { get; init; }

    /// <summary>Where the banked ball lies; see <see cref="ChartPlaces"/>.</summary>
    public required ChartPlaces Places { get; init; }

    /// <summary>Speeds of the cue ball as it leaves the tip, m/s, positive; at least one.</summary>
    public required IReadOnlyList<double> Speeds { get; init; }

    /// <summary>Places of the tip; at least one.</summary>
    public required IReadOnlyList<ChartTip> Tips { get; init; }

    /// <summary>At what height the tip strikes. A kick has no stun.</summary>
    public required CueHeight Height { get; init; }

    /// <summary>From the cue ball's centre to the object ball's, metres; more than a ball's width. A kick has none.
    /// </summary>
    public double Distance { get; init; }

    /// <summary>How places along the cushion are numbered.</summary>
    public DiamondNumbering Numbering { get; init; }

    /// <summary>In what corrections are shown.</summary>
    public ChartUnit Unit { get; init; }

    /// <summary>Number of threads; the chart does not depend on it.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;

    /// <summary>Distance of a ball's centre from a nose line at a touch, metres.</summary>
    internal double Reach => TableOutline.Reach(0.5 * Equipment.BallSet.Diameter, Equipment.Cushion.NoseHeight);
}
