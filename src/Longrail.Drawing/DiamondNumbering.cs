namespace Longrail.Drawing;

/// <summary>How the diamonds of a cushion are numbered where numbers are shown. Printed with them.</summary>
public enum DiamondNumbering
{
    /// <summary>Along 0 to 8 from the head, across 0 to 4 from the right, at the ball's centre, counted on the nose
    /// lines.</summary>
    AtTheNose,

    /// <summary>The same places counted in tens.</summary>
    Tens,

    /// <summary>A touch of a cushion is counted where the ball's incoming line meets the row of sights behind it;
    /// places on the bed are counted as at the nose.</summary>
    ThroughTheSight,
}
