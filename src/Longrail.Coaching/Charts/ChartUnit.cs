namespace Longrail.Coaching.Charts;

/// <summary>In what a chart's corrections are shown.</summary>
public enum ChartUnit
{
    /// <summary>In the numbers of its numbering: diamonds, or tens.</summary>
    Diamond,

    /// <summary>Millimetres along the cushion.</summary>
    Millimetre,

    /// <summary>Inches along the cushion.</summary>
    Inch,
}
