using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Charts;

/// <summary>What a chart says of one place.</summary>
/// <param name="Place">Where the banked ball lies, diamonds along and across.</param>
/// <param name="MirrorTouch">Its centre as it would touch the cushion in a mirror bank, metres; null if no line leads
/// there.</param>
/// <param name="MirrorNumber">The number of that touch, in the chart's numbering; null likewise.</param>
/// <param name="Cells">One cell for each tip and speed: all speeds of the first tip, then of the next.</param>
public sealed record ChartRow(Vec2 Place, Vec2? MirrorTouch, double? MirrorNumber, IReadOnlyList<ChartCell> Cells);
