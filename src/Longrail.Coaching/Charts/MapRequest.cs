using Longrail.Coaching.Players;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>The question of a map: from where on the table is a bank a good shot?</summary>
/// <remarks>The cue ball stands still, the object ball is moved from place to place. Each place is played at the best
/// of the speeds, aimed at the middle of what makes the bank there, with a level stick.</remarks>
public sealed record MapRequest
{
    /// <summary>The most places that a map has.</summary>
    public const int MostPlaces = 20_000;

    /// <summary>The most shots of one place.</summary>
    public const int MostShots = 1_000_000;

    /// <summary>The equipment.</summary>
    public required EquipmentSpec Equipment { get; init; }

    /// <summary>What it is called.</summary>
    public EquipmentNames Names { get; init; } = new();

    /// <summary>The bank; not a kick.</summary>
    public required ChartRoute Route { get; init; }

    /// <summary>What is shown.</summary>
    public required MapMeasure Measure { get; init; }

    /// <summary>The cue ball, diamonds along and across.</summary>
    public required Vec2 CueBall { get; init; }

    /// <summary>The corner of the mapped area nearest head and right, diamonds.</summary>
    public Vec2 From { get; init; }

    /// <summary>Its opposite corner, diamonds.</summary>
    public Vec2 To { get; init; } = new(8, 4);

    /// <summary>Cells along the table, positive.</summary>
    public int Columns { get; init; } = 33;

    /// <summary>Cells across, positive.</summary>
    public int Rows { get; init; } = 17;

    /// <summary>Speeds of the cue ball as it leaves the tip, m/s; the best of them counts at each place.</summary>
    public required IReadOnlyList<double> Speeds { get; init; }

    /// <summary>Place of the tip to the side.</summary>
    public ChartTip Tip { get; init; } = new(0, "0");

    /// <summary>At what height the tip strikes.</summary>
    public CueHeight Height { get; init; } = CueHeight.Centre;

    /// <summary>Whose errors the odds are for; a map of leeway needs none.</summary>
    public Player? Player { get; init; }

    /// <summary>Seed of the random strokes: same seed, same map.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Strokes of the player at each place.</summary>
    public int Shots { get; init; } = 400;

    /// <summary>Number of threads; the map does not depend on it.</summary>
    public int Threads { get; init; } = Environment.ProcessorCount;

    /// <summary>The middle of a cell, diamonds along and across.</summary>
    /// <param name="column">From 0, counted from the head.</param>
    /// <param name="row">From 0, counted from the right.</param>
    public Vec2 Place(int column, int row) => new(
        From.X + (column + 0.5) * (To.X - From.X) / Columns, From.Y + (row + 0.5) * (To.Y - From.Y) / Rows);

    /// <summary>Distance of a ball's centre from a nose line at a touch, metres.</summary>
    internal double Reach => TableOutline.Reach(0.5 * Equipment.BallSet.Diameter, Equipment.Cushion.NoseHeight);
}
